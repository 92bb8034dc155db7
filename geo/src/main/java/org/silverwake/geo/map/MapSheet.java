// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.time.LocalDate;
import java.util.List;

/**
 * Everything a concentration map says, in words ready to print.
 *
 * @param title the basin, large
 * @param subtitle flow state and medium
 * @param legendTitle what the classes are classes of, with its unit
 * @param classes how reaches may look, in the order of the legend
 * @param summary people, intakes and river by answer, a few short lines
 * @param reaches one per reach of the river map, by index
 * @param points sites, villages and others, in the order in which their names are placed within a kind
 * @param guidelines what was compared with
 * @param factorLine the stated factor, in a sentence
 * @param cautions one sentence each
 * @param maker who made the map
 * @param date when
 * @param notForPosting whether single sites are shown, so that the map must not be put up
 * @param words fixed words
 * @param paper size
 * @param waters surfaces of still waters and wetlands
 */
public record MapSheet(
        String title,
        String subtitle,
        String legendTitle,
        List<LineClass> classes,
        Summary summary,
        List<ReachMark> reaches,
        List<MapPoint> points,
        List<GuidelineLine> guidelines,
        String factorLine,
        List<String> cautions,
        String maker,
        LocalDate date,
        boolean notForPosting,
        MapWords words,
        Paper paper,
        List<WaterShape> waters) {
    /** A heading and a few short lines; without lines, nothing is drawn. */
    public record Summary(String title, List<String> lines) {
        /** Copies the list. */
        public Summary {
            lines = List.copyOf(lines);
        }

        /** No summary. */
        public static Summary none() {
            return new Summary("", List.of());
        }
    }

    /** A sheet on which all water is drawn as lines. */
    public MapSheet(
            String title,
            String subtitle,
            String legendTitle,
            List<LineClass> classes,
            Summary summary,
            List<ReachMark> reaches,
            List<MapPoint> points,
            List<GuidelineLine> guidelines,
            String factorLine,
            List<String> cautions,
            String maker,
            LocalDate date,
            boolean notForPosting,
            MapWords words,
            Paper paper) {
        this(
                title,
                subtitle,
                legendTitle,
                classes,
                summary,
                reaches,
                points,
                guidelines,
                factorLine,
                cautions,
                maker,
                date,
                notForPosting,
                words,
                paper,
                List.of());
    }

    /** The same with surfaces of still waters and wetlands. */
    public MapSheet withWaters(List<WaterShape> surfaces) {
        return new MapSheet(
                title,
                subtitle,
                legendTitle,
                classes,
                summary,
                reaches,
                points,
                guidelines,
                factorLine,
                cautions,
                maker,
                date,
                notForPosting,
                words,
                paper,
                surfaces);
    }

    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if a reach has a class that is not listed, or sites are shown without the band
     */
    public MapSheet {
        classes = List.copyOf(classes);
        reaches = List.copyOf(reaches);
        points = List.copyOf(points);
        guidelines = List.copyOf(guidelines);
        cautions = List.copyOf(cautions);
        waters = List.copyOf(waters);
        for (ReachMark mark : reaches) {
            if (mark.lineClass() < 0 || mark.lineClass() >= classes.size()) {
                throw new IllegalArgumentException(
                        "class " + mark.lineClass() + " is not allowed; give 0 to " + (classes.size() - 1));
            }
        }
        if (!notForPosting && points.stream().anyMatch(point -> point.kind() == MapPoint.Kind.SITE)) {
            throw new IllegalArgumentException("a map that shows single sites is not for posting");
        }
    }
}
