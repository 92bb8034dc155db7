// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;

/**
 * What is known of each reach before water is routed. Reaches that were cut from one feature form a group; a feature's
 * attribute holds at the lower end of the group's last reach, except local-area, which is each reach's own, and what an
 * elevation raster gives. Keys of columns: drainage-area, local-area, dem-local-area, dem-head-area [m2], slope [-],
 * velocity [m/s], depth, width [m], manning-n [-], split [-], discharge, headwater-discharge [m3/s]; a state's own column
 * is the key, a dot and the state's name. Immutable once built.
 */
public final class ReachTable {
    private final RiverNetwork network;
    private final double[] length;
    private final int[] group;
    private final double[] groupLength;
    private final int[] lastOf;
    private final Map<String, Column> columns;
    private final List<ReachKind> kinds;
    private final WaterBodies bodies;

    /**
     * A table of channels.
     *
     * @param length length of each reach [m], above 0
     * @throws IllegalArgumentException if a length is not above 0
     * @see #ReachTable(RiverNetwork, double[], int[], Map, List)
     */
    public ReachTable(RiverNetwork network, double[] length, int[] group, Map<String, Column> columns) {
        this(network, length, group, columns, Collections.nCopies(length.length, ReachKind.CHANNEL));
    }

    /**
     * A table.
     *
     * @param network the network
     * @param length length of each reach [m], above 0
     * @param group number of the feature each reach was cut from, from 0
     * @param columns attributes by key, SI
     * @param kinds kind of each reach
     * @throws IllegalArgumentException if a length is not above 0
     */
    public ReachTable(
            RiverNetwork network, double[] length, int[] group, Map<String, Column> columns, List<ReachKind> kinds) {
        this(network, length, group, columns, kinds, WaterBodies.none(network));
    }

    /**
     * A table of reaches some of which run through still waters and wetlands of known area and depth.
     *
     * @param length length of each reach [m], above 0
     * @throws IllegalArgumentException if a length is not above 0
     * @see #ReachTable(RiverNetwork, double[], int[], Map, List)
     */
    public ReachTable(
            RiverNetwork network,
            double[] length,
            int[] group,
            Map<String, Column> columns,
            List<ReachKind> kinds,
            WaterBodies bodies) {
        this.bodies = bodies;
        this.network = network;
        this.length = length.clone();
        this.group = group.clone();
        this.columns = new HashMap<>(columns);
        this.kinds = List.copyOf(kinds);
        int groups = Arrays.stream(group).max().orElse(-1) + 1;
        this.groupLength = new double[groups];
        this.lastOf = new int[groups];
        for (int r = 0; r < length.length; r++) {
            if (!(length[r] > 0)) {
                throw new IllegalArgumentException("reach " + network.id(r) + ": length " + length[r] + " m");
            }
            groupLength[group[r]] += length[r];
            lastOf[group[r]] = r;
        }
    }

    /** The network. */
    public RiverNetwork network() {
        return network;
    }

    /** Number of reaches [-]. */
    public int size() {
        return length.length;
    }

    /** Length of a reach [m]. */
    public double length(int reach) {
        return length[reach];
    }

    /** Kind of a reach. */
    public ReachKind kind(int reach) {
        return kinds.get(reach);
    }

    /** Still waters and wetlands of known area and depth. */
    public WaterBodies bodies() {
        return bodies;
    }

    /** Number of the feature a reach was cut from. */
    public int group(int reach) {
        return group[reach];
    }

    /** Share of its feature's length that a reach has [-], above 0, at most 1. */
    public double shareOfGroup(int reach) {
        return length[reach] / groupLength[group[reach]];
    }

    /** Whether a reach is the last of its feature, where the feature's attributes hold. */
    public boolean isLastOfGroup(int reach) {
        return lastOf[group[reach]] == reach;
    }

    /** The last reach of the feature that a reach was cut from. */
    public int lastOfGroup(int reach) {
        return lastOf[group[reach]];
    }

    /** Sum over the reaches of each feature, by feature number; any unit. */
    double[] sumOverGroups(double[] values) {
        double[] sum = new double[groupLength.length];
        for (int r = 0; r < values.length; r++) {
            sum[group[r]] += values[r];
        }
        return sum;
    }

    /** A column, if the layer has it. */
    public Optional<Column> column(String key) {
        return Optional.ofNullable(columns.get(key));
    }

    /** A state's own column, else the common one. */
    public Optional<Column> column(String key, String state) {
        return column(key + "." + state).or(() -> column(key));
    }

    /** Shares a value found at the last reach of each feature over the feature's reaches by length; other reaches' values are added in. */
    double[] spreadOverGroups(double[] values) {
        double[] sum = sumOverGroups(values);
        double[] spread = new double[values.length];
        for (int r = 0; r < values.length; r++) {
            spread[r] = shareOfGroup(r) == 1 ? values[r] : sum[group[r]] * shareOfGroup(r);
        }
        return spread;
    }
}
