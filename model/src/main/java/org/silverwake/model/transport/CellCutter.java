// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.solids.Deposition;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.RoutedWater;
import org.silverwake.model.water.Section;

/**
 * Cuts reaches into cells, the same for all states: until w p L/(H U) is at most 0.1 for every tailings class that holds
 * more than 1 % of the sorbing capacity, and over a bed, of which each cell has one, for droplets, as long as they have not
 * yet lost 99 % of their load; and discharge grows by at most a tenth where there is some at the head. Still water, which is mixed, stays whole. Works on the gross settling rates; slower ones need no finer cells.
 */
final class CellCutter {
    private static final double LARGEST_SETTLED = 0.1;
    private static final double LARGEST_GROWTH = 0.1;
    private static final double SMALLEST_CAPACITY = 0.01;
    private static final double SMALLEST_LEFT = 0.01;
    private static final int MOST_CELLS = 400;

    private final TransportInput input;
    private final Hydraulics hydraulics;
    private final int states;
    private final int classes;
    private final int[] droplets;
    private final int width;
    private final Settling[] settling;
    private final double[] load;
    private final double[] fresh;

    private CellCutter(TransportInput input) {
        this.input = input;
        this.hydraulics = input.hydraulics();
        this.states = input.stateCount();
        this.classes = input.classes().size();
        this.droplets = input.bed().isPresent() ? droplets(input.layout()) : new int[0];
        this.width = classes + droplets.length;
        this.settling = new Settling[states];
        for (int s = 0; s < states; s++) {
            settling[s] = new Settling(input, s);
        }
        this.load = new double[states * width];
        this.fresh = new double[states * width];
    }

    private static int[] droplets(StateLayout layout) {
        return IntStream.range(0, layout.forms().size())
                .filter(f -> layout.forms().get(f).carriage() instanceof Droplets)
                .map(layout::form)
                .toArray();
    }

    static Cells cut(TransportInput input) {
        return input.options().cutCells()
                ? new CellCutter(input).run()
                : Cells.uncut(input.hydraulics().reaches());
    }

    private Cells run() {
        int n = hydraulics.reaches().size();
        Cells.Builder builder = new Cells.Builder(n);
        HeadLoads[] loads = new HeadLoads[states];
        HeadLoads[] origins = new HeadLoads[states];
        double[][] releases = new double[states][];
        for (int s = 0; s < states; s++) {
            loads[s] = new HeadLoads(hydraulics.reaches().network(), hydraulics.water(s), width);
            origins[s] = new HeadLoads(hydraulics.reaches().network(), hydraulics.water(s), width);
            releases[s] = releases(s);
        }
        double[] arriving = new double[width];
        for (int r = 0; r < n; r++) {
            builder.reach();
            for (int s = 0; s < states; s++) {
                loads[s].arriving(r, releases[s], arriving);
                System.arraycopy(arriving, 0, load, s * width, width);
                origins[s].arriving(r, releases[s], arriving);
                System.arraycopy(arriving, 0, fresh, s * width, width);
            }
            if (hydraulics.isStill(r)) {
                stillReach(r, builder);
            } else {
                cutReach(r, builder);
            }
            for (int s = 0; s < states; s++) {
                loads[s].leave(r, load, s * width);
                origins[s].leave(r, fresh, s * width);
            }
        }
        return builder.build();
    }

    /** Tailings solids of each class and droplets of each size, most over the variants [kg/s], reach by reach. */
    private double[] releases(int state) {
        double[] solids = Releases.solids(input, state);
        int variants = input.variantCount();
        int forms = input.layout().count();
        double[] mercury = Releases.mercury(input, state, variants);
        int reaches = hydraulics.reaches().size();
        double[] all = new double[reaches * width];
        for (int r = 0; r < reaches; r++) {
            System.arraycopy(solids, r * classes, all, r * width, classes);
            for (int k = 0; k < droplets.length; k++) {
                for (int v = 0; v < variants; v++) {
                    double released = mercury[(r * forms + droplets[k]) * variants + v];
                    all[r * width + classes + k] = Math.max(all[r * width + classes + k], released);
                }
            }
        }
        return all;
    }

    private void stillReach(int reach, Cells.Builder builder) {
        double length = hydraulics.reaches().length(reach);
        builder.cell(0, length);
        for (int s = 0; s < states && hydraulics.isMixed(reach); s++) {
            if (hydraulics.water(s).isWet(reach)) {
                mix(s, reach, length);
            }
        }
    }

    /** What a still water lets pass of what enters it. */
    private void mix(int state, int reach, double length) {
        Section section = hydraulics.section(state, reach, length);
        Deposition.Flow flow = settling[state].flow(section, hydraulics.shear(state, reach, section), true);
        double out = section.width() * section.depth() * section.velocity();
        double all = Arrays.stream(solids(state, out)).sum();
        for (int j = 0; j < width; j++) {
            double rate = settling[state].rate(j, flow, all);
            load[state * width + j] /= 1 + rate * length / section.velocity();
        }
    }

    private void cutReach(int reach, Cells.Builder builder) {
        double length = hydraulics.reaches().length(reach);
        double smallest = length / MOST_CELLS;
        double x = 0;
        while (x < length) {
            double step = length - x;
            for (int s = 0; s < states; s++) {
                step = Math.min(step, growthStep(s, reach, x, length));
                step = Math.min(step, settlingStep(s, reach, x, step));
            }
            double end = x + Math.max(step, smallest);
            end = length - end < smallest ? length : end;
            builder.cell(x, end);
            for (int s = 0; s < states; s++) {
                advance(s, reach, x, end);
            }
            x = end;
        }
    }

    private double growthStep(int state, int reach, double x, double length) {
        RoutedWater water = hydraulics.water(state);
        double growth = (water.end(reach) - water.head(reach)) / length;
        if (!(water.head(reach) > 0) || !(growth > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        return LARGEST_GROWTH * hydraulics.discharge(state, reach, x) / growth;
    }

    private double settlingStep(int state, int reach, double x, double step) {
        if (isClean(state)) {
            return Double.POSITIVE_INFINITY;
        }
        double at = x + 0.5 * step;
        double discharge = hydraulics.discharge(state, reach, at);
        if (!(discharge > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        Section section = hydraulics.section(state, reach, at);
        Deposition.Flow flow = settling[state].flow(section, hydraulics.shear(state, reach, section), false);
        double[] solids = solids(state, discharge);
        double capacity = 0;
        double[] own = new double[classes];
        for (int j = 0; j < classes; j++) {
            own[j] = solids[j] * StrictMath.pow(10, input.classes().get(j).log10Kd());
            capacity += own[j];
        }
        double limit = Double.POSITIVE_INFINITY;
        double all = Arrays.stream(solids).sum();
        for (int j = 0; j < width; j++) {
            int i = state * width + j;
            boolean counts = j >= classes || own[j] > SMALLEST_CAPACITY * capacity;
            if (counts && load[i] > SMALLEST_LEFT * fresh[i]) {
                double rate = settling[state].rate(j, flow, all) + settling[state].overbank(section.velocity());
                limit = rate > 0 ? Math.min(limit, LARGEST_SETTLED * section.velocity() / rate) : limit;
            }
        }
        return limit;
    }

    private double[] solids(int state, double discharge) {
        double[] solids = new double[classes];
        double background = input.sediment().get(state).at(discharge);
        for (int j = 0; j < classes; j++) {
            ParticleClass particles = input.classes().get(j);
            solids[j] = background * particles.backgroundShare() + load[state * width + j] / discharge;
        }
        return solids;
    }

    private boolean isClean(int state) {
        for (int j = 0; j < width; j++) {
            if (load[state * width + j] > 0) {
                return false;
            }
        }
        return true;
    }

    private void advance(int state, int reach, double from, double to) {
        double middle = 0.5 * (from + to);
        double discharge = hydraulics.discharge(state, reach, middle);
        if (isClean(state)) {
            return;
        }
        if (!(discharge > 0)) {
            Arrays.fill(load, state * width, (state + 1) * width, 0);
            return;
        }
        Section section = hydraulics.section(state, reach, middle);
        Deposition.Flow flow = settling[state].flow(section, hydraulics.shear(state, reach, section), false);
        double all = Arrays.stream(solids(state, discharge)).sum();
        for (int j = 0; j < width; j++) {
            double rate = settling[state].rate(j, flow, all) + settling[state].overbank(section.velocity());
            load[state * width + j] *= StrictMath.exp(-rate * (to - from) / section.velocity());
        }
    }
}
