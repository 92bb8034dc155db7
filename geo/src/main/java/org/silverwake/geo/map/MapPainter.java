// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.IntStream;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.style.FeatureTypeStyle;
import org.geotools.api.style.Style;
import org.geotools.api.style.Symbolizer;
import org.geotools.geometry.jts.GeometryClipper;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Walks styles over features onto any Graphics2D, by the painter's model of SLD 1.0 (OGC 02-070): one pass per feature type style;
 * within it, rules whose filter and scale range fit, else the ElseFilter rules. Lengths in styles are points of the page. Features are WGS 84
 * degrees, longitude first. Texts come last, once, by {@link #paintLabels}.
 */
public final class MapPainter {
    /** Beyond the view, for symbols whose middle is outside [points]. */
    private static final double MARGIN = 40;

    private static final Geometry NOTHING = new GeometryFactory().createEmpty(0);

    private final MapFrame frame;
    private final Envelope bounds;
    private final GeometryClipper clipper;
    private final Graphics2D g;
    private final LabelInk labels;
    private final SymbolPainter symbols;
    private List<SimpleFeature> known = List.of();
    private PageShape[] shapes = {};

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

    /** Draws features by a style. What is drawn of the same list again stays where it came to lie on the page. */
    public void paint(List<SimpleFeature> features, Style style) {
        if (features != known) {
            known = features;
            PageShape[] made = new PageShape[features.size()];
            IntStream.range(0, made.length)
                    .parallel()
                    .forEach(k -> made[k] = onPage(features.get(k).getDefaultGeometry()));
            shapes = made;
        }
        double scale = frame.scaleDenominator();
        for (FeatureTypeStyle pass : style.featureTypeStyles()) {
            List<RuleTest> rules = pass.rules().stream()
                    .filter(rule -> scale >= rule.getMinScaleDenominator() && scale < rule.getMaxScaleDenominator())
                    .map(RuleTest::new)
                    .toList();
            for (int k = 0; k < shapes.length; k++) {
                paint(k, rules);
            }
        }
        symbols.dry();
    }

    private void paint(int k, List<RuleTest> rules) {
        SimpleFeature feature = known.get(k);
        boolean hit = false;
        for (RuleTest rule : rules) {
            if (rule.fits(feature)) {
                hit = true;
                paint(rule, k);
            }
        }
        for (RuleTest rule : rules) {
            if (rule.isElse() && !hit) {
                paint(rule, k);
            }
        }
    }

    private void paint(RuleTest rule, int k) {
        for (Symbolizer symbolizer : rule.symbolizers()) {
            symbols.paint(symbolizer, known.get(k), shapes[k]);
        }
    }

    /** What lies far outside the view is cut off, so that drawings as lines stay small. */
    private PageShape onPage(Object geometry) {
        if (geometry instanceof LineString line && !line.isEmpty()) {
            PageLine page = frame.pageLine(line);
            if (bounds.covers(page.box())) {
                return PageShape.of(page, () -> frame.toPage(line));
            }
        }
        return PageShape.of(geometry instanceof Geometry ground ? clipped(ground) : NOTHING);
    }

    private Geometry clipped(Geometry ground) {
        Geometry page = frame.toPage(ground);
        if (bounds.covers(page.getEnvelopeInternal())) {
            return page;
        }
        Geometry inside = bounds.intersects(page.getEnvelopeInternal()) ? clipper.clip(page, false) : null;
        return inside == null ? page.getFactory().createEmpty(page.getDimension()) : inside;
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
