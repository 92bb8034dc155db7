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
import org.locationtech.jts.geom.Geometry;

/**
 * Walks styles over features onto any Graphics2D, by the painter's model of SLD 1.0 (OGC 02-070): one pass per feature type style;
 * within it, rules whose filter and scale range fit, else the ElseFilter rules. Lengths in styles are points of the page. Features are WGS 84
 * degrees, longitude first. Texts come last, once, by {@link #paintLabels}.
 */
public final class MapPainter {
    private final MapFrame frame;
    private final Graphics2D g;
    private final LabelInk labels;
    private final SymbolPainter symbols;

    /** Draws onto the page that g has been scaled to, one unit per point. */
    public MapPainter(Graphics2D g, MapFrame frame) {
        this.g = g;
        this.frame = frame;
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
                page = page == null ? frame.toPage(ground) : page;
                paint(rule, feature, page);
            }
        }
        for (Rule rule : rules) {
            if (rule.isElseFilter() && !hit) {
                page = page == null ? frame.toPage(ground) : page;
                paint(rule, feature, page);
            }
        }
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
