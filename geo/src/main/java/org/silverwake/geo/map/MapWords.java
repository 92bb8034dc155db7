// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.EnumMap;
import java.util.Map;

/**
 * The fixed words of maps, so that they can be in any language.
 *
 * @param hatched legend of the hatching
 * @param nearBank legend of the mark along one bank
 * @param aboveFromBackground legend of the mark for background alone
 * @param flow legend of the arrows
 * @param water legend of surfaces of still waters and wetlands
 * @param kinds names of the kinds of point
 * @param comparedWith heading of the guidelines
 * @param notCheckedInPrint beside a value not seen in print
 * @param cautions heading of the cautions
 * @param madeBy before the maker's name
 * @param notForPosting the band over maps that show single sites
 * @param north letter of the north arrow
 * @param scaleNote beside the scale bar: coordinate system, where the scale holds
 * @param namesLeftOut before the number of names of points for which there was no room
 * @param reaches check picture: after the number of reaches
 * @param asGiven check picture: legend of a point as given
 * @param onRiver check picture: legend of its place on the river
 * @param defects check picture: heading of the list
 * @param noDefects check picture: in place of an empty list
 * @param repaired check picture: before what was done
 * @param moreInTable check picture: after the number of defects for which there was no room
 * @param ground what the map lies upon, and ways over it
 */
public record MapWords(
        String hatched,
        String nearBank,
        String aboveFromBackground,
        String flow,
        String water,
        Map<MapPoint.Kind, String> kinds,
        String comparedWith,
        String notCheckedInPrint,
        String cautions,
        String madeBy,
        String notForPosting,
        String north,
        String scaleNote,
        String namesLeftOut,
        String reaches,
        String asGiven,
        String onRiver,
        String defects,
        String noDefects,
        String repaired,
        String moreInTable,
        GroundWords ground) {
    /** Copies the map; every kind needs a name. */
    public MapWords {
        kinds = Map.copyOf(kinds);
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            if (!kinds.containsKey(kind)) {
                throw new IllegalArgumentException("no word for " + kind);
            }
        }
    }

    /** The words of marks, points and names left out alone, as printed sheets need them; the others are empty. */
    public static MapWords ofMarks(
            String hatched,
            String nearBank,
            String aboveFromBackground,
            String flow,
            String water,
            Map<MapPoint.Kind, String> kinds,
            String namesLeftOut,
            GroundWords ground) {
        return new MapWords(
                hatched,
                nearBank,
                aboveFromBackground,
                flow,
                water,
                kinds,
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                namesLeftOut,
                "",
                "",
                "",
                "",
                "",
                "",
                "",
                ground);
    }

    /** English. */
    public static MapWords english() {
        Map<MapPoint.Kind, String> kinds = new EnumMap<>(MapPoint.Kind.class);
        kinds.put(MapPoint.Kind.VILLAGE, "Village");
        kinds.put(MapPoint.Kind.INTAKE, "Water intake");
        kinds.put(MapPoint.Kind.FISHING, "Fishing ground");
        kinds.put(MapPoint.Kind.SITE, "Site");
        kinds.put(MapPoint.Kind.GAUGE, "Gauge");
        kinds.put(MapPoint.Kind.OTHER, "Other place");
        kinds.put(MapPoint.Kind.GROUP_SMALL, "Group: under 1 kg/yr");
        kinds.put(MapPoint.Kind.GROUP_MIDDLE, "Group: 1 to 10 kg/yr");
        kinds.put(MapPoint.Kind.GROUP_LARGE, "Group: 10 kg/yr or more");
        kinds.put(
                MapPoint.Kind.SAMPLE,
                "Sample: colored by its own ratio to the value, in the colors above; red or darker is above it");
        kinds.put(MapPoint.Kind.SAMPLE_BELOW_LIMIT, "Sample below the laboratory's limit, and that below the value");
        kinds.put(
                MapPoint.Kind.SAMPLE_CANNOT_TELL,
                "Sample can't tell: the laboratory's limit is above the value compared with");
        return new MapWords(
                "Hatched: depends on what the bed gives back",
                "Dotted: not yet mixed across; may be higher near one bank",
                "Diamonds: above from background alone, without any site",
                "Direction of flow",
                "Lake or wetland, in the color of its estimate",
                kinds,
                "Compared with",
                "not checked in print",
                "Before you use this map",
                "Made by",
                "NOT FOR POSTING \u2013 this map shows single sites",
                "N",
                "WGS 84. Scale holds at the middle of the map.",
                "Names of sites or places left out for want of room:",
                "reaches",
                "Point as given",
                "Its place on the river",
                "Found in the river layer",
                "Nothing amiss was found.",
                "Repaired:",
                "more in the table of defects",
                GroundWords.english());
    }
}
