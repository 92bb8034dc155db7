// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.network.UpstreamSums;

/**
 * Drainage area: of each reach's own land, at its lower end, and of land upstream of a headwater that the layer leaves out.
 * Areas in m2. Negative local areas (attributes that fall downstream) are kept: they become listed water corrections.
 */
public final class DrainageArea {
    private static final double OUTSIDE_SHARE = 0.01;
    private final String method;
    private final double[] local;
    private final double[] outside;
    private final double[] total;
    private final List<Integer> missing;

    private DrainageArea(String method, RiverNetwork network, double[] local, double[] outside, List<Integer> missing) {
        this.method = method;
        this.local = local;
        this.outside = outside;
        this.missing = List.copyOf(missing);
        double[] both = new double[local.length];
        for (int r = 0; r < both.length; r++) {
            both[r] = local[r] + outside[r];
        }
        this.total = new UpstreamSums(network).total(both);
    }

    /**
     * From the attribute drainage-area. Where a headwater also has local-area and its drainage area is larger by more than
     * 1 %, the difference lies outside the layer and its water enters at the head.
     */
    public static DrainageArea fromAttribute(ReachTable reaches) {
        Column totals =
                reaches.column("drainage-area").orElseThrow(() -> new IllegalArgumentException("no drainage-area"));
        Optional<Column> locals = reaches.column("local-area");
        RiverNetwork network = reaches.network();
        int n = reaches.size();
        double[] total = new double[n];
        boolean[] known = new boolean[n];
        List<Integer> missing = new ArrayList<>();
        for (int r = 0; r < n; r++) {
            if (reaches.isLastOfGroup(r)) {
                known[r] = totals.has(r);
                total[r] = known[r] ? totals.at(r) : 0;
                if (!known[r]) {
                    missing.add(r);
                }
            }
        }
        double[] local = reaches.spreadOverGroups(new UpstreamSums(network).local(total, known));
        double[] outside = locals.isPresent() ? beyond(reaches, totals, locals.get(), local) : new double[n];
        double[] beyond = reaches.sumOverGroups(outside);
        for (int r = 0; r < n; r++) {
            local[r] -= beyond[reaches.group(r)] * reaches.shareOfGroup(r);
        }
        return new DrainageArea("attribute", network, local, outside, missing);
    }

    /** What a headwater's feature drains beyond what flows in and its local-area: land outside the layer, at its head. */
    private static double[] beyond(ReachTable reaches, Column totals, Column locals, double[] local) {
        int n = reaches.size();
        double[] given = new double[n];
        for (int r = 0; r < n; r++) {
            given[r] = locals.has(r) ? locals.at(r) : 0;
        }
        double[] own = reaches.sumOverGroups(given);
        double[] drained = reaches.sumOverGroups(local);
        double[] outside = new double[n];
        for (int r = 0; r < n; r++) {
            int last = reaches.lastOfGroup(r);
            int group = reaches.group(r);
            if (reaches.network().isHeadwater(r) && locals.has(r) && totals.has(last)) {
                double beyond = drained[group] - own[group];
                outside[r] = beyond > OUTSIDE_SHARE * totals.at(last) ? beyond : 0;
                drained[group] -= outside[r];
            }
        }
        return outside;
    }

    /** From the attribute local-area alone, each reach's own. */
    public static DrainageArea fromLocalAttribute(ReachTable reaches) {
        Column locals = reaches.column("local-area").orElseThrow(() -> new IllegalArgumentException("no local-area"));
        double[] local = new double[reaches.size()];
        List<Integer> missing = new ArrayList<>();
        for (int r = 0; r < local.length; r++) {
            if (locals.has(r)) {
                local[r] = locals.at(r);
            } else {
                missing.add(r);
            }
        }
        return new DrainageArea("local-area attribute", reaches.network(), local, new double[local.length], missing);
    }

    /**
     * Length share: a reach's own area is its length times the basin area of its outlet over all mapped length that drains
     * there. An outlet without an area of its own takes a share of {@code rest} by length. A reach above a bifurcation whose arms
     * end in different outlets counts to the outlet that its first arm reaches.
     *
     * @param basinArea area of each outlet's basin [m2], by reach index, where given
     * @param rest area shared over the other outlets by length [m2], at least 0
     */
    public static DrainageArea byLength(ReachTable reaches, Column basinArea, double rest) {
        RiverNetwork network = reaches.network();
        int n = reaches.size();
        int[] outlet = new int[n];
        double[] mapped = new double[n];
        double unshared = 0;
        for (int r = n - 1; r >= 0; r--) {
            outlet[r] = network.isOutlet(r) ? r : outlet[network.out(network.toNode(r), 0)];
            mapped[outlet[r]] += reaches.length(r);
        }
        for (int r = 0; r < n; r++) {
            unshared += network.isOutlet(r) && !basinArea.has(r) ? mapped[r] : 0;
        }
        double[] local = new double[n];
        for (int r = 0; r < n; r++) {
            int o = outlet[r];
            local[r] = basinArea.has(o)
                    ? basinArea.at(o) * reaches.length(r) / mapped[o]
                    : rest * reaches.length(r) / unshared;
        }
        return new DrainageArea("length share", network, local, new double[n], List.of());
    }

    /** How areas were found, as tables print it. */
    public String method() {
        return method;
    }

    /** Area of a reach's own land [m2]; negative where attributes fall downstream. */
    public double local(int reach) {
        return local[reach];
    }

    /** Area beyond the layer that drains to the head of a headwater [m2], at least 0. */
    public double outside(int reach) {
        return outside[reach];
    }

    /** Area at the lower end of a reach, everything upstream counted once [m2]. */
    public double total(int reach) {
        return total[reach];
    }

    /** Last reaches of features that have no value. */
    public List<Integer> missing() {
        return missing;
    }
}
