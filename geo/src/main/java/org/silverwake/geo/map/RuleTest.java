// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.function.Predicate;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.filter.Filter;
import org.geotools.api.filter.PropertyIsEqualTo;
import org.geotools.api.filter.expression.Literal;
import org.geotools.api.filter.expression.PropertyName;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Symbolizer;

/** A rule of a style, made ready for many features: whether a column equals a whole number is looked up, all else is left to the library. */
final class RuleTest {
    private final Rule rule;
    private final Predicate<SimpleFeature> test;

    RuleTest(Rule rule) {
        this.rule = rule;
        test = test(rule.getFilter());
    }

    private static Predicate<SimpleFeature> test(Filter filter) {
        if (filter == null) {
            return feature -> true;
        }
        if (filter instanceof PropertyIsEqualTo equal
                && equal.getExpression1() instanceof PropertyName name
                && equal.getExpression2() instanceof Literal literal
                && literal.getValue() instanceof Integer wanted) {
            String column = name.getPropertyName();
            return feature ->
                    feature.getAttribute(column) instanceof Integer has ? has.equals(wanted) : filter.evaluate(feature);
        }
        return filter::evaluate;
    }

    boolean isElse() {
        return rule.isElseFilter();
    }

    /** Whether its filter lets a feature in; never that of an ElseFilter. */
    boolean fits(SimpleFeature feature) {
        return !isElse() && test.test(feature);
    }

    List<Symbolizer> symbolizers() {
        return rule.symbolizers();
    }
}
