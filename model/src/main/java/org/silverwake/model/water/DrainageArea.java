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
    private static final String TERRAIN_METHOD = "elevation raster";
    private final String method;
    private final double[] local;
    private final double[] outside;
    private final double[] total;
    private final List<Integer> missing;
    private final List<Integer> filled;

    private DrainageArea(
            String method,
            RiverNetwork network,
            double[] local,
            double[] outside,
            List<Integer> missing,
            List<Integer> filled) {
        this.method = filled.isEmpty() ? method : method + ", " + TERRAIN_METHOD + " where missing";
        this.local = local;
        this.outside = outside;
        this.missing = List.copyOf(missing);
        this.filled = List.copyOf(filled);
        double[] both = new double[local.length];
        for (int r = 0; r < both.length; r++) {
            both[r] = local[r] + outside[r];
        }
        this.total = new UpstreamSums(network).total(both);
    }

    /**
     * From the attribute drainage-area. Where a headwater also has local-area and its drainage area is larger by more than
     * 1 %, the difference lies outside the layer and its water enters at the head. A feature without the attribute takes its own
     * land from the elevation raster, where that has it.
     */
    public static DrainageArea fromAttribute(ReachTable reaches) {
        Column totals =
                reaches.column("drainage-area").orElseThrow(() -> new IllegalArgumentException("no drainage-area"));
        Optional<Column> locals = reaches.column("local-area");
        Column terrain = terrain(reaches);
        int n = reaches.size();
        double[] total = new double[n];
        boolean[] known = new boolean[n];
        double[] given = new double[n];
        List<Integer> missing = new ArrayList<>();
        List<Integer> filled = new ArrayList<>();
        for (int r = 0; r < n; r++) {
            known[r] = reaches.isLastOfGroup(r) && totals.has(r);
            total[r] = known[r] ? totals.at(r) : 0;
            boolean lacks = !totals.has(reaches.lastOfGroup(r));
            given[r] = lacks && terrain.has(r) ? terrain.at(r) : 0;
            if (lacks && reaches.isLastOfGroup(r)) {
                (terrain.has(r) ? filled : missing).add(r);
            }
        }
        double[] local = reaches.spreadOverGroups(new UpstreamSums(reaches.network()).local(total, known, given));
        double[] outside = locals.isPresent() ? beyond(reaches, totals, locals.get(), local) : new double[n];
        double[] beyond = reaches.sumOverGroups(outside);
        for (int r = 0; r < n; r++) {
            local[r] = totals.has(reaches.lastOfGroup(r))
                    ? local[r] - beyond[reaches.group(r)] * reaches.shareOfGroup(r)
                    : given[r];
        }
        return new DrainageArea("attribute", reaches.network(), local, outside, missing, filled);
    }

    /** Each reach's land by the elevation raster, that at the head of a headwater included [m2]. */
    private static Column terrain(ReachTable reaches) {
        Column sum = new Column(reaches.size());
        for (String key : List.of("dem-local-area", "dem-head-area")) {
            reaches.column(key).ifPresent(column -> {
                for (int r = 0; r < reaches.size(); r++) {
                    if (column.has(r)) {
                        sum.put(r, (sum.has(r) ? sum.at(r) : 0) + column.at(r));
                    }
                }
            });
        }
        return sum;
    }

    /**
     * From the elevation raster: each reach's own land, and what drains to the head of a headwater, whose water enters there.
     */
    public static DrainageArea fromTerrain(ReachTable reaches) {
        Column land =
                reaches.column("dem-local-area").orElseThrow(() -> new IllegalArgumentException("no dem-local-area"));
        Column heads = reaches.column("dem-head-area").orElseGet(() -> new Column(reaches.size()));
        double[] local = new double[reaches.size()];
        double[] outside = new double[reaches.size()];
        List<Integer> missing = new ArrayList<>();
        for (int r = 0; r < local.length; r++) {
            if (land.has(r)) {
                local[r] = land.at(r);
                outside[r] = heads.has(r) ? heads.at(r) : 0;
            } else {
                missing.add(r);
            }
        }
        return new DrainageArea(TERRAIN_METHOD, reaches.network(), local, outside, missing, List.of());
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

    /** From the attribute local-area alone, each reach's own; where it is missing, from the elevation raster if that has it. */
    public static DrainageArea fromLocalAttribute(ReachTable reaches) {
        Column locals = reaches.column("local-area").orElseThrow(() -> new IllegalArgumentException("no local-area"));
        Column terrain = terrain(reaches);
        double[] local = new double[reaches.size()];
        List<Integer> missing = new ArrayList<>();
        List<Integer> filled = new ArrayList<>();
        for (int r = 0; r < local.length; r++) {
            if (locals.has(r)) {
                local[r] = locals.at(r);
            } else if (terrain.has(r)) {
                local[r] = terrain.at(r);
                filled.add(r);
            } else {
                missing.add(r);
            }
        }
        double[] outside = new double[local.length];
        return new DrainageArea("local-area attribute", reaches.network(), local, outside, missing, filled);
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
        return new DrainageArea("length share", network, local, new double[n], List.of(), List.of());
    }

    /** How areas were found, as tables print it. */
    public String method() {
        return method;
    }

    /** Whether all areas come from the elevation raster. */
    public boolean isFromTerrain() {
        return method.equals(TERRAIN_METHOD);
    }

    /** Area of a reach's own land [m2]; negative where attributes fall downstream. */
    public double local(int reach) {
        return local[reach];
    }

    /** Area that drains to the head of a headwater: land beyond the layer, or by the raster upslope [m2], at least 0. */
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

    /** Last reaches of features, or reaches, that have no value and take that of the elevation raster. */
    public List<Integer> filled() {
        return filled;
    }
}
