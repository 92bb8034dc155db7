// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.Map;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.filter.expression.Literal;
import org.geotools.api.style.Fill;
import org.geotools.api.style.Stroke;

/** Colors and strokes of a style as java.awt wants them; what does not depend on the feature is made once. */
final class Pens {
    private final Map<Object, Color> colors = new IdentityHashMap<>();
    private final Map<Stroke, BasicStroke> strokes = new IdentityHashMap<>();

    Color color(Fill fill, Object feature) {
        Color known = colors.get(fill);
        if (known != null) {
            return known;
        }
        Color color = StyleValues.color(fill, feature, Color.GRAY);
        if (isFixed(fill.getColor(), fill.getOpacity())) {
            colors.put(fill, color);
        }
        return color;
    }

    Color color(Stroke stroke, Object feature) {
        Color known = colors.get(stroke);
        if (known != null) {
            return known;
        }
        Color color = StyleValues.color(stroke, feature);
        if (isFixed(stroke.getColor(), stroke.getOpacity())) {
            colors.put(stroke, color);
        }
        return color;
    }

    BasicStroke stroke(Stroke stroke, Object feature) {
        BasicStroke known = strokes.get(stroke);
        if (known != null) {
            return known;
        }
        BasicStroke made = StyleValues.stroke(stroke, feature);
        if (isFixed(stroke.getWidth(), stroke.getLineCap(), stroke.getLineJoin(), stroke.getDashOffset())) {
            strokes.put(stroke, made);
        }
        return made;
    }

    private static boolean isFixed(Expression... values) {
        return Arrays.stream(values).allMatch(value -> value == null || value instanceof Literal);
    }
}
