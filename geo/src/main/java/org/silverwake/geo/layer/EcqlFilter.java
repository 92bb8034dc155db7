// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.feature.simple.SimpleFeatureType;
import org.geotools.api.filter.Filter;
import org.geotools.api.filter.expression.PropertyName;
import org.geotools.feature.simple.SimpleFeatureBuilder;
import org.geotools.feature.simple.SimpleFeatureTypeBuilder;
import org.geotools.filter.text.cql2.CQLException;
import org.geotools.filter.text.ecql.ECQL;
import org.geotools.filter.visitor.DuplicatingFilterVisitor;
import org.silverwake.geo.GeoDataException;

/**
 * The user's ECQL text, which chooses features by their attributes. Columns are renamed to c0, c1 ... inside, so that
 * names with blanks or colons (quoted in the text) work too. Dates compare as texts, 2026-01-31.
 */
final class EcqlFilter {
    private final String text;
    private final List<String> columns;
    private final Filter filter;
    private final SimpleFeatureType type;

    EcqlFilter(String text, List<String> columns) {
        this.text = text;
        this.columns = List.copyOf(columns);
        SimpleFeatureTypeBuilder builder = new SimpleFeatureTypeBuilder();
        builder.setName("layer");
        for (int i = 0; i < columns.size(); i++) {
            builder.add(inside(i), Object.class);
        }
        type = builder.buildFeatureType();
        filter = (Filter) parse(text).accept(new Renaming(), null);
    }

    private static Filter parse(String text) {
        try {
            return ECQL.toFilter(text);
        } catch (CQLException e) {
            String reason = String.valueOf(e.getMessage())
                    .lines()
                    .findFirst()
                    .orElse("")
                    .strip();
            throw new GeoDataException(
                    "filter \"" + text + "\" is not understood (" + reason
                            + "); write it as ECQL, such as: kind = 'stream' AND area > 2.5",
                    e);
        }
    }

    private static String inside(int column) {
        return "c" + column;
    }

    /** Whether the filter chooses the feature with this id and these values. */
    boolean chooses(String id, Map<String, Object> attributes) {
        SimpleFeatureBuilder builder = new SimpleFeatureBuilder(type);
        for (int i = 0; i < columns.size(); i++) {
            Object value = attributes.get(columns.get(i));
            builder.set(i, value instanceof LocalDate date ? date.toString() : value);
        }
        SimpleFeature feature = builder.buildFeature(id);
        try {
            return filter.evaluate(feature);
        } catch (RuntimeException e) {
            throw new GeoDataException(
                    "filter \"" + text + "\" fails on feature " + id + " (" + e.getMessage()
                            + "); check that it compares columns with values of their kind",
                    e);
        }
    }

    private final class Renaming extends DuplicatingFilterVisitor {
        @Override
        public Object visit(PropertyName name, Object data) {
            int column = columns.indexOf(name.getPropertyName());
            if (column < 0) {
                throw new GeoDataException("filter \"" + text + "\": there is no column \"" + name.getPropertyName()
                        + "\"" + Columns.hint(name.getPropertyName(), columns));
            }
            return getFactory(data).property(inside(column));
        }
    }
}
