// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.geotools.api.filter.expression.Expression;
import org.geotools.api.filter.expression.Literal;
import org.geotools.filter.ExpressionDOMParser;
import org.geotools.filter.FilterFactoryImpl;
import org.geotools.filter.function.FilterFunction_strConcat;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.Text;

/** Parameter values of a style file: literals, properties and arithmetic, with text between them. */
final class SldValues {
    private static final FilterFactoryImpl FILTERS = new FilterFactoryImpl();

    private final SldDocument document;

    SldValues(SldDocument document) {
        this.document = document;
    }

    static Expression literal(Object value) {
        return FILTERS.literal(value);
    }

    /** A value; text and expressions one after the other are joined, blanks between them kept as one blank. */
    Expression value(Element element) {
        Expression all = null;
        StringBuilder words = new StringBuilder();
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Text text) {
                words.append(text.getData());
            } else if (child instanceof Element inside) {
                all = joined(joined(all, words, all == null, false), expression(inside));
                words.setLength(0);
            }
        }
        all = joined(all, words, all == null, true);
        if (all == null) {
            document.problem(element, element.getLocalName() + " is empty; give a value");
            return literal("");
        }
        return all;
    }

    Optional<Expression> value(Element of, String name) {
        return SldDocument.child(of, name).map(this::value);
    }

    /** A value that must be a number where it is a literal. */
    Optional<Expression> number(Element of, String name) {
        Optional<Expression> value = value(of, name);
        value.ifPresent(v -> checkNumber(of, name, v));
        return value;
    }

    private void checkNumber(Element where, String name, Expression value) {
        if (value instanceof Literal && value.evaluate(null, Double.class) == null) {
            document.problem(where, name + " \"" + value.evaluate(null, String.class) + "\" is no number");
        }
    }

    /** CssParameter of SLD 1.0 and SvgParameter of SE 1.1, by name; others than the allowed ones are told. */
    Map<String, Expression> parameters(Element of, Set<String> allowed) {
        Map<String, Expression> all = new LinkedHashMap<>();
        for (Element child : SldDocument.children(of, "CssParameter", "SvgParameter")) {
            String name = child.getAttribute("name");
            if (!allowed.contains(name)) {
                document.problem(
                        child,
                        "parameter \"" + name + "\" is not used here; give "
                                + String.join(", ", allowed.stream().sorted().toList()));
                continue;
            }
            Expression value = value(child);
            boolean color = name.equals("stroke") || name.equals("fill");
            boolean number = List.of("stroke-width", "stroke-opacity", "stroke-dashoffset", "fill-opacity", "font-size")
                    .contains(name);
            if (number) {
                checkNumber(child, name, value);
            } else if (color && value instanceof Literal && value.evaluate(null, java.awt.Color.class) == null) {
                document.problem(
                        child, name + " \"" + value.evaluate(null, String.class) + "\" is no color; give #rrggbb");
            }
            all.put(name, value);
        }
        return all;
    }

    private Expression expression(Element element) {
        try {
            Expression found = new ExpressionDOMParser(FILTERS).expression(element);
            if (found != null) {
                return found;
            }
        } catch (RuntimeException e) {
            // told below
        }
        document.problem(
                element,
                element.getLocalName()
                        + " is no value that can be used; give Literal, PropertyName, Add, Sub, Mul, Div");
        return literal("");
    }

    private static Expression joined(Expression before, StringBuilder words, boolean atStart, boolean atEnd) {
        String text = words.toString().replaceAll("\\s+", " ");
        text = atStart ? text.stripLeading() : text;
        text = atEnd ? text.stripTrailing() : text;
        return text.isEmpty() ? before : joined(before, literal(text));
    }

    private static Expression joined(Expression before, Expression after) {
        if (before == null) {
            return after;
        }
        FilterFunction_strConcat both = new FilterFunction_strConcat();
        both.setParameters(List.of(before, after));
        return both;
    }
}
