// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.List;
import java.util.Optional;

/**
 * Width, depth and velocity from attributes. With velocity and depth, width follows from discharge (an attribute width that
 * breaks Q = U B H is recomputed and counted). With velocity alone, width is that of the hydraulic geometry and depth
 * follows. With width alone or nothing, the hydraulic geometry's depth holds; both are counted.
 */
public final class AttributeChannel implements ChannelShape {
    private static final double AGREEMENT = 0.01;
    private final List<Optional<Column>> velocity;
    private final List<Optional<Column>> depth;
    private final List<Optional<Column>> width;
    private final HydraulicGeometry geometry;

    /** Columns by state [m/s, m, m], and the geometry that fills gaps. */
    public AttributeChannel(
            List<Optional<Column>> velocity,
            List<Optional<Column>> depth,
            List<Optional<Column>> width,
            HydraulicGeometry geometry) {
        this.velocity = List.copyOf(velocity);
        this.depth = List.copyOf(depth);
        this.width = List.copyOf(width);
        this.geometry = geometry;
    }

    @Override
    public Section section(int reach, int state, double discharge, double reference) {
        Optional<Double> u = value(velocity, reach, state);
        Optional<Double> h = value(depth, reach, state);
        Optional<Double> b = value(width, reach, state);
        if (u.isPresent() && h.isPresent()) {
            return new Section(discharge / (u.get() * h.get()), h.get(), u.get(), h.get(), false);
        }
        if (u.isPresent()) {
            double wide = b.orElseGet(() -> geometry.width(discharge, reference));
            double deep = discharge / (u.get() * wide);
            return new Section(wide, deep, u.get(), deep, false);
        }
        Section usual = geometry.section(reach, state, discharge, reference);
        double wide = b.orElse(usual.width());
        double deep = h.orElse(usual.depth());
        return new Section(wide, deep, discharge / (wide * deep), deep, false);
    }

    /** Whether velocity, or width and depth, of a reach are there in every state. */
    boolean isSectionGiven(int reach) {
        boolean given = true;
        for (int s = 0; s < velocity.size(); s++) {
            given &= value(velocity, reach, s).isPresent()
                    || value(width, reach, s).isPresent()
                            && value(depth, reach, s).isPresent();
        }
        return given;
    }

    /** Whether a reach has no velocity of its own in a state, so that the hydraulic geometry fills in. */
    public boolean isFilled(int reach, int state) {
        return value(velocity, reach, state).isEmpty();
    }

    /** Whether all three attributes are there and break Q = U B H by more than 1 %; discharge in [m3/s]. */
    public boolean isWidthRecomputed(int reach, int state, double discharge) {
        Optional<Double> u = value(velocity, reach, state);
        Optional<Double> h = value(depth, reach, state);
        Optional<Double> b = value(width, reach, state);
        return u.isPresent()
                && h.isPresent()
                && b.isPresent()
                && Math.abs(u.get() * h.get() * b.get() - discharge) > AGREEMENT * discharge;
    }

    private static Optional<Double> value(List<Optional<Column>> columns, int reach, int state) {
        return columns.get(state)
                .filter(column -> column.has(reach) && column.at(reach) > 0)
                .map(column -> column.at(reach));
    }
}
