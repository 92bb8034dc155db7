// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.silverwake.model.numerics.NumericalException;

/**
 * Discharge, section and shear at any stretch of any reach in every flow state: what {@link StateHydraulics} is filled
 * from, and what decides how reaches are cut into cells.
 */
public final class Hydraulics {
    private final ReachTable reaches;
    private final List<RoutedWater> water;
    private final double[] share;
    private final WaterProperties[] properties;
    private final ChannelShape shape;
    private final Column slope;
    private final Column roughness;
    private final double medianDiameter;
    private final double[] standing;

    /**
     * Hydraulics.
     *
     * @param water routed water by state
     * @param share share of the year by state [-], summing to 1
     * @param properties water by state
     * @param slope energy slope where known [-]
     * @param roughness stated Manning n where given [s/m^(1/3)]
     * @param medianDiameter bed d50 [m]
     */
    public Hydraulics(
            ReachTable reaches,
            List<RoutedWater> water,
            double[] share,
            List<WaterProperties> properties,
            ChannelShape shape,
            Column slope,
            Column roughness,
            double medianDiameter) {
        this.reaches = reaches;
        this.water = List.copyOf(water);
        this.share = share.clone();
        this.properties = properties.toArray(new WaterProperties[0]);
        this.shape = shape;
        this.slope = slope;
        this.roughness = roughness;
        this.medianDiameter = medianDiameter;
        this.standing = reaches.bodies().standing(reaches, this.water, share);
    }

    /** The reaches. */
    public ReachTable reaches() {
        return reaches;
    }

    /** Number of flow states [-]. */
    public int stateCount() {
        return share.length;
    }

    /** Share of the year of a state [-]. */
    public double share(int state) {
        return share[state];
    }

    /** Routed water of a state. */
    public RoutedWater water(int state) {
        return water.get(state);
    }

    /** Water properties of a state. */
    public WaterProperties properties(int state) {
        return properties[state];
    }

    /** Whether a reach runs through a still water. */
    public boolean isStill(int reach) {
        return reaches.bodies().isStill(reach);
    }

    /** Whether a reach holds a still water's volume, or its part of it, mixed all through. */
    public boolean isMixed(int reach) {
        return isStill(reach) && standing[reach] > 0;
    }

    /** Reaches whose water is also that of a reach: its own, or those that hold the volume of its still water. */
    public List<Integer> alike(int reach) {
        WaterBodies bodies = reaches.bodies();
        return isStill(reach)
                ? bodies.exits(bodies.of(reach).orElseThrow()).stream()
                        .filter(this::isMixed)
                        .toList()
                : List.of(reach);
    }

    /** Cells whose water is that of a reach: its own, or those that hold the volume of its still water. */
    public int[] cellsOf(int reach, Cells cells) {
        return isStill(reach)
                ? alike(reach).stream().mapToInt(cells::start).toArray()
                : IntStream.range(cells.start(reach), cells.start(reach + 1)).toArray();
    }

    /** Discharge that a section of a reach is taken at [m3/s]: a still water's is what flows out of it. */
    private double shaping(int state, int reach, double chainage) {
        RoutedWater routed = water.get(state);
        return isMixed(reach) && routed.end(reach) > 0 ? routed.end(reach) : discharge(state, reach, chainage);
    }

    /** Discharge at a chainage [m] of a reach in a state [m3/s]; it grows linearly. */
    public double discharge(int state, int reach, double chainage) {
        RoutedWater routed = water.get(state);
        double part = chainage / reaches.length(reach);
        return part >= 1 ? routed.end(reach) : routed.head(reach) + (routed.end(reach) - routed.head(reach)) * part;
    }

    /** Share-weighted mean discharge at a chainage [m] of a reach [m3/s]. */
    public double reference(int reach, double chainage) {
        double mean = 0;
        for (int s = 0; s < share.length; s++) {
            mean += share[s] * discharge(s, reach, chainage);
        }
        return mean;
    }

    /**
     * Section at a chainage [m] for its discharge there, which must be above 0.
     *
     * @throws NumericalException if no depth is found
     */
    public Section section(int state, int reach, double chainage) {
        Optional<WaterBodies.Body> body = reaches.bodies().of(reach);
        double discharge = shaping(state, reach, chainage);
        if (body.isPresent()) {
            double width = bodyWidth(body.get(), reach);
            double depth = body.get().depth();
            return new Section(width, depth, discharge / (width * depth), depth, false);
        }
        try {
            return shape.section(reach, state, discharge, reference(reach, chainage));
        } catch (MathIllegalStateException | MathIllegalArgumentException e) {
            throw new NumericalException(
                    "reach " + reaches.network().id(reach),
                    "no depth was found for a discharge of " + discharge
                            + " m3/s; check its slope, width and Manning n",
                    e);
        }
    }

    /** Width of a body's area spread along the reach that holds it, or along all its reaches where none does. */
    private double bodyWidth(WaterBodies.Body body, int reach) {
        return standing[reach] > 0
                ? standing[reach] / reaches.length(reach)
                : body.area()
                        / body.reaches().stream().mapToDouble(reaches::length).sum();
    }

    /**
     * Shear in a section of a reach. In still water the bed's slope moves no water: shear is that of its velocity over the
     * stated Manning n, else over that of the grains.
     *
     * @throws IllegalArgumentException naming the reach, if neither slope nor Manning n is known
     */
    public Shear shear(int state, int reach, Section section) {
        if (isStill(reach)) {
            double n = roughness.has(reach) ? roughness.at(reach) : Shear.grainRoughness(medianDiameter);
            return Shear.of(section, 0, n, properties[state].density(), medianDiameter);
        }
        if (!slope.has(reach) && !roughness.has(reach)) {
            throw new IllegalArgumentException(
                    "reach " + reaches.network().id(reach)
                            + ": neither slope nor Manning n is known; map a slope column, give an elevation raster or channel.manning-n");
        }
        return Shear.of(
                section,
                slope.has(reach) ? slope.at(reach) : 0,
                roughness.has(reach) ? roughness.at(reach) : 0,
                properties[state].density(),
                medianDiameter);
    }

    /**
     * Width of the bed that all flow states share at a chainage [m]: the section's at the share-weighted mean discharge; where
     * sections are given by state, the mean of theirs; in still waters and wetlands their area over the length of what holds it.
     * 0 where there is never water.
     */
    public double bedWidth(int reach, double chainage) {
        double reference = reference(reach, chainage);
        if (reaches.bodies().of(reach).isPresent()) {
            return reference > 0 ? standing[reach] / reaches.length(reach) : 0;
        }
        double width = 0;
        for (int s = 0; s < share.length && reference > 0; s++) {
            width += share[s] * shape.section(reach, s, reference, reference).width();
        }
        return width;
    }

    /** Slope of a reach, if known [-]; 0 where not. */
    public double slope(int reach) {
        return slope.has(reach) ? slope.at(reach) : 0;
    }
}
