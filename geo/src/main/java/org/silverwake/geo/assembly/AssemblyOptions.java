// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a layer becomes a network.
 *
 * @param snapToleranceMeters ends nearer than this are joined [m], 0 to 1000; 0 joins only ends at the very same place
 * @param nameColumn column with river names
 * @param columns mapped columns
 * @param outlets named outlets
 * @param orientBy criteria for the direction of flow, first one first; what none decides runs as drawn
 * @param elevation ground heights, for direction and for cycles
 * @param corrections what the user corrected
 */
public record AssemblyOptions(
        double snapToleranceMeters,
        Optional<String> nameColumn,
        List<ColumnMapping> columns,
        List<Outlet> outlets,
        List<Criterion> orientBy,
        Optional<ElevationSource> elevation,
        NetworkCorrections corrections) {
    /** Copies the lists. */
    public AssemblyOptions {
        columns = List.copyOf(columns);
        outlets = List.copyOf(outlets);
        orientBy = List.copyOf(orientBy);
    }

    /** Nothing but a snap tolerance [m]; directions as drawn. */
    public static AssemblyOptions drawn(double snapToleranceMeters) {
        return new AssemblyOptions(
                snapToleranceMeters,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(Criterion.DRAWN),
                Optional.empty(),
                NetworkCorrections.none());
    }

    /** The same with these corrections. */
    public AssemblyOptions withCorrections(NetworkCorrections made) {
        return new AssemblyOptions(snapToleranceMeters, nameColumn, columns, outlets, orientBy, elevation, made);
    }

    /** The same with these criteria. */
    public AssemblyOptions withOrientBy(Criterion... criteria) {
        return new AssemblyOptions(
                snapToleranceMeters, nameColumn, columns, outlets, List.of(criteria), elevation, corrections);
    }

    /** The same with these named outlets. */
    public AssemblyOptions withOutlets(Outlet... named) {
        return new AssemblyOptions(
                snapToleranceMeters, nameColumn, columns, List.of(named), orientBy, elevation, corrections);
    }

    /** The same with these mapped columns. */
    public AssemblyOptions withColumns(ColumnMapping... mapped) {
        return new AssemblyOptions(
                snapToleranceMeters, nameColumn, List.of(mapped), outlets, orientBy, elevation, corrections);
    }

    /** The same with this column of river names. */
    public AssemblyOptions withNameColumn(String column) {
        return new AssemblyOptions(
                snapToleranceMeters, Optional.of(column), columns, outlets, orientBy, elevation, corrections);
    }

    /** The same with ground heights. */
    public AssemblyOptions withElevation(ElevationSource source) {
        return new AssemblyOptions(
                snapToleranceMeters, nameColumn, columns, outlets, orientBy, Optional.of(source), corrections);
    }

    /**
     * A column that is read into reaches.
     *
     * @param key what it is, such as drainage-area; the keys kind and water-body are kept as text, all others are numbers
     * @param column its name in the layer
     * @param toSi factor that turns its numbers into SI [-]
     * @param missing values that mean no value, as text
     */
    public record ColumnMapping(String key, String column, double toSi, List<String> missing) {
        /** Copies the list. */
        public ColumnMapping {
            missing = List.copyOf(missing);
        }

        /** Whether the value is kept as text. */
        public boolean isText() {
            return key.equals("kind") || key.equals("water-body");
        }
    }

    /**
     * A place where the network ends: a feature, or a point.
     *
     * @param featureId the feature that flows out there
     * @param longitude WGS 84 degrees
     * @param latitude WGS 84 degrees
     */
    public record Outlet(Optional<String> featureId, OptionalDouble longitude, OptionalDouble latitude) {
        /** The feature that flows out. */
        public static Outlet ofFeature(String id) {
            return new Outlet(Optional.of(id), OptionalDouble.empty(), OptionalDouble.empty());
        }

        /** The line end nearest to a point in WGS 84 degrees, longitude first. */
        public static Outlet ofPoint(double longitude, double latitude) {
            return new Outlet(Optional.empty(), OptionalDouble.of(longitude), OptionalDouble.of(latitude));
        }

        @Override
        public String toString() {
            return featureId
                    .map(id -> "outlet " + id)
                    .orElseGet(() -> "outlet at " + longitude.getAsDouble() + ", " + latitude.getAsDouble());
        }
    }

    /** What may tell the direction of flow. */
    public enum Criterion {
        OUTLET,
        ELEVATION,
        DRAINAGE_AREA,
        DRAWN;

        /**
         * The criterion of a scenario's word: outlet, elevation, drainage-area or drawn.
         *
         * @throws IllegalArgumentException for any other word
         */
        public static Criterion of(String word) {
            for (Criterion criterion : values()) {
                if (criterion.word().equals(word)) {
                    return criterion;
                }
            }
            throw new IllegalArgumentException(
                    "orient-by \"" + word + "\" is not known; use outlet, elevation, drainage-area, drawn");
        }

        /** Its word in a scenario. */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
