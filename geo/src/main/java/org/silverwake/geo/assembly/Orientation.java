// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.silverwake.geo.GeoDataException;
import org.silverwake.model.network.Cycles;

/**
 * Which lines of a net flow against their drawn direction. Named outlets decide the lines outside loops for certain.
 * Then, for each connected part, the criteria in their order say whether it is drawn upstream as a whole. Then heights
 * and drainage areas turn single chains where the evidence outweighs what speaks for the drawn direction: a fall
 * of at least {@link #MARGIN} the other way counts as one, the drawn direction {@link #DRAWN}, an outlet more {@link #OUTLET}, a
 * node that water only enters or only leaves {@link #DEAD_NODE}. Last, circles are broken where heights or areas tell which
 * line is wrong. The weights are common practice, no source: they keep the noise of a raster from turning single headwaters.
 */
final class Orientation {
    /** Heights tell nothing below this fall [m], about the noise of open elevation rasters. */
    static final double MARGIN = 5;

    private static final double LARGEST = 4;
    private static final double AREA = 2;
    private static final double DRAWN = 1.6;
    private static final double OUTLET = 1.5;
    private static final double DEAD_NODE = 1.5;
    private static final double CERTAIN = 1e6;
    private static final int SHOWN = 20;
    private static final double NEARLY_ALL = 0.8;
    private static final int FEW = 3;

    private final Net net;
    private final AssemblyOptions options;
    private final Outlets outlets;
    private final Evidence evidence;
    private final Forced forced;
    private final boolean[] flipped;
    private String upstream = "";
    private List<List<Integer>> knots;

    private Orientation(Net net, AssemblyOptions options, Outlets outlets, Evidence evidence, Forced forced) {
        this.net = net;
        this.options = options;
        this.outlets = outlets;
        this.evidence = evidence;
        this.forced = forced;
        this.flipped = new boolean[net.size()];
    }

    /**
     * Finds the directions, those that the user corrected among them; the log hears what became of the corrections.
     *
     * @throws GeoDataException if all lines seem to be drawn upstream and nothing else decides, or corrections contradict
     *     one another
     */
    static Orientation of(
            Net net, List<AttributeReader.Values> values, AssemblyOptions options, String layer, DefectLog log) {
        List<AssemblyOptions.Outlet> named =
                uses(options, AssemblyOptions.Criterion.OUTLET) ? options.outlets() : List.of();
        Outlets outlets = Outlets.of(net, named, options.corrections().outlets(), log);
        Evidence evidence = Evidence.of(net, values, options);
        Orientation plain = new Orientation(net, options, outlets, evidence, Forced.none(net));
        plain.find(layer);
        Forced forced = Forced.of(net, plain, options.corrections(), log);
        Orientation found = plain;
        if (!forced.isEmpty()) {
            found = new Orientation(net, options, outlets, evidence, forced);
            found.find(layer);
        }
        if (!plain.upstream.isEmpty() && !found.upstream.isEmpty()) {
            throw new GeoDataException(found.upstream);
        }
        return found;
    }

    private void find(String layer) {
        WholeParts parts = new WholeParts(net, outlets, evidence);
        boolean[] reversed = parts.reversed(options.orientBy());
        for (int i = 0; i < net.size(); i++) {
            int way = forced.isForced(i) ? forced.direction(i) : outlets.direction(i);
            flipped[i] = way == 0 ? reversed[i] : way < 0;
        }
        upstream = parts.upstream(flipped, options.orientBy(), layer);
        if (uses(options, AssemblyOptions.Criterion.ELEVATION)
                || uses(options, AssemblyOptions.Criterion.DRAINAGE_AREA)) {
            turnChains();
        }
        breakCircles();
    }

    private static boolean uses(AssemblyOptions options, AssemblyOptions.Criterion criterion) {
        return options.orientBy().contains(criterion);
    }

    private double weight(AssemblyOptions.Criterion criterion) {
        int rank = 0;
        for (AssemblyOptions.Criterion c : options.orientBy()) {
            if (c == criterion) {
                return rank == 0 ? 1 : 0.5;
            }
            rank += c == AssemblyOptions.Criterion.OUTLET ? 0 : 1;
        }
        return 0;
    }

    private void turnChains() {
        List<Chains.Chain> chains = Chains.of(net, flipped, outlets::isOutlet);
        double[] forward = new double[chains.size()];
        double[] backward = new double[chains.size()];
        for (int c = 0; c < chains.size(); c++) {
            double supports = support(chains.get(c));
            forward[c] = Math.max(0, -supports);
            backward[c] = DRAWN + Math.max(0, supports);
            for (int i : chains.get(c).lines()) {
                backward[c] += outlets.direction(i) == 0 && !forced.isForced(i) ? 0 : CERTAIN;
            }
        }
        boolean[] turned = TreeDirections.find(
                chains,
                net.nodeCount(),
                forward,
                backward,
                outlets::isOutlet,
                new TreeDirections.Costs(DEAD_NODE, OUTLET));
        for (int c = 0; c < turned.length; c++) {
            if (turned[c]) {
                turn(chains.get(c));
            }
        }
    }

    private void turn(Chains.Chain chain) {
        for (int i : chain.lines()) {
            flipped[i] = !flipped[i];
        }
    }

    /** How strongly heights and areas speak for a chain's present direction, negative against it. */
    private double support(Chains.Chain chain) {
        double drop = drop(chain);
        double votes = votes(chain);
        double byHeight = Math.abs(drop) < MARGIN ? 0 : Math.max(-LARGEST, Math.min(LARGEST, drop / MARGIN));
        return weight(AssemblyOptions.Criterion.ELEVATION) * byHeight
                + weight(AssemblyOptions.Criterion.DRAINAGE_AREA) * AREA * Math.signum(votes);
    }

    private double drop(Chains.Chain chain) {
        double sum = 0;
        for (int i : chain.lines()) {
            sum += drop(i);
        }
        return sum;
    }

    private double votes(Chains.Chain chain) {
        int sum = 0;
        for (int i : chain.lines()) {
            sum += areaVote(i);
        }
        return sum;
    }

    private void breakCircles() {
        knots = knots(net, flipped);
        Set<Integer> done = new HashSet<>();
        while (!knots.isEmpty()) {
            List<Chains.Chain> chains = Chains.of(net, flipped, outlets::isOutlet);
            boolean progress = false;
            for (List<Integer> knot : knots) {
                Chains.Chain worst = worst(chains, new HashSet<>(knot), done);
                if (worst != null) {
                    turn(worst);
                    done.addAll(worst.lines());
                    progress = true;
                }
            }
            if (!progress) {
                return;
            }
            knots = knots(net, flipped);
        }
    }

    private Chains.Chain worst(List<Chains.Chain> chains, Set<Integer> knot, Set<Integer> done) {
        Chains.Chain worst = null;
        double most = 0;
        for (Chains.Chain chain : chains) {
            int first = chain.lines().get(0);
            if (!knot.contains(first)
                    || done.contains(first)
                    || chain.lines().stream().anyMatch(forced::isForced)) {
                continue;
            }
            double against = -drop(chain) / MARGIN - (votes(chain) < 0 ? AREA : 0);
            if (against > most) {
                most = against;
                worst = chain;
            }
        }
        return worst;
    }

    private static List<List<Integer>> knots(Net net, boolean[] flipped) {
        int[] from = new int[net.size()];
        int[] to = new int[net.size()];
        for (int i = 0; i < net.size(); i++) {
            from[i] = flipped[i] ? net.line(i).endNode : net.line(i).startNode;
            to[i] = flipped[i] ? net.line(i).startNode : net.line(i).endNode;
        }
        return Cycles.find(from, to, net.nodeCount());
    }

    boolean isFlipped(int line) {
        return flipped[line];
    }

    /** Number of lines that run against their drawn direction. */
    int turned() {
        int count = 0;
        for (boolean each : flipped) {
            count += each ? 1 : 0;
        }
        return count;
    }

    /** Whether the layer as a whole is drawn from mouth to source. */
    boolean isReversed() {
        return net.size() >= FEW && turned() >= NEARLY_ALL * net.size();
    }

    /** Directions that corrections force. */
    Forced forced() {
        return forced;
    }

    boolean isSure(int line) {
        return outlets.direction(line) != 0;
    }

    boolean hasDrop(int line) {
        return evidence.hasDrop(line);
    }

    boolean isMeasured(int line) {
        return evidence.isMeasured(line);
    }

    /** Fall in flow direction [m], 0 where not known. */
    double drop(int line) {
        return flipped[line] ? -evidence.drop(line) : evidence.drop(line);
    }

    /** +1 where areas rise in flow direction, -1 where they fall, 0 where they cannot tell. */
    int areaVote(int line) {
        return flipped[line] ? -evidence.areaVote(line) : evidence.areaVote(line);
    }

    /** Lines that still run in circles. */
    List<List<Integer>> knots() {
        return knots;
    }

    /** Corrections without which some of these circles would not be there. */
    boolean isKnottedByCorrections() {
        return !forced.culprits(knots).isEmpty();
    }

    String knotText(String layer) {
        List<String> texts = new ArrayList<>();
        Set<String> culprits = forced.culprits(knots);
        if (!culprits.isEmpty()) {
            texts.add(String.join(", ", culprits) + (culprits.size() == 1 ? " makes" : " make")
                    + " water run in a circle; take it back, or turn the other lines of the circle too");
        }
        for (List<Integer> knot : knots) {
            texts.add(
                    layer + ": features " + DefectLog.names(net.featureIds(knot)) + " run in a circle near "
                            + DefectLog.place(net.line(knot.get(0)).start())
                            + "; turn the one that is drawn the wrong way, or let heights or drainage areas decide (orient-by)");
        }
        if (knots.size() > SHOWN) {
            texts.add("and " + (knots.size() - SHOWN) + " more circles");
        }
        return String.join("\n", texts);
    }
}
