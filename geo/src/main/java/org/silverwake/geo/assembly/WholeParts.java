// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import org.silverwake.geo.assembly.AssemblyOptions.Criterion;

/** Whether connected parts of a net, or all of it, are drawn from mouth to source. */
final class WholeParts {
    /** Share of the lines (or of the relief) that must speak against the drawn direction. */
    private static final double NEARLY_ALL = 0.8;

    private static final double MOST_JUNCTIONS = 0.6;

    private final Net net;
    private final Outlets outlets;
    private final Evidence evidence;
    private final int[] component;
    private final int parts;

    WholeParts(Net net, Outlets outlets, Evidence evidence) {
        this.net = net;
        this.outlets = outlets;
        this.evidence = evidence;
        this.component = net.components();
        int most = -1;
        for (int c : component) {
            most = Math.max(most, c);
        }
        this.parts = most + 1;
    }

    private int part(int line) {
        return component[net.line(line).startNode];
    }

    /** For each line whether its part is drawn upstream, by the first criterion that can tell. */
    boolean[] reversed(List<Criterion> order) {
        int[] verdict = new int[parts];
        for (Criterion criterion : order) {
            int[] found = verdicts(criterion);
            for (int c = 0; c < parts; c++) {
                verdict[c] = verdict[c] == 0 ? found[c] : verdict[c];
            }
        }
        boolean[] reversed = new boolean[net.size()];
        for (int i = 0; i < reversed.length; i++) {
            reversed[i] = verdict[part(i)] < 0;
        }
        return reversed;
    }

    /** For each part -1 where a criterion says it is drawn upstream, +1 where downstream, 0 where it cannot tell. */
    private int[] verdicts(Criterion criterion) {
        double[] with = new double[parts];
        double[] against = new double[parts];
        for (int i = 0; i < net.size(); i++) {
            double says = says(criterion, i);
            with[part(i)] += Math.max(0, says);
            against[part(i)] += Math.max(0, -says);
        }
        double least = criterion == Criterion.ELEVATION ? Orientation.MARGIN : 1;
        int[] verdict = new int[parts];
        for (int c = 0; c < parts; c++) {
            double all = with[c] + against[c];
            if (all >= least) {
                verdict[c] = against[c] >= NEARLY_ALL * all ? -1 : with[c] >= NEARLY_ALL * all ? 1 : 0;
            }
        }
        return verdict;
    }

    private double says(Criterion criterion, int line) {
        return switch (criterion) {
            case OUTLET -> outlets.direction(line);
            case ELEVATION -> evidence.drop(line);
            case DRAINAGE_AREA -> evidence.areaVote(line);
            case DRAWN -> 0;
        };
    }

    /**
     * Why a layer seems to be drawn upstream where nothing but the drawn direction is to decide, with the ways out; empty
     * where it does not.
     */
    String upstream(boolean[] flipped, List<Criterion> order, String layer) {
        String heights = contradiction(Criterion.ELEVATION, order);
        String areas = contradiction(Criterion.DRAINAGE_AREA, order);
        String shape =
                outlets.isEmpty() && !decides(Criterion.ELEVATION, order) && !decides(Criterion.DRAINAGE_AREA, order)
                        ? shape(flipped)
                        : "";
        String found = heights + areas + shape;
        return found.isEmpty()
                ? ""
                : layer + ": all lines seem to be drawn from mouth to source" + found
                        + "; name the outlet (rivers.outlets), or let heights or drainage areas decide (rivers.orient-by),"
                        + " or turn the lines";
    }

    private boolean decides(Criterion criterion, List<Criterion> order) {
        return order.contains(criterion) && total(criterion, 1) + total(criterion, -1) >= least(criterion);
    }

    private static double least(Criterion criterion) {
        return criterion == Criterion.ELEVATION ? Orientation.MARGIN : 1;
    }

    private double total(Criterion criterion, int sign) {
        double sum = 0;
        for (int i = 0; i < net.size(); i++) {
            sum += Math.max(0, sign * says(criterion, i));
        }
        return sum;
    }

    private String contradiction(Criterion criterion, List<Criterion> order) {
        double against = total(criterion, -1);
        double all = against + total(criterion, 1);
        if (order.contains(criterion) || !outlets.isEmpty() || all < least(criterion) || against < NEARLY_ALL * all) {
            return "";
        }
        return criterion == Criterion.ELEVATION
                ? ": heights rise along the drawn direction"
                : ": drainage areas shrink along the drawn direction";
    }

    /** Many outlets, few sources, and junctions that part rather than join; counted in parts that have junctions. */
    private String shape(boolean[] flipped) {
        int[] in = new int[net.nodeCount()];
        int[] out = new int[net.nodeCount()];
        boolean[] hasJunction = new boolean[parts];
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            out[flipped[i] ? line.endNode : line.startNode]++;
            in[flipped[i] ? line.startNode : line.endNode]++;
        }
        int junctions = 0;
        int parting = 0;
        for (int k = 0; k < in.length; k++) {
            if (in[k] + out[k] >= 3) {
                junctions++;
                parting += out[k] > in[k] ? 1 : 0;
                hasJunction[component[k]] = true;
            }
        }
        int sources = 0;
        int ends = 0;
        for (int k = 0; k < in.length; k++) {
            if (hasJunction[component[k]]) {
                sources += in[k] == 0 ? 1 : 0;
                ends += out[k] == 0 ? 1 : 0;
            }
        }
        return junctions > 0 && parting >= MOST_JUNCTIONS * junctions && ends >= 2 * sources
                ? ": " + ends + " outlets but " + sources + " headwaters, and at " + parting + " of " + junctions
                        + " junctions the lines part rather than join"
                : "";
    }
}
