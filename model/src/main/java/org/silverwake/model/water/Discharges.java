// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.List;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;

/** The four ways to find what water the land brings in one flow state. Gauges have a class of their own: {@link Gauging}. */
public final class Discharges {
    private Discharges() {}

    /**
     * From a discharge attribute [m3/s] at each feature's lower end, which is met wherever it is given. What an attribute has
     * more than flows in from upstream enters along the feature, in proportion to length; what it has less is a correction. A
     * headwater with land outside the layer gets that land's part of its discharge at the head.
     */
    public static WaterSupply fromAttribute(ReachTable reaches, String state, Splits splits, DrainageArea areas) {
        Column discharge = reaches.column("discharge", state)
                .orElseThrow(() -> new IllegalArgumentException("no discharge column for state " + state));
        RiverNetwork network = reaches.network();
        int n = reaches.size();
        double[] head = new double[n];
        int missing = 0;
        for (int r = 0; r < n; r++) {
            int last = reaches.lastOfGroup(r);
            if (network.isHeadwater(r) && areas != null && areas.outside(r) > 0 && discharge.has(last)) {
                head[r] = discharge.at(last) * areas.outside(r) / areas.total(last);
            }
            missing += last == r && !discharge.has(r) ? 1 : 0;
        }
        // first all of a feature's own water at its last reach, to know how much it is; then spread over its reaches
        double[] own = reaches.sumOverGroups(along(reaches, splits, discharge, head, null));
        double[] along = along(reaches, splits, discharge, head, own);
        List<String> notes = missing == 0
                ? List.of()
                : List.of(state + ": " + missing + " reaches have no discharge; they carry what flows in");
        return new WaterSupply(head, along, notes);
    }

    /** Water along each reach; {@code own} by feature, null to put nothing on reaches that are not the last of theirs. */
    private static double[] along(ReachTable reaches, Splits splits, Column discharge, double[] head, double[] own) {
        RiverNetwork network = reaches.network();
        double[] along = new double[head.length];
        double[] end = new double[head.length];
        for (int r = 0; r < head.length; r++) {
            double in = head[r];
            int node = network.fromNode(r);
            for (int k = 0; k < network.inCount(node); k++) {
                in += splits.share(r) * end[network.in(node, k)];
            }
            if (reaches.isLastOfGroup(r)) {
                along[r] = discharge.has(r) ? discharge.at(r) - in : 0;
            } else if (own != null) {
                along[r] = Math.max(-in, own[reaches.group(r)] * reaches.shareOfGroup(r));
            }
            end[r] = in + along[r];
        }
        return along;
    }

    /**
     * Specific discharge times drainage area.
     *
     * @param specific specific discharge [m/s], at least 0
     */
    public static WaterSupply fromSpecific(DrainageArea areas, int reachCount, double specific) {
        double[] head = new double[reachCount];
        double[] along = new double[reachCount];
        for (int r = 0; r < reachCount; r++) {
            head[r] = specific * areas.outside(r);
            along[r] = specific * areas.local(r);
        }
        return new WaterSupply(head, along, List.of());
    }

    /**
     * Headwater discharges plus lateral inflow.
     *
     * @param headwater discharge of each headwater without one of its own [m3/s], at least 0
     * @param perLength lateral inflow [m2/s], that is m3/s per m
     */
    public static WaterSupply fromHeadwaters(ReachTable reaches, String state, double headwater, double perLength) {
        RiverNetwork network = reaches.network();
        double[] head = new double[reaches.size()];
        double[] along = new double[reaches.size()];
        Optional<Column> own = reaches.column("headwater-discharge", state);
        for (int r = 0; r < head.length; r++) {
            along[r] = perLength * reaches.length(r);
            if (network.isHeadwater(r)) {
                boolean given = own.isPresent() && own.get().has(r);
                head[r] = given ? own.get().at(r) : headwater;
            }
        }
        return new WaterSupply(head, along, List.of());
    }
}
