// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.regex.Pattern;

/**
 * One attribute column of a layer.
 *
 * @param name a letter, then letters, digits or underscores; unit in the name where it has one
 * @param kind what its values are
 */
public record Column(String name, Kind kind) {
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_]{0,62}");

    /** Kinds of value, named as a GeoPackage names them. */
    public enum Kind {
        /** Long or Integer. */
        INTEGER,
        /** Double or Float, finite. */
        REAL,
        /** String. */
        TEXT
    }

    /** Checks the name. */
    public Column {
        requireName(name);
    }

    static String requireName(String name) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException("\"" + name
                    + "\" is not allowed as a name in a layer; give a letter, then up to 62 letters, digits or _");
        }
        return name;
    }

    /** A column of whole numbers. */
    public static Column integer(String name) {
        return new Column(name, Kind.INTEGER);
    }

    /** A column of numbers. */
    public static Column real(String name) {
        return new Column(name, Kind.REAL);
    }

    /** A column of texts. */
    public static Column text(String name) {
        return new Column(name, Kind.TEXT);
    }

    void require(Object value) {
        boolean fits = value == null
                || switch (kind) {
                    case INTEGER -> value instanceof Long || value instanceof Integer;
                    case REAL -> value instanceof Number number && Double.isFinite(number.doubleValue());
                    case TEXT -> value instanceof String;
                };
        if (!fits) {
            throw new IllegalArgumentException(
                    "column " + name + ": " + value + " is not allowed; give a finite " + kind + " value or null");
        }
    }
}
