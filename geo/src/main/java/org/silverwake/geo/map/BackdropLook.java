// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.Optional;

/**
 * How a kind of layer under the rivers is drawn: pale, warm gray and brown, water alone pale blue, nothing green, so that classes of reaches stay
 * the strongest thing on the map also in a copy without color. Chosen.
 *
 * @param fill of areas
 * @param dotted whether areas are filled with dots
 * @param edge lines, edges of areas, dots and points
 * @param width of lines and edges [points]
 * @param dash lengths drawn and left out [points]; none for an unbroken line
 * @param ink of names
 */
record BackdropLook(Optional<Color> fill, boolean dotted, Color edge, float width, float[] dash, Color ink) {
    private static final float[] UNBROKEN = {};
    private static final float MITER = 10;
    /** Share of its own color that is left in an area of a color the user gave [-]. */
    private static final double TINT = 0.25;

    private static final int FULL = 255;

    static BackdropLook of(BackdropLayer.Look look) {
        BackdropLook usual = usual(look.kind());
        float width = (float) look.width().orElse(usual.width);
        if (look.color().isEmpty()) {
            return new BackdropLook(usual.fill, usual.dotted, usual.edge, width, usual.dash, usual.ink);
        }
        Color given = Color.decode(look.color().get());
        return new BackdropLook(usual.fill.map(fill -> tint(given)), usual.dotted, given, width, usual.dash, usual.ink);
    }

    private static BackdropLook usual(BackdropLayer.Kind kind) {
        return switch (kind) {
            case ROADS -> new BackdropLook(Optional.empty(), false, rgb(0x978672), 0.9f, UNBROKEN, rgb(0x6b5c4b));
            case LAKES ->
                new BackdropLook(Optional.of(rgb(0xe3ecf5)), false, rgb(0x8ea6c0), 0.6f, UNBROKEN, rgb(0x5b7390));
            case SETTLEMENTS ->
                new BackdropLook(Optional.of(rgb(0xe6ddd3)), false, rgb(0x8f8274), 0.6f, UNBROKEN, rgb(0x5a5148));
            case FOREST -> new BackdropLook(Optional.empty(), true, rgb(0xbfb5a6), 0.4f, UNBROKEN, rgb(0x7d7367));
            case BORDERS ->
                new BackdropLook(
                        Optional.empty(), false, rgb(0x8d8489), 0.9f, new float[] {6, 2.2f, 1.2f, 2.2f}, rgb(0x6b6268));
            case OTHER -> new BackdropLook(Optional.empty(), false, rgb(0x9a9590), 0.7f, UNBROKEN, rgb(0x5f5b57));
        };
    }

    private static Color rgb(int rgb) {
        return new Color(rgb);
    }

    private static Color tint(Color color) {
        return new Color(paler(color.getRed()), paler(color.getGreen()), paler(color.getBlue()));
    }

    private static int paler(int part) {
        return (int) Math.round(FULL - TINT * (FULL - part));
    }

    BasicStroke stroke() {
        return dash.length == 0
                ? new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, MITER, dash, 0);
    }
}
