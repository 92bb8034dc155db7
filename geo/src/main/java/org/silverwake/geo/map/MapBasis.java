// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What all maps of a run have in common.
 *
 * @param title the basin, large
 * @param points sites, villages and others, in the order in which their names are placed within a kind
 * @param waters surfaces of still waters and wetlands
 * @param cautions one sentence each
 * @param maker who made the map
 * @param date when
 * @param notForPosting whether single sites are shown, so that the map must not be put up
 * @param words fixed words
 * @param paper size
 * @param ground what maps lie upon
 */
public record MapBasis(
        String title,
        List<MapPoint> points,
        List<WaterShape> waters,
        List<String> cautions,
        String maker,
        LocalDate date,
        boolean notForPosting,
        MapWords words,
        Paper paper,
        Ground ground) {
    /**
     * Copies and checks.
     *
     * @throws IllegalArgumentException if sites are shown without the band
     */
    public MapBasis {
        points = List.copyOf(points);
        waters = List.copyOf(waters);
        cautions = List.copyOf(cautions);
        if (!notForPosting && points.stream().anyMatch(point -> point.kind() == MapPoint.Kind.SITE)) {
            throw new IllegalArgumentException("a map that shows single sites is not for posting");
        }
    }

    /** The same without the points of single sites; it still names groups of them, and keeps its band. */
    public MapBasis withoutSites() {
        List<MapPoint> others = points.stream()
                .filter(point -> point.kind() != MapPoint.Kind.SITE)
                .toList();
        return new MapBasis(title, others, waters, cautions, maker, date, notForPosting, words, paper, ground);
    }

    /** The same with further points. */
    public MapBasis withPoints(List<MapPoint> more) {
        List<MapPoint> all = new ArrayList<>(points);
        all.addAll(more);
        return new MapBasis(title, all, waters, cautions, maker, date, notForPosting, words, paper, ground);
    }
}
