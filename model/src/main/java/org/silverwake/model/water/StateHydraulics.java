// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.List;
import org.silverwake.model.numerics.Propagator;

/**
 * One flow state's hydraulics as flat arrays over cells, computed once: discharge, velocity, depth, width, shear, skin
 * shear, travel time. A cell that carries no water is dry and has none of them. A cell of still water is mixed all through, or
 * hands on to the cell that holds its volume what enters it.
 */
public final class StateHydraulics {
    private final int state;
    private final double[] head;
    private final double[] end;
    private final double[] velocity;
    private final double[] depth;
    private final double[] width;
    private final double[] shear;
    private final double[] skinShear;
    private final double[] shearVelocity;
    private final double[] travelTime;
    private final boolean[] oddRoughness;
    private final double[] impliedRoughness;
    private final boolean[] mixed;
    private final boolean[] through;
    private final int[] alike;

    private StateHydraulics(int state, int n) {
        this.state = state;
        this.head = new double[n];
        this.end = new double[n];
        this.velocity = new double[n];
        this.depth = new double[n];
        this.width = new double[n];
        this.shear = new double[n];
        this.skinShear = new double[n];
        this.shearVelocity = new double[n];
        this.travelTime = new double[n];
        this.oddRoughness = new boolean[n];
        this.impliedRoughness = new double[n];
        this.mixed = new boolean[n];
        this.through = new boolean[n];
        this.alike = new int[n];
    }

    /** Hydraulics of a state on cells, each taken at its mean discharge. */
    public static StateHydraulics of(Hydraulics hydraulics, Cells cells, int state) {
        StateHydraulics result = new StateHydraulics(state, cells.count());
        for (int c = 0; c < cells.count(); c++) {
            int reach = cells.reach(c);
            result.head[c] = hydraulics.discharge(state, reach, cells.from(c));
            result.end[c] = hydraulics.discharge(state, reach, cells.to(c));
            result.mixed[c] = hydraulics.isMixed(reach);
            result.through[c] = hydraulics.isStill(reach) && !result.mixed[c];
            result.alike[c] = result.through[c] ? cells.start(holder(hydraulics, reach, state)) : c;
            if (result.head[c] + result.end[c] > 0) {
                double middle = 0.5 * (cells.from(c) + cells.to(c));
                Section section = hydraulics.section(state, reach, middle);
                Shear shear = hydraulics.shear(state, reach, section);
                result.velocity[c] = section.velocity();
                result.depth[c] = section.depth();
                result.width[c] = section.width();
                result.shear[c] = shear.total();
                result.skinShear[c] = shear.skin();
                result.shearVelocity[c] =
                        shear.velocity(hydraulics.properties(state).density());
                result.travelTime[c] = cells.length(c) / section.velocity();
                result.oddRoughness[c] = shear.isRoughnessOdd();
                result.impliedRoughness[c] = shear.impliedRoughness();
            }
        }
        return result;
    }

    /** The reach that holds the water a reach of still water runs through: one that is not dry, if there is one. */
    private static int holder(Hydraulics hydraulics, int reach, int state) {
        List<Integer> holders = hydraulics.alike(reach);
        return holders.stream()
                .filter(hydraulics.water(state)::isWet)
                .findFirst()
                .orElse(holders.get(0));
    }

    /** The flow state [-]. */
    public int state() {
        return state;
    }

    /** Whether a cell carries water. */
    public boolean isWet(int cell) {
        return head[cell] + end[cell] > 0;
    }

    /** Discharge at a cell's head [m3/s]. */
    public double head(int cell) {
        return head[cell];
    }

    /** Discharge at a cell's end [m3/s]. */
    public double end(int cell) {
        return end[cell];
    }

    /** Mean discharge of a cell [m3/s]; of a mixed one what flows out of it. */
    public double mean(int cell) {
        return mixed[cell] && end[cell] > 0 ? end[cell] : 0.5 * (head[cell] + end[cell]);
    }

    /** Velocity U [m/s]. */
    public double velocity(int cell) {
        return velocity[cell];
    }

    /** Mean depth H [m]. */
    public double depth(int cell) {
        return depth[cell];
    }

    /** Surface width B [m]. */
    public double width(int cell) {
        return width[cell];
    }

    /** Bed shear stress [Pa]. */
    public double shear(int cell) {
        return shear[cell];
    }

    /** Skin shear [Pa]. */
    public double skinShear(int cell) {
        return skinShear[cell];
    }

    /** Shear velocity u* [m/s]. */
    public double shearVelocity(int cell) {
        return shearVelocity[cell];
    }

    /** Travel time [s]; the time that water stays where it is mixed: the volume over the discharge. */
    public double travelTime(int cell) {
        return travelTime[cell];
    }

    /** Whether a cell is still water, mixed all through. */
    public boolean isMixed(int cell) {
        return mixed[cell];
    }

    /** Whether a cell lies in still water whose volume stands in another: what enters goes on as it is. */
    public boolean isThrough(int cell) {
        return through[cell];
    }

    /** Whether a cell lies in still water. */
    public boolean isStill(int cell) {
        return mixed[cell] || through[cell];
    }

    /** The cell whose water is that of a cell: its own, or one that holds the volume of its still water. */
    public int alike(int cell) {
        return alike[cell];
    }

    /** Makes a propagator ready for a cell that carries water; rates [1/s] begin at an offset. */
    public void prepare(Propagator propagator, double[] rates, int offset, int cell) {
        if (mixed[cell]) {
            propagator.prepareMixed(rates, offset, travelTime[cell]);
        } else {
            propagator.prepare(rates, offset, travelTime[cell]);
        }
    }

    /** Mean over a cell of what decays at a rate [1/s], per unit that enters [-]. */
    public double meanLeft(int cell, double rate) {
        double x = rate * travelTime[cell];
        return mixed[cell] ? 1 / (1 + x) : Propagator.meanOfDecay(x);
    }

    /** What is left at a cell's end of what decays at a rate [1/s], per unit that enters [-]. */
    public double endLeft(int cell, double rate) {
        double x = rate * travelTime[cell];
        return mixed[cell] ? 1 / (1 + x) : StrictMath.exp(-x);
    }

    /** Whether the Manning n that slope, depth and velocity imply is out of range. */
    public boolean isRoughnessOdd(int cell) {
        return oddRoughness[cell];
    }

    /** Manning n that slope, depth and velocity imply [s/m^(1/3)]; 0 where no slope is known. */
    public double impliedRoughness(int cell) {
        return impliedRoughness[cell];
    }
}
