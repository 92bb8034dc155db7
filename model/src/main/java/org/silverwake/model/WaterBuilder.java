// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.silverwake.model.WaterInput.ChannelMethod;
import org.silverwake.model.WaterInput.DischargeMethod;
import org.silverwake.model.input.Settings;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.AttributeChannel;
import org.silverwake.model.water.ChannelShape;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.Discharges;
import org.silverwake.model.water.DrainageArea;
import org.silverwake.model.water.Gauging;
import org.silverwake.model.water.GivenSections;
import org.silverwake.model.water.HydraulicGeometry;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.ManningChannel;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.ReachTable;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.Slopes;
import org.silverwake.model.water.Splits;
import org.silverwake.model.water.WaterProperties;
import org.silverwake.model.water.WaterSupply;

/** Puts water together: area, supply and routing per state, then the channel. */
final class WaterBuilder {
    private static final int NAMES_SHOWN = 20;

    private final ReachTable reaches;
    private final RiverNetwork network;
    private final WaterInput input;
    private final Set<String> notes = new LinkedHashSet<>();
    private final List<Water.Listed> listed = new ArrayList<>();

    WaterBuilder(ReachTable reaches, WaterInput input) {
        this.reaches = reaches;
        this.network = reaches.network();
        this.input = input;
    }

    Water build() {
        Optional<DrainageArea> areas = areas();
        List<RoutedWater> routed = new ArrayList<>();
        for (int s = 0; s < input.states().size(); s++) {
            routed.add(route(s, areas));
        }
        noteCorrections(routed);
        double[] share = new double[input.states().size()];
        List<WaterProperties> properties = new ArrayList<>();
        for (int s = 0; s < share.length; s++) {
            share[s] = input.states().get(s).share();
            properties.add(WaterProperties.at(input.states().get(s).temperature()));
        }
        Column slope = slopes();
        Column roughness = roughness(slope);
        requireShear(slope, roughness);
        Hydraulics hydraulics = new Hydraulics(
                reaches,
                routed,
                share,
                properties,
                shape(slope, roughness, routed),
                slope,
                roughness,
                input.settings().value("solids.median-diameter"));
        return new Water(hydraulics, areas, List.copyOf(notes), listed);
    }

    private Optional<DrainageArea> areas() {
        boolean needed =
                input.method() == DischargeMethod.SPECIFIC_DISCHARGE || input.method() == DischargeMethod.GAUGES;
        if (reaches.column("drainage-area").isPresent()) {
            return Optional.of(noted(DrainageArea.fromAttribute(reaches)));
        }
        if (reaches.column("local-area").isPresent()) {
            return Optional.of(noted(DrainageArea.fromLocalAttribute(reaches)));
        }
        if (reaches.column("dem-local-area").isPresent()) {
            return Optional.of(noted(DrainageArea.fromTerrain(reaches)));
        }
        if (!needed) {
            return Optional.empty();
        }
        if (input.basinAreas().isEmpty()) {
            throw new IllegalArgumentException(
                    "discharge by " + input.method().name().toLowerCase(java.util.Locale.ROOT)
                            + " needs drainage area: map a drainage-area or local-area column, take it from an elevation raster"
                            + " (rivers.elevation.drainage-area: true), or give an outlet its basin-area");
        }
        return Optional.of(byLength());
    }

    private DrainageArea byLength() {
        Column basins = new Column(reaches.size());
        double area = 0;
        double length = 0;
        double all = 0;
        int[] outlet = new int[reaches.size()];
        for (WaterInput.BasinArea basin : input.basinAreas()) {
            basins.put(basin.reach(), basin.area());
        }
        for (int r = reaches.size() - 1; r >= 0; r--) {
            outlet[r] = network.isOutlet(r) ? r : outlet[network.out(network.toNode(r), 0)];
            all += reaches.length(r);
            length += basins.has(outlet[r]) ? reaches.length(r) : 0;
            area += network.isOutlet(r) && basins.has(r) ? basins.at(r) : 0;
        }
        if (all > length) {
            notes.add("outlets without a basin-area take the area per length of those that have one");
        }
        return DrainageArea.byLength(reaches, basins, area / length * (all - length));
    }

    private DrainageArea noted(DrainageArea areas) {
        List<Integer> outside = new ArrayList<>();
        List<Integer> negative = new ArrayList<>();
        for (int r = 0; r < reaches.size(); r++) {
            if (areas.outside(r) > 0 && !areas.isFromTerrain()) {
                outside.add(r);
            }
            if (areas.local(r) < 0) {
                negative.add(r);
            }
        }
        note(outside, "headwaters drain land outside the layer; its water enters at their head");
        note(negative, "reaches have less drainage area than flows in; their water is corrected down, mercury stays");
        note(
                areas.filled(),
                "reaches have no drainage area in the layer; their own land is taken from the elevation raster");
        note(areas.missing(), "reaches have no drainage area; they add no water");
        return areas;
    }

    private void note(List<Integer> list, String text) {
        list.forEach(r -> listed.add(new Water.Listed(r, text)));
        if (!list.isEmpty()) {
            List<String> names = new ArrayList<>();
            for (int r : list.subList(0, Math.min(NAMES_SHOWN, list.size()))) {
                names.add(network.id(r));
            }
            String more = list.size() > NAMES_SHOWN ? ", ..." : "";
            notes.add(list.size() + " " + text + " (" + String.join(", ", names) + more + ")");
        }
    }

    private RoutedWater route(int state, Optional<DrainageArea> areas) {
        String name = input.states().get(state).name();
        Splits splits = splits(name);
        WaterSupply supply = switch (input.method()) {
            case ATTRIBUTE -> Discharges.fromAttribute(reaches, name, splits, areas.orElse(null));
            case SPECIFIC_DISCHARGE ->
                Discharges.fromSpecific(
                        areas.orElseThrow(),
                        reaches.size(),
                        input.specificDischarge().get(state));
            case GAUGES -> gauged(state, areas.orElseThrow(), splits);
            case HEADWATERS ->
                Discharges.fromHeadwaters(
                        reaches,
                        name,
                        input.headwaterDischarge().get(state),
                        input.lateralPerLength().get(state));
        };
        notes.addAll(supply.notes());
        return RoutedWater.route(
                network, splits, supply, atHeads(input.siteWater(), state), atHeads(input.abstractions(), state));
    }

    private Splits splits(String state) {
        Optional<Column> weight = reaches.column("split", state);
        if (weight.isEmpty() && input.method() == DischargeMethod.ATTRIBUTE) {
            weight = reaches.column("discharge", state);
        }
        Splits splits = Splits.of(network, weight);
        if (!splits.assumedEqual().isEmpty()) {
            notes.add("bifurcations whose split nobody gave: "
                    + splits.assumedEqual().size() + "; their arms share the water equally");
        }
        return splits;
    }

    private WaterSupply gauged(int state, DrainageArea areas, Splits splits) {
        List<Gauging.Gauge> gauges = new ArrayList<>();
        for (WaterInput.Gauge gauge : input.gauges()) {
            gauges.add(new Gauging.Gauge(
                    gauge.name(), gauge.reach(), gauge.discharge().get(state)));
        }
        return gauges.size() == 1 && input.areaExponent() != 1
                ? Gauging.withExponent(reaches, areas, splits, gauges.get(0), input.areaExponent())
                : Gauging.supply(reaches, areas, splits, gauges);
    }

    private double[] atHeads(List<WaterInput.AtHead> list, int state) {
        double[] sum = new double[reaches.size()];
        for (WaterInput.AtHead item : list) {
            sum[item.reach()] += item.discharge().get(state);
        }
        return sum;
    }

    private void noteCorrections(List<RoutedWater> routed) {
        for (int s = 0; s < routed.size(); s++) {
            String state = input.states().get(s).name();
            note(routed.get(s).corrected(), "reaches lose water by correction in state " + state + "; mercury stays");
            note(routed.get(s).emptied(), "reaches are emptied by an abstraction in state " + state);
        }
    }

    private Column slopes() {
        Slopes slopes = Slopes.of(
                reaches,
                reaches.column("slope").orElseGet(() -> new Column(reaches.size())),
                heights("elevation-upper"),
                heights("elevation-lower"),
                input.settings().value("channel.slope-floor"));
        if (slopes.floored() > 0) {
            notes.add(slopes.floored() + " slopes lie below the floor of "
                    + input.settings().value("channel.slope-floor") + " and are raised to it");
        }
        return slopes.slope();
    }

    private void requireShear(Column slope, Column roughness) {
        List<String> names = new ArrayList<>();
        for (int r = 0; r < reaches.size(); r++) {
            if (!slope.has(r) && !roughness.has(r) && !reaches.bodies().isStill(r)) {
                names.add(network.id(r));
            }
        }
        if (!names.isEmpty()) {
            throw new IllegalArgumentException(names.size() + " reaches have neither slope nor Manning n ("
                    + String.join(", ", names.subList(0, Math.min(NAMES_SHOWN, names.size())))
                    + (names.size() > NAMES_SHOWN ? ", ..." : "")
                    + "); map a slope column, give an elevation raster that covers them, or state channel.manning-n");
        }
    }

    /** Heights of the layer's own attribute; where it has none, those of the elevation raster. */
    private Column heights(String key) {
        Column heights = new Column(reaches.size());
        for (String source : List.of("dem-" + key, key)) {
            reaches.column(source).ifPresent(column -> {
                for (int r = 0; r < reaches.size(); r++) {
                    if (column.has(r)) {
                        heights.put(r, column.at(r));
                    }
                }
            });
        }
        return heights;
    }

    /** Manning n as stated; where a canal has neither that nor a slope, that of canals. */
    private Column roughness(Column slope) {
        Column roughness = new Column(reaches.size());
        Optional<Column> attribute = reaches.column("manning-n");
        for (int r = 0; r < reaches.size(); r++) {
            if (attribute.isPresent() && attribute.get().has(r)) {
                roughness.put(r, attribute.get().at(r));
            } else if (input.manning().isPresent()) {
                roughness.put(r, input.manning().getAsDouble());
            } else if (reaches.kind(r) == ReachKind.CANAL && !slope.has(r)) {
                roughness.put(r, input.settings().value("channel.canal-manning-n"));
            }
        }
        return roughness;
    }

    private ChannelShape shape(Column slope, Column roughness, List<RoutedWater> routed) {
        Settings s = input.settings();
        HydraulicGeometry geometry = new HydraulicGeometry(
                s.value("channel.width-coefficient"),
                s.value("channel.width-exponent"),
                s.value("channel.depth-coefficient"),
                s.value("channel.depth-exponent"),
                s.value("channel.station-width-exponent"),
                s.value("channel.station-depth-exponent"));
        AttributeChannel attributes = attributes(geometry);
        GivenSections given = new GivenSections(reaches, attributes);
        if (input.channel() == ChannelMethod.HYDRAULIC_GEOMETRY) {
            return given.over(geometry);
        }
        if (input.channel() == ChannelMethod.MANNING) {
            for (int r = 0; r < reaches.size(); r++) {
                boolean ownSection = reaches.bodies().of(r).isPresent() || given.isGiven(r);
                if (!ownSection && (!slope.has(r) || !roughness.has(r))) {
                    throw new IllegalArgumentException(
                            "reach " + network.id(r)
                                    + ": Manning channels need a slope and channel.manning-n; map a slope column or give an elevation raster");
                }
            }
            Column width = reaches.column("width").orElseGet(() -> new Column(reaches.size()));
            return given.over(new ManningChannel(slope, roughness, width, geometry, s.value("channel.side-slope")));
        }
        noteFilled(attributes, routed);
        return attributes;
    }

    private AttributeChannel attributes(HydraulicGeometry geometry) {
        List<Optional<Column>> velocity = new ArrayList<>();
        List<Optional<Column>> depth = new ArrayList<>();
        List<Optional<Column>> width = new ArrayList<>();
        for (WaterInput.State state : input.states()) {
            velocity.add(reaches.column("velocity", state.name()));
            depth.add(reaches.column("depth", state.name()));
            width.add(reaches.column("width", state.name()));
        }
        return new AttributeChannel(velocity, depth, width, geometry);
    }

    private void noteFilled(AttributeChannel channel, List<RoutedWater> routed) {
        for (int s = 0; s < input.states().size(); s++) {
            List<Integer> filled = new ArrayList<>();
            List<Integer> recomputed = new ArrayList<>();
            for (int r = 0; r < reaches.size(); r++) {
                if (reaches.bodies().of(r).isPresent()) {
                    continue;
                }
                if (channel.isFilled(r, s)) {
                    filled.add(r);
                }
                if (channel.isWidthRecomputed(r, s, routed.get(s).mean(r))) {
                    recomputed.add(r);
                }
            }
            note(
                    recomputed,
                    "reaches have a width that breaks Q = U B H in state "
                            + input.states().get(s).name() + "; it is recomputed");
            note(
                    filled,
                    "reaches have no velocity in state " + input.states().get(s).name()
                            + "; hydraulic geometry fills in");
        }
    }
}
