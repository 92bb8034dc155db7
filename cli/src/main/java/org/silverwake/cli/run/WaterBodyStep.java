// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.WaterBodyPlan.WaterBody;
import org.silverwake.cli.text.Names;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.WaterShape;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.WaterPolygons;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.WaterBodies;

/**
 * Finds kinds of reach and bodies of water. Reaches in one polygon are one body; elsewhere those with the same name in column
 * water-body; elsewhere those of one feature. Area and depth are the table's, else the polygon's, else the river layer's.
 */
final class WaterBodyStep {
    private static final int NAMED = 5;
    private static final double KILOMETER = 1000;
    private static final String AREA = "water-body-area";
    private static final String DEPTH = "water-body-depth";

    private final ScenarioInput scenario;
    private final RiverMap map;
    private final RiverNetwork network;
    private final KindWords words;
    private final Optional<WaterPolygons> polygons;
    private final int[] holding;
    private final List<ReachKind> kinds = new ArrayList<>();
    private final Map<String, Candidate> candidates = new LinkedHashMap<>();
    private final Set<String> known = new TreeSet<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    /** What may be a body: its reaches, and its polygon where it has one. */
    private record Candidate(String name, OptionalInt polygon, List<Integer> reaches) {}

    private WaterBodyStep(
            ScenarioInput scenario, RiverMap map, RiverNetwork network, Optional<WaterPolygons> polygons) {
        this.scenario = scenario;
        this.map = map;
        this.network = network;
        this.words = new KindWords(scenario.rivers().kinds());
        this.polygons = polygons;
        this.holding = polygons.map(p -> p.holding(map)).orElseGet(() -> {
            int[] none = new int[map.reachCount()];
            Arrays.fill(none, -1);
            return none;
        });
    }

    /**
     * Finds them.
     *
     * @param map the network, cut at the polygons' edges and at points
     * @throws GeoDataException with a line for each body that cannot be one
     */
    static Waters find(
            ScenarioInput scenario,
            RiverMap map,
            RiverNetwork network,
            Optional<WaterPolygons> polygons,
            List<PlacedPoint> points) {
        WaterBodyStep step = new WaterBodyStep(scenario, map, network, polygons);
        Waters found = step.run();
        for (PlacedPoint point : points) {
            int reach = network.reachOfInput(point.headReach());
            if (point.request().kind().equals("site") && found.bodies().isStill(reach)) {
                step.notes.add(point.request().where() + " " + point.request().name() + ": enters water body "
                        + found.bodies().of(reach).orElseThrow().name()
                        + ", taken as mixed all through; near the outfall there is more than is told");
            }
        }
        return new Waters(found.kinds(), found.bodies(), found.shapes(), found.withoutData(), step.notes);
    }

    private Waters run() {
        for (int r = 0; r < network.size(); r++) {
            reach(r);
        }
        polygons.ifPresent(this::unused);
        unmatched();
        List<WaterBodies.Body> bodies = new ArrayList<>();
        List<WaterShape> shapes = new ArrayList<>();
        List<Candidate> lacking = new ArrayList<>();
        for (Candidate candidate : candidates.values()) {
            Optional<WaterBodies.Body> body = body(candidate);
            body.ifPresent(bodies::add);
            if (body.isEmpty() && kinds.get(candidate.reaches.get(0)) == ReachKind.STILL_WATER) {
                lacking.add(candidate);
            }
            candidate.polygon.ifPresent(k -> shapes.add(WaterShape.of(
                    polygons.orElseThrow().polygons().get(k), network.inputIndex(candidate.reaches.get(0)))));
        }
        lacking(lacking);
        words.unknown()
                .forEach(
                        (word, n) -> notes.add(
                                n + " reaches of kind " + word
                                        + " are treated as channel; say in rivers.kinds what it means: channel, still water, wetland or canal"));
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        WaterBodies found = WaterBodies.of(network, bodies);
        bodies.stream().filter(b -> b.kind() == ReachKind.STILL_WATER).forEach(b -> exits(found, b));
        return new Waters(kinds, found, shapes, !lacking.isEmpty(), notes);
    }

    private void reach(int r) {
        RiverMap.Reach reach = map.reach(network.inputIndex(r));
        ReachKind own = words.kind(reach.texts().getOrDefault("kind", ""));
        int polygon = holding[network.inputIndex(r)];
        String body = reach.texts().getOrDefault("water-body", "");
        String feature = reach.part().featureId();
        known.add(feature);
        if (polygon >= 0) {
            WaterPolygons.Polygon of = polygons.orElseThrow().polygons().get(polygon);
            known.add(of.name());
            add("polygon " + polygon, of.name(), OptionalInt.of(polygon), r);
            kinds.add(kind(of.name(), of.kind(), own));
        } else if (!body.isEmpty()) {
            known.add(body);
            add("body " + body, body, OptionalInt.empty(), r);
            kinds.add(kind(body, "", own));
        } else if (own == ReachKind.STILL_WATER
                || own == ReachKind.WETLAND
                || row(feature).isPresent()) {
            add("feature " + reach.part().feature(), feature, OptionalInt.empty(), r);
            kinds.add(kind(feature, "", own));
        } else {
            kinds.add(own);
        }
    }

    private void add(String key, String name, OptionalInt polygon, int reach) {
        candidates
                .computeIfAbsent(key, k -> new Candidate(name, polygon, new ArrayList<>()))
                .reaches
                .add(reach);
    }

    /** The table's kind, else the polygon's, else the river layer's where it is of such a kind, else still water. */
    private ReachKind kind(String name, String written, ReachKind own) {
        return row(name).flatMap(WaterBody::kind).orElseGet(() -> {
            ReachKind told = written.isEmpty() ? own : words.kind(written);
            return told == ReachKind.WETLAND ? told : ReachKind.STILL_WATER;
        });
    }

    private Optional<WaterBody> row(String name) {
        return scenario.waterBodies().table().stream()
                .filter(row -> row.name().equals(name))
                .findFirst();
    }

    /** Rows of the table that name nothing. */
    private void unmatched() {
        polygons.ifPresent(p -> p.polygons().forEach(polygon -> known.add(polygon.name())));
        for (WaterBody row : scenario.waterBodies().table()) {
            if (!known.contains(row.name())) {
                problems.add(
                        row.where() + " name: no polygon, no water-body and no feature of the river layer is called "
                                + row.name()
                                + Nearest.find(row.name(), known)
                                        .map(near -> "; the nearest known one is " + near)
                                        .orElse(""));
            }
        }
    }

    private void unused(WaterPolygons all) {
        Set<Integer> used = new HashSet<>();
        for (int polygon : holding) {
            used.add(polygon);
        }
        List<String> beside = new ArrayList<>();
        for (int k = 0; k < all.polygons().size(); k++) {
            if (!used.contains(k)) {
                beside.add(all.polygons().get(k).name());
            }
        }
        if (!beside.isEmpty()) {
            notes.add("no line of the river layer runs through " + beside.size() + " of "
                    + all.polygons().size() + " polygons of still water, which are left out: "
                    + Names.first(beside, NAMED));
        }
    }

    /** The body, if its area and depth are known. */
    private Optional<WaterBodies.Body> body(Candidate candidate) {
        Optional<WaterBody> row = row(candidate.name);
        Optional<WaterPolygons.Polygon> polygon = candidate.polygon.isPresent()
                ? Optional.of(polygons.orElseThrow().polygons().get(candidate.polygon.getAsInt()))
                : Optional.empty();
        OptionalDouble area = first(
                row.map(WaterBody::area).orElse(OptionalDouble.empty()),
                polygon.map(p -> OptionalDouble.of(p.area())).orElseGet(() -> attribute(candidate, AREA)));
        OptionalDouble depth = first(
                row.map(WaterBody::depth).orElse(OptionalDouble.empty()),
                first(
                        polygon.map(WaterPolygons.Polygon::depth).orElse(OptionalDouble.empty()),
                        attribute(candidate, DEPTH)));
        ReachKind kind = kinds.get(candidate.reaches.get(0));
        if (area.isEmpty() || depth.isEmpty()) {
            return Optional.empty();
        }
        if (kind == ReachKind.STILL_WATER) {
            between(candidate);
        }
        return Optional.of(
                new WaterBodies.Body(candidate.name, kind, area.getAsDouble(), depth.getAsDouble(), candidate.reaches));
    }

    private static OptionalDouble first(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() ? one : other;
    }

    /** What the river layer says of a body, which all its lines must agree on; 0 means nothing. */
    private OptionalDouble attribute(Candidate candidate, String key) {
        Set<Double> values = new TreeSet<>();
        for (int r : candidate.reaches) {
            map.reach(network.inputIndex(r)).number(key).ifPresent(values::add);
        }
        values.remove(0.0);
        if (values.size() > 1) {
            problems.add("water body " + candidate.name + ": its lines have different values in " + key + " ("
                    + Names.first(values.stream().map(v -> Numbers.shown(v, 4)).toList(), NAMED)
                    + " in SI units); give all the same, that of the whole body, or another name");
        }
        return values.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(values.iterator().next());
    }

    /** Short lines between parts of a body belong to it; long ones mean that these are several waters. */
    private void between(Candidate candidate) {
        List<Integer> between = WaterBodies.between(network, candidate.reaches);
        if (between.isEmpty()) {
            return;
        }
        List<String> features = between.stream()
                .map(r -> map.reach(network.inputIndex(r)).part().featureId())
                .distinct()
                .toList();
        boolean taken =
                between.stream().anyMatch(r -> candidates.values().stream().anyMatch(c -> c.reaches.contains(r)));
        if (taken || length(between) > length(candidate.reaches)) {
            problems.add("water body " + candidate.name + ": lies in several places along the river, with "
                    + Numbers.shown(length(between) / KILOMETER, 3) + " km of other water between ("
                    + Names.first(features, NAMED) + "); give each water its own name or polygon");
            return;
        }
        between.forEach(r -> kinds.set(r, ReachKind.STILL_WATER));
        candidate.reaches.addAll(between);
        notes.add("water body " + candidate.name + ": lines between parts of it are counted in it: "
                + Names.first(features, NAMED));
    }

    private double length(List<Integer> reaches) {
        return reaches.stream()
                .mapToDouble(r -> map.reach(network.inputIndex(r)).lengthMeters())
                .sum();
    }

    private void exits(WaterBodies bodies, WaterBodies.Body body) {
        int exits = bodies.exits(body).size();
        if (exits > 1) {
            notes.add("water body " + body.name() + ": is left in " + exits
                    + " places; each has a part of its volume, in proportion to the water that leaves there");
        }
    }

    private void lacking(List<Candidate> lacking) {
        if (!lacking.isEmpty()) {
            int reaches = lacking.stream().mapToInt(c -> c.reaches.size()).sum();
            notes.add(reaches + " reaches of kind still water have no area or mean depth ("
                    + Names.first(lacking.stream().map(Candidate::name).toList(), NAMED)
                    + ") and are treated as channel, which overstates what gets through them and understates what settles in"
                    + " them; give both in water-bodies.file, or polygons with a depth");
        }
    }
}
