// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapPoint;

/**
 * A map for viewers on phones: everything it says, in words ready to be read.
 *
 * @param title what the viewer calls it
 * @param bands what must be seen first, such as that single sites show
 * @param caution the sentence that stands below the legend
 * @param legendTitle what the classes are classes of
 * @param classes how stretches may look, in the order of the legend
 * @param stretches of river
 * @param placesTitle what places are called together
 * @param places villages and others, and sites where they may be seen
 * @param about what else is said of the map, cautions among it
 */
public record PhoneMap(
        String title,
        List<String> bands,
        String caution,
        String legendTitle,
        List<LineClass> classes,
        List<Stretch> stretches,
        String placesTitle,
        List<Place> places,
        List<Section> about) {
    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if a stretch has a class that is not listed, or if a site shows without a band
     */
    public PhoneMap {
        bands = List.copyOf(bands);
        classes = List.copyOf(classes);
        stretches = List.copyOf(stretches);
        places = List.copyOf(places);
        about = List.copyOf(about);
        for (Stretch stretch : stretches) {
            if (stretch.lineClass() < 0 || stretch.lineClass() >= classes.size()) {
                throw new IllegalArgumentException(
                        "class " + stretch.lineClass() + " is not allowed; give 0 to " + (classes.size() - 1));
            }
        }
        if (bands.isEmpty() && places.stream().anyMatch(place -> place.kind() == MapPoint.Kind.SITE)) {
            throw new IllegalArgumentException("a map that shows single sites is not for posting");
        }
    }

    /**
     * One line on the map.
     *
     * @param name what people call it
     * @param lineClass index into the classes
     * @param reaches indices in the river map, downstream, each beginning where the one before ends; where they meet is not told
     * @param facts a table
     * @param remarks a sentence each
     */
    public record Stretch(String name, int lineClass, List<Integer> reaches, List<Fact> facts, List<String> remarks) {
        /** Copies; one reach at least. */
        public Stretch {
            reaches = List.copyOf(reaches);
            facts = List.copyOf(facts);
            remarks = List.copyOf(remarks);
            if (reaches.isEmpty()) {
                throw new IllegalArgumentException("stretch " + name + " has no reach; give one at least");
            }
        }
    }

    /**
     * A point on the map.
     *
     * @param point what it is, where and its name
     * @param kindWords what it is, in words
     * @param facts a table
     * @param remarks a sentence each
     */
    public record Place(MapPoint point, String kindWords, List<Fact> facts, List<String> remarks) {
        /** Copies. */
        public Place {
            facts = List.copyOf(facts);
            remarks = List.copyOf(remarks);
        }

        MapPoint.Kind kind() {
            return point.kind();
        }
    }

    /** A row of a table. */
    public record Fact(String label, String text) {}

    /** A heading and a few lines. */
    public record Section(String heading, List<String> lines) {
        /** Copies the list. */
        public Section {
            lines = List.copyOf(lines);
        }
    }
}
