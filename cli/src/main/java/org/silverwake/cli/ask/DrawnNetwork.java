// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.network.UpstreamSums;

/** The layer put together with what is known so far, for a first look: what grows downstream, and where water leaves. */
final class DrawnNetwork {
    /** Ends nearer than this are taken to be one [m]. */
    static final double SNAP = 1;

    /**
     * A lower end of the network.
     *
     * @param feature the user's feature
     * @param river its river's name
     * @param upstreamMeters length of river above it, itself included [m]
     */
    record Outlet(String feature, Optional<String> river, double upstreamMeters) {}

    private final VectorLayer layer;
    private final RiverMap map;
    private final RiverNetwork network;

    private DrawnNetwork(VectorLayer layer, RiverMap map) {
        this.layer = layer;
        this.map = map;
        int[] from = new int[map.reachCount()];
        int[] to = new int[map.reachCount()];
        for (int i = 0; i < from.length; i++) {
            from[i] = map.reach(i).fromNode();
            to[i] = map.reach(i).toNode();
        }
        this.network = RiverNetwork.of(map.ids(), from, to);
    }

    /** The network, unless the layer is too untidy for a first look. */
    static Optional<DrawnNetwork> of(VectorLayer layer, AssemblyOptions options) {
        try {
            return Optional.of(require(layer, options));
        } catch (GeoDataException e) {
            return Optional.empty();
        }
    }

    /**
     * The network.
     *
     * @throws GeoDataException in words for the user, if the layer makes none
     */
    static DrawnNetwork require(VectorLayer layer, AssemblyOptions options) {
        return new DrawnNetwork(layer, Assembly.assemble(layer, options));
    }

    RiverMap map() {
        return map;
    }

    /** Share of steps from reach to next reach over which a column of numbers does not fall [-]; one half without steps. */
    double growth(String column) {
        int steps = 0;
        int kept = 0;
        for (int r = 0; r < network.size(); r++) {
            Optional<Double> mine = value(r, column);
            for (int below : next(r)) {
                Optional<Double> theirs = value(below, column);
                if (mine.isPresent() && theirs.isPresent()) {
                    steps++;
                    kept += theirs.get() >= mine.get() ? 1 : 0;
                }
            }
        }
        return steps == 0 ? 0.5 : (double) kept / steps;
    }

    private List<Integer> next(int r) {
        List<Integer> below = new ArrayList<>();
        int node = network.toNode(r);
        for (int k = 0; k < network.outCount(node); k++) {
            int other = network.out(node, k);
            if (feature(other) != feature(r)) {
                below.add(other);
            }
        }
        return below;
    }

    private int feature(int r) {
        return map.reach(network.inputIndex(r)).part().feature();
    }

    private Optional<Double> value(int r, String column) {
        LayerFeature feature = layer.features().get(feature(r));
        return feature.attributes().get(column) instanceof Number number
                ? Optional.of(number.doubleValue())
                : Optional.empty();
    }

    /** Lower ends, the one with most river above it first. */
    List<Outlet> outlets() {
        double[] lengths = new double[network.size()];
        for (int r = 0; r < lengths.length; r++) {
            lengths[r] = map.reach(network.inputIndex(r)).lengthMeters();
        }
        double[] upstream = new UpstreamSums(network).total(lengths);
        List<Outlet> outlets = new ArrayList<>();
        for (int r = 0; r < network.size(); r++) {
            if (network.isOutlet(r)) {
                RiverMap.Reach reach = map.reach(network.inputIndex(r));
                outlets.add(new Outlet(reach.part().featureId(), reach.name(), upstream[r]));
            }
        }
        outlets.sort(Comparator.comparingDouble(Outlet::upstreamMeters).reversed());
        return outlets;
    }
}
