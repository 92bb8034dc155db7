// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.function.IntSupplier;

/**
 * Says of what is drawn which part of the page it is. An SVG keeps it as {@code class} of each element, the outer part before the inner
 * one ("map label", "legend symbol"), so that a reader of the file can tell what is what; other pictures know nothing of it. The names
 * are listed in docs/how-to/own-style.md.
 */
final class Part {
    private static final RenderingHints.Key PART = new RenderingHints.Key(1) {
        @Override
        public boolean isCompatibleValue(Object value) {
            return value instanceof String;
        }
    };

    private Part() {}

    /** Draws something as a part of what is being drawn. */
    static void draw(Graphics2D g, String name, Runnable drawing) {
        String around = of(g.getRenderingHint(PART));
        g.setRenderingHint(PART, around.isEmpty() ? name : around + " " + name);
        drawing.run();
        g.setRenderingHint(PART, around);
    }

    /** The same of a drawing that counts something. */
    static int count(Graphics2D g, String name, IntSupplier drawing) {
        int[] counted = new int[1];
        draw(g, name, () -> counted[0] = drawing.getAsInt());
        return counted[0];
    }

    /** What is being drawn by a context with these hints; "" where nobody said. */
    static String in(RenderingHints hints) {
        return of(hints.get(PART));
    }

    private static String of(Object hint) {
        return hint == null ? "" : hint.toString();
    }
}
