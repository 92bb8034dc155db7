// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.util.List;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.style.FeatureTypeStyle;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;
import org.geotools.api.style.Symbolizer;
import org.geotools.geometry.jts.GeometryClipper;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;

/**
 * Walks styles over features onto any Graphics2D, by the painter's model of SLD 1.0 (OGC 02-070): one pass per feature type style;
 * within it, rules whose filter and scale range fit, else the ElseFilter rules. Lengths in styles are points of the page. Features are WGS 84
 * degrees, longitude first. Texts come last, once, by {@link #paintLabels}.
 */
public final class MapPainter {
    /** Beyond the view, for symbols whose middle is outside [points]. */
    private static final double MARGIN = 40;

    private final MapFrame frame;
    private final Envelope bounds;
    private final GeometryClipper clipper;
    private final Graphics2D g;
    private final LabelInk labels;
    private final SymbolPainter symbols;

    /** Draws onto the page that g has been scaled to, one unit per point. */
    public MapPainter(Graphics2D g, MapFrame frame) {
        this.g = g;
        this.frame = frame;
        bounds = new Envelope(
                frame.view().getMinX(),
                frame.view().getMaxX(),
                frame.view().getMinY(),
                frame.view().getMaxY());
        bounds.expandBy(MARGIN);
        clipper = new GeometryClipper(bounds);
        labels = new LabelInk(frame.view());
        symbols = new SymbolPainter(g, labels);
    }

    /** Draws features by a style. */
    public void paint(Iterable<SimpleFeature> features, Style style) {
        double scale = frame.scaleDenominator();
        for (FeatureTypeStyle pass : style.featureTypeStyles()) {
            List<Rule> rules = pass.rules().stream()
                    .filter(rule -> scale >= rule.getMinScaleDenominator() && scale < rule.getMaxScaleDenominator())
                    .toList();
            for (SimpleFeature feature : features) {
                paint(feature, rules);
            }
        }
    }

    private void paint(SimpleFeature feature, List<Rule> rules) {
        if (!(feature.getDefaultGeometry() instanceof Geometry ground)) {
            return;
        }
        Geometry page = null;
        boolean hit = false;
        for (Rule rule : rules) {
            if (!rule.isElseFilter()
                    && (rule.getFilter() == null || rule.getFilter().evaluate(feature))) {
                hit = true;
                page = page == null ? onPage(ground) : page;
                paint(rule, feature, page);
            }
        }
        for (Rule rule : rules) {
            if (rule.isElseFilter() && !hit) {
                page = page == null ? onPage(ground) : page;
                paint(rule, feature, page);
            }
        }
    }

    /** What lies far outside the view is cut off, so that drawings as lines stay small. */
    private Geometry onPage(Geometry ground) {
        Geometry page = frame.toPage(ground);
        if (bounds.covers(page.getEnvelopeInternal())) {
            return page;
        }
        Geometry inside = bounds.intersects(page.getEnvelopeInternal()) ? clipper.clip(page, false) : null;
        return inside == null ? page.getFactory().createEmpty(page.getDimension()) : inside;
    }

    private void paint(Rule rule, SimpleFeature feature, Geometry page) {
        for (Symbolizer symbolizer : rule.symbolizers()) {
            symbols.paint(symbolizer, feature, page);
        }
    }

    /** The texts met so far. */
    LabelInk labels() {
        return labels;
    }

    /** Places and draws all texts met so far; how many names of points found no room. Names along lines are not counted. */
    public int paintLabels() {
        return labels.paint(g);
    }
}
