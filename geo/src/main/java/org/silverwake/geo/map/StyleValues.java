// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.filter.expression.Literal;
import org.geotools.api.style.Fill;
import org.geotools.api.style.Stroke;

/** Values of style expressions for one feature, as java.awt wants them. */
final class StyleValues {
    private static final float MITER_LIMIT = 10;

    private StyleValues() {}

    static double number(Expression expression, Object feature, double otherwise) {
        if (expression instanceof Literal literal && literal.getValue() instanceof Number number) {
            return number.doubleValue();
        }
        Double value = expression == null ? null : expression.evaluate(feature, Double.class);
        return value == null ? otherwise : value;
    }

    static String text(Expression expression, Object feature, String otherwise) {
        String value = expression == null ? null : expression.evaluate(feature, String.class);
        return value == null ? otherwise : value;
    }

    static Color color(Fill fill, Object feature, Color otherwise) {
        return fill == null ? otherwise : color(fill.getColor(), fill.getOpacity(), feature, otherwise);
    }

    static Color color(Stroke stroke, Object feature) {
        return color(stroke.getColor(), stroke.getOpacity(), feature, Color.BLACK);
    }

    private static Color color(Expression color, Expression opacity, Object feature, Color otherwise) {
        Color solid = color == null ? null : color.evaluate(feature, Color.class);
        if (solid == null) {
            return otherwise;
        }
        double alpha = Math.max(0, Math.min(1, number(opacity, feature, 1)));
        return new Color(solid.getRed(), solid.getGreen(), solid.getBlue(), (int) Math.round(255 * alpha));
    }

    static BasicStroke stroke(Stroke stroke, Object feature) {
        int cap = switch (text(stroke.getLineCap(), feature, "butt")) {
            case "round" -> BasicStroke.CAP_ROUND;
            case "square" -> BasicStroke.CAP_SQUARE;
            default -> BasicStroke.CAP_BUTT;
        };
        int join = switch (text(stroke.getLineJoin(), feature, "miter")) {
            case "round" -> BasicStroke.JOIN_ROUND;
            case "bevel" -> BasicStroke.JOIN_BEVEL;
            default -> BasicStroke.JOIN_MITER;
        };
        float[] dash = stroke.getDashArray();
        float width = (float) number(stroke.getWidth(), feature, 1);
        return dash == null || dash.length == 0
                ? new BasicStroke(width, cap, join, MITER_LIMIT)
                : new BasicStroke(
                        width, cap, join, MITER_LIMIT, dash, (float) number(stroke.getDashOffset(), feature, 0));
    }

    static Font font(org.geotools.api.style.Font font, Object feature) {
        double size = font == null ? 10 : number(font.getSize(), feature, 10);
        if (font != null && "bold".equals(text(font.getWeight(), feature, ""))) {
            return Fonts.bold(size);
        }
        boolean upright = font == null || "normal".equals(text(font.getStyle(), feature, "normal"));
        return upright ? Fonts.regular(size) : Fonts.oblique(size);
    }
}
