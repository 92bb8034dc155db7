// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.geo.GeoDataException;

/**
 * One node of well-known text: a keyword with its arguments, each a text, a number, a bare word or a node. Serves both
 * versions (OGC 01-009 and ISO 19162), with square brackets or round ones.
 */
final class WktNode {
    private final String keyword;
    private final List<Object> arguments;

    WktNode(String keyword, List<?> arguments) {
        this.keyword = keyword.toUpperCase(Locale.ROOT);
        this.arguments = List.copyOf(arguments);
    }

    static WktNode of(String keyword, Object... arguments) {
        return new WktNode(keyword, List.of(arguments));
    }

    /** A bare word, as axis directions are. */
    record Word(String text) {}

    String keyword() {
        return keyword;
    }

    boolean is(String... keywords) {
        return List.of(keywords).contains(keyword);
    }

    List<Object> arguments() {
        return arguments;
    }

    /** The first quoted text: the name. */
    String name() {
        return arguments.stream()
                .filter(String.class::isInstance)
                .map(String.class::cast)
                .findFirst()
                .orElse("");
    }

    /** The numbers among the arguments, in order. */
    List<Double> numbers() {
        return arguments.stream()
                .filter(Double.class::isInstance)
                .map(Double.class::cast)
                .toList();
    }

    /** The number at a place among the numbers. */
    double number(int place) {
        List<Double> numbers = numbers();
        if (place >= numbers.size()) {
            throw new GeoDataException("coordinate system text: " + keyword + "[\"" + name() + "\"] lacks a number");
        }
        return numbers.get(place);
    }

    /** Child nodes with one of these keywords. */
    List<WktNode> children(String... keywords) {
        List<WktNode> found = new ArrayList<>();
        for (Object argument : arguments) {
            if (argument instanceof WktNode node && node.is(keywords)) {
                found.add(node);
            }
        }
        return found;
    }

    /** The first child with one of these keywords. */
    Optional<WktNode> child(String... keywords) {
        return children(keywords).stream().findFirst();
    }

    /** The first child with one of these keywords, which must be there. */
    WktNode need(String... keywords) {
        return child(keywords)
                .orElseThrow(() -> new GeoDataException(
                        "coordinate system text: " + keyword + "[\"" + name() + "\"] lacks its " + keywords[0]));
    }

    /** The same node with other arguments. */
    WktNode with(List<?> others) {
        return new WktNode(keyword, others);
    }

    /** The same node without children of these keywords, at any depth. */
    WktNode without(String... keywords) {
        List<Object> kept = new ArrayList<>();
        for (Object argument : arguments) {
            if (argument instanceof WktNode node) {
                if (!node.is(keywords)) {
                    kept.add(node.without(keywords));
                }
            } else {
                kept.add(argument);
            }
        }
        return with(kept);
    }

    /** Code of the whole, such as EPSG:32726, where the text names one. */
    Optional<String> code() {
        return child("AUTHORITY", "ID").map(id -> {
            Object code = id.arguments().size() > 1 ? id.arguments().get(1) : "";
            String text = code instanceof Double number ? String.valueOf(number.longValue()) : String.valueOf(code);
            return id.name().toUpperCase(Locale.ROOT) + ":" + text;
        });
    }

    @Override
    public String toString() {
        StringBuilder out = new StringBuilder(keyword).append('[');
        for (int i = 0; i < arguments.size(); i++) {
            Object argument = arguments.get(i);
            out.append(i == 0 ? "" : ",");
            if (argument instanceof String text) {
                out.append('"').append(text.replace('"', '\'')).append('"');
            } else if (argument instanceof Word word) {
                out.append(word.text());
            } else {
                out.append(argument);
            }
        }
        return out.append(']').toString();
    }

    /** The tree of a text. */
    static WktNode parse(String text) {
        return new Reader(text).whole();
    }

    private static final class Reader {
        private final String text;
        private int at;

        Reader(String text) {
            this.text = text.replace("\uFEFF", "");
        }

        WktNode whole() {
            Object root = argument();
            blanks();
            // One dialect puts the vertical system behind the horizontal one, after a comma.
            boolean vertical = text.startsWith(",VERTCS", at);
            if (!(root instanceof WktNode node) || at < text.length() && !vertical) {
                throw broken();
            }
            return node;
        }

        private Object argument() {
            blanks();
            if (peek() == '"') {
                return quoted();
            }
            int start = at;
            while (at < text.length() && "[](),\"".indexOf(text.charAt(at)) < 0) {
                at++;
            }
            String word = text.substring(start, at).strip();
            if (word.isEmpty()) {
                throw broken();
            }
            if (peek() == '[' || peek() == '(') {
                return new WktNode(word, list());
            }
            try {
                return Double.valueOf(word);
            } catch (NumberFormatException notANumber) {
                return new Word(word);
            }
        }

        private List<Object> list() {
            List<Object> list = new ArrayList<>();
            do {
                at++;
                list.add(argument());
                blanks();
            } while (peek() == ',');
            if (peek() != ']' && peek() != ')') {
                throw broken();
            }
            at++;
            return list;
        }

        private String quoted() {
            StringBuilder out = new StringBuilder();
            at++;
            while (peek() != 0 && (peek() != '"' || at + 1 < text.length() && text.charAt(at + 1) == '"')) {
                at += peek() == '"' ? 1 : 0;
                out.append(peek());
                at++;
            }
            if (peek() == 0) {
                throw broken();
            }
            at++;
            return out.toString();
        }

        private void blanks() {
            while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
                at++;
            }
        }

        private char peek() {
            return at < text.length() ? text.charAt(at) : 0;
        }

        private GeoDataException broken() {
            String before = text.substring(Math.max(0, Math.min(at, text.length()) - 30), Math.min(at, text.length()));
            return new GeoDataException("coordinate system text: broken at character " + (at + 1)
                    + (before.isBlank() ? "" : ", after \"" + before.strip() + "\"")
                    + "; give a code such as EPSG:32726, or well-known text");
        }
    }
}
