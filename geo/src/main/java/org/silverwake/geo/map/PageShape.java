// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.function.Supplier;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;

/** What of a feature is on the page, made once for all symbols that are drawn over it. Geometries of lines are made only where somebody asks for them. */
final class PageShape {
    private final Supplier<Geometry> maker;
    private final PageLine[] lines;
    private Geometry whole;

    private PageShape(Supplier<Geometry> maker, PageLine... lines) {
        this.maker = maker;
        this.lines = lines;
    }

    static PageShape of(Geometry page) {
        PageShape shape = new PageShape(() -> page, new PageLine[page.getNumGeometries()]);
        shape.whole = page;
        return shape;
    }

    /** One line, and how to make the geometry it is of. */
    static PageShape of(PageLine line, Supplier<Geometry> maker) {
        return new PageShape(maker, line);
    }

    int parts() {
        return lines.length;
    }

    /** Whether a part is a line with points. */
    boolean isLine(int k) {
        return lines[k] != null || part(k) instanceof LineString line && !line.isEmpty();
    }

    PageLine line(int k) {
        if (lines[k] == null) {
            lines[k] = PageLine.of((LineString) part(k));
        }
        return lines[k];
    }

    Geometry part(int k) {
        if (whole == null) {
            whole = maker.get();
        }
        return whole.getGeometryN(k);
    }
}
