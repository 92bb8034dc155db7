// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.solids.BackgroundSediment;
import org.silverwake.model.solids.MeasuredSettling;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.AttributeChannel;
import org.silverwake.model.water.ChannelShape;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.HydraulicGeometry;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.ReachTable;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.Splits;
import org.silverwake.model.water.WaterBodies;
import org.silverwake.model.water.WaterProperties;
import org.silverwake.model.water.WaterSupply;

/**
 * A river to test with. Reaches are named and numbered as they were added; {@link #index} leads to the network's own order.
 * Velocity and depth are given by reach; Manning n is chosen so that skin shear is {@link #skinShear} everywhere (a coarse
 * bed makes skin shear all of the shear).
 */
final class TestRiver {
    static final double SECONDS_PER_YEAR = 365.25 * 86400;
    private static final double GRAVITY = 9.81;
    private static final double COARSE_BED = 0.1;

    final List<String> ids = new ArrayList<>();
    final List<Integer> from = new ArrayList<>();
    final List<Integer> to = new ArrayList<>();
    final List<Double> length = new ArrayList<>();
    final List<Double> head = new ArrayList<>();
    final List<Double> along = new ArrayList<>();
    final List<Double> velocity = new ArrayList<>();
    final List<Double> depth = new ArrayList<>();
    final Map<String, Double> abstraction = new HashMap<>();
    final Map<String, Double> split = new HashMap<>();
    final List<Site> sites = new ArrayList<>();
    final Map<String, Map<String, Double>> furtherShares = new HashMap<>();
    final Map<String, List<Map<String, Double>>> moreExtremes = new HashMap<>();
    final List<ParticleClass> classes = new ArrayList<>();
    double[] flow = {1};
    double[] share = {1};
    List<Boolean> flood = List.of(false);
    double celsius = 20;
    double skinShear = 0.05;
    double sediment;
    double sedimentExponent;
    double content;
    double filtered;
    double doc;
    double netSedimentation;
    double kdSlope;
    double grainRelease;
    double setDown = 1000;
    double overbank;
    boolean cut;
    Chemistry chemistry = Chemistry.none();
    final Map<String, ReachKind> kinds = new HashMap<>();
    final List<WaterBody> bodies = new ArrayList<>();
    Optional<ChannelShape> shape = Optional.empty();
    OptionalDouble slope = OptionalDouble.empty();
    double medianDiameter = COARSE_BED;

    /** A site before its reach has a number. */
    record Site(
            String name,
            String reach,
            double mercury,
            OptionalDouble exchangeable,
            List<Double> shares,
            double solids,
            double water,
            boolean atBank) {}

    /** A still water or wetland before its reaches have numbers [m2, m]. */
    record WaterBody(String name, ReachKind kind, double area, double depth, List<String> reaches) {}

    /** Adds a still water [m2, m]. */
    TestRiver lake(String name, double area, double meters, String... reaches) {
        bodies.add(new WaterBody(name, ReachKind.STILL_WATER, area, meters, List.of(reaches)));
        List.of(reaches).forEach(id -> kinds.put(id, ReachKind.STILL_WATER));
        return this;
    }

    /** Adds a reach [m, m3/s, m3/s, m/s, m]. */
    TestRiver reach(String id, int fromNode, int toNode, double meters, double headFlow, double lateral) {
        ids.add(id);
        from.add(fromNode);
        to.add(toNode);
        length.add(meters);
        head.add(headFlow);
        along.add(lateral);
        velocity.add(0.4);
        depth.add(0.8);
        return this;
    }

    /** A chain r0, r1 ... of equal reaches with this discharge [m, m3/s]. */
    static TestRiver chain(int reaches, double meters, double discharge) {
        TestRiver river = new TestRiver();
        for (int k = 0; k < reaches; k++) {
            river.reach("r" + k, k, k + 1, meters, k == 0 ? discharge : 0, 0);
        }
        return river;
    }

    /** Adds a cohesive class of measured settling velocity [m/s], tau_cd [Pa], Kd [m3/kg], background share. */
    TestRiver cohesive(String name, double settling, double critical, double kd, double backgroundShare) {
        return particles(name, settling, true, critical, kd, OptionalDouble.empty(), backgroundShare);
    }

    TestRiver particles(
            String name,
            double settling,
            boolean cohesive,
            double critical,
            double kd,
            OptionalDouble retention,
            double backgroundShare) {
        double log = kd > 0 ? StrictMath.log10(kd * 1000) : -300;
        classes.add(new ParticleClass(
                name, 2e-5, 2650, new MeasuredSettling(settling), cohesive, critical, log, retention, backgroundShare));
        return this;
    }

    /** Adds a site without water or solids. */
    TestRiver site(String reach, double mercury, double exchangeable) {
        return site(reach, mercury, OptionalDouble.of(exchangeable), 0, 0, false);
    }

    /** Adds a site whose grain-bound mercury and solids are all of the last class. */
    TestRiver site(
            String reach, double mercury, OptionalDouble exchangeable, double solids, double water, boolean atBank) {
        List<Double> shares = new ArrayList<>(Collections.nCopies(classes.size(), 0.0));
        shares.set(classes.size() - 1, 1.0);
        return site(
                new Site("site " + (sites.size() + 1), reach, mercury, exchangeable, shares, solids, water, atBank));
    }

    TestRiver site(Site site) {
        sites.add(site);
        return this;
    }

    private RiverNetwork network() {
        return RiverNetwork.of(
                ids,
                from.stream().mapToInt(Integer::intValue).toArray(),
                to.stream().mapToInt(Integer::intValue).toArray());
    }

    /** The network's number of a reach. */
    int index(String id) {
        return network().reachOfInput(ids.indexOf(id));
    }

    private static double[] ordered(RiverNetwork network, List<Double> values, double factor) {
        double[] ordered = new double[values.size()];
        for (int r = 0; r < ordered.length; r++) {
            ordered[r] = factor * values.get(network.inputIndex(r));
        }
        return ordered;
    }

    private double[] ordered(RiverNetwork network, Map<String, Double> values) {
        double[] ordered = new double[ids.size()];
        for (int r = 0; r < ordered.length; r++) {
            ordered[r] = values.getOrDefault(network.id(r), 0.0);
        }
        return ordered;
    }

    TransportInput input() {
        RiverNetwork network = network();
        int n = ids.size();
        int states = flow.length;
        int[] group = new int[n];
        Arrays.setAll(group, r -> r);
        List<ReachKind> kind = new ArrayList<>();
        for (int r = 0; r < n; r++) {
            kind.add(kinds.getOrDefault(network.id(r), ReachKind.CHANNEL));
        }
        WaterBodies waters = WaterBodies.of(
                network,
                bodies.stream()
                        .map(b -> new WaterBodies.Body(
                                b.name(),
                                b.kind(),
                                b.area(),
                                b.depth(),
                                b.reaches().stream().map(this::index).toList()))
                        .toList());
        ReachTable table = new ReachTable(network, ordered(network, length, 1), group, Map.of(), kind, waters);
        WaterProperties water = WaterProperties.at(celsius);
        double[] u = ordered(network, velocity, 1);
        double[] h = ordered(network, depth, 1);
        Column roughness = new Column(n);
        Column slopes = new Column(n);
        for (int r = 0; r < n; r++) {
            if (slope.isPresent()) {
                slopes.put(r, slope.getAsDouble());
            } else {
                double weight = water.density() * GRAVITY;
                roughness.put(r, StrictMath.sqrt(skinShear * StrictMath.pow(h[r], 1.0 / 3.0) / weight) / u[r]);
            }
        }
        double[] siteWater = new double[n];
        List<SiteRelease> releases = new ArrayList<>();
        for (Site site : sites) {
            int reach = index(site.reach());
            siteWater[reach] += site.water();
            releases.add(new SiteRelease(
                    site.name(),
                    reach,
                    Collections.nCopies(states, site.mercury()),
                    site.exchangeable(),
                    site.shares(),
                    Collections.nCopies(states, site.solids()),
                    Collections.nCopies(states, site.water()),
                    site.atBank(),
                    furtherShares.getOrDefault(site.name(), Map.of()),
                    moreExtremes.getOrDefault(site.name(), List.of())));
        }
        Column weights = new Column(n);
        split.forEach((id, weight) -> weights.put(index(id), weight));
        Splits splits = Splits.of(network, Optional.of(weights));
        List<RoutedWater> routed = new ArrayList<>();
        for (int s = 0; s < states; s++) {
            WaterSupply supply = WaterSupply.of(ordered(network, head, flow[s]), ordered(network, along, flow[s]));
            routed.add(RoutedWater.route(network, splits, supply, siteWater, ordered(network, abstraction)));
        }
        ChannelShape channel = shape.orElseGet(() -> new AttributeChannel(
                Collections.nCopies(states, Optional.of(Column.of(u))),
                Collections.nCopies(states, Optional.of(Column.of(h))),
                Collections.nCopies(states, Optional.empty()),
                geometry()));
        Hydraulics hydraulics = new Hydraulics(
                table, routed, share, Collections.nCopies(states, water), channel, slopes, roughness, medianDiameter);
        return new TransportInput(
                hydraulics,
                classes,
                Collections.nCopies(states, new BackgroundSediment(sediment, sedimentExponent)),
                flood,
                content,
                Collections.nCopies(states, filtered),
                Collections.nCopies(states, doc),
                releases,
                new TransportInput.Options(netSedimentation, kdSlope, 0.1, grainRelease, setDown, overbank, 0.6, cut),
                chemistry);
    }

    /** The default downstream and at-a-station exponents of model.md section 11. */
    static HydraulicGeometry geometry() {
        return new HydraulicGeometry(8.3, 0.5, 0.40, 0.4, 0.26, 0.40);
    }

    SteadyResult run() {
        return SteadyRun.run(input());
    }
}
