// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.Optional;

/**
 * Everything a printed sheet for a wall says and shows, in words ready to print. One content, one layout: A4, A3 and A1 are the same
 * page in other sizes, lying or standing.
 *
 * @param paper size and how it hangs
 * @param head what is read first
 * @param figures maps of the same places in one scale, side by side or above each other
 * @param ground what all of them lie on
 * @param bars shares at places in place of maps
 * @param strips profiles along a river: below the maps, of which one at most, or below each other in place of maps and bars
 * @param legend classes and symbols
 * @param blocks what to do, whom to ask, what was compared with
 * @param cautions heading and one sentence each
 * @param foot maker, date, last day of use
 * @param scale words of the scale bar
 */
public record WallSheet(
        Paper paper,
        Head head,
        List<Figure> figures,
        Ground ground,
        Optional<Bars> bars,
        List<Strip> strips,
        Legend legend,
        Blocks blocks,
        Block cautions,
        String foot,
        ScaleWords scale) {
    /** Copies the lists; a sheet has maps, bars or profiles. */
    public WallSheet {
        figures = List.copyOf(figures);
        strips = List.copyOf(strips);
        boolean isOne = figures.isEmpty() ? bars.isEmpty() != strips.isEmpty() : bars.isEmpty() && strips.size() <= 1;
        if (!isOne) {
            throw new IllegalArgumentException(
                    "a sheet shows maps, bars or profiles; give one of them, or maps and a profile");
        }
    }

    boolean hasMaps() {
        return !figures.isEmpty();
    }

    /**
     * What is read first.
     *
     * @param bands over the whole width above all: not for posting, draft
     * @param mark of a draft, large and pale under the maps; "" for none
     */
    public record Head(String title, String subtitle, List<String> bands, String mark) {
        /** Copies the list. */
        public Head {
            bands = List.copyOf(bands);
        }
    }

    /**
     * One map.
     *
     * @param caption above it; "" for none
     * @param reaches one per reach of the river map, by index
     * @param points places, and sites where they may be seen
     */
    public record Figure(String caption, List<ReachMark> reaches, List<MapPoint> points) {
        /** Copies the lists. */
        public Figure {
            reaches = List.copyOf(reaches);
            points = List.copyOf(points);
        }
    }

    /** What all maps lie on: slopes and layers, surfaces of waters, areas of groups of sites. */
    public record Ground(org.silverwake.geo.map.Ground under, List<WaterShape> waters, List<NamedArea> areas) {
        /** Copies the lists. */
        public Ground {
            waters = List.copyOf(waters);
            areas = List.copyOf(areas);
        }
    }

    /** The area of a group of sites. */
    public record NamedArea(String name, GroupArea area) {}

    /** An answer in large words and the classes that it is told in. */
    public record Answer(String words, List<LineClass> classes) {
        /** Copies the list. */
        public Answer {
            classes = List.copyOf(classes);
        }
    }

    /**
     * Legend.
     *
     * @param heading what is compared with what; "" where the subtitle says it
     * @param answers in the order of the reaches' class numbers, counted through
     * @param marks words of hatching, bank, background, flow, waters and points
     * @param area words of the areas of groups
     * @param notes small lines below
     */
    public record Legend(String heading, List<Answer> answers, MapWords marks, String area, List<String> notes) {
        /** Copies the lists. */
        public Legend {
            answers = List.copyOf(answers);
            notes = List.copyOf(notes);
        }

        /** All classes, by the class numbers of reaches. */
        List<LineClass> classes() {
            return answers.stream().flatMap(answer -> answer.classes().stream()).toList();
        }
    }

    /** A heading and lines; without lines, nothing is drawn. */
    public record Block(String heading, List<String> lines) {
        /** Copies the list. */
        public Block {
            lines = List.copyOf(lines);
        }
    }

    /** What people can do and whom they can ask; and in smaller letters what was compared with what. */
    public record Blocks(List<Block> forPeople, List<Block> sources) {
        /** Copies the lists. */
        public Blocks {
            forPeople = List.copyOf(forPeople);
            sources = List.copyOf(sources);
        }
    }

    /** The words of a scale bar, by the length that it was given [m]. */
    public interface ScaleWords {
        /** A number of kilometers as the language writes it, with or without the unit. */
        String kilometers(double meters, boolean withUnit);

        /** How long it takes, one line for each way to go; none where no speed is known. */
        List<String> times(double meters);

        /** Letter of the north arrow. */
        String north();
    }

    /**
     * A profile along a river, drawn on a scale of powers of ten.
     *
     * @param heading what is drawn, with its unit
     * @param stretches parts with values, from the river's head down
     * @param guide the value compared with, in the same unit; not positive for none
     * @param guideWords beside its line
     * @param levels powers of ten in the same unit and what is said of them
     * @param places by the way
     * @param axis below, what the distances are
     */
    public record Strip(
            String heading,
            List<List<At>> stretches,
            double guide,
            String guideWords,
            List<Level> levels,
            List<Place> places,
            String axis) {
        /** Copies the lists. */
        public Strip {
            stretches = stretches.stream().map(List::copyOf).toList();
            levels = List.copyOf(levels);
            places = List.copyOf(places);
        }

        /** The look of the band between low and high estimate in a legend. */
        public static LineClass band(String words) {
            return new LineClass("band", words, WallStrip.BAND, 9, List.of());
        }

        /** The look of the line of the value compared with in a legend. */
        public static LineClass guideLine(String words) {
            return new LineClass("guide", words, MapStyles.INK, WallStrip.GUIDE_WIDTH, WallStrip.GUIDE_DASH);
        }

        /** A value and its words, with the unit. */
        public record Level(double value, String words) {}

        /** Low and high estimate at a distance [km]. */
        public record At(double kilometers, double low, double high) {}

        /** A place at a distance [km]. */
        public record Place(double kilometers, String name) {}
    }

    /** Shares of sources at places. */
    public record Bars(List<String> sources, List<Row> rows) {
        /** Copies the lists. */
        public Bars {
            sources = List.copyOf(sources);
            rows = List.copyOf(rows);
        }

        /**
         * A place.
         *
         * @param amount what arrives, in words
         * @param shares of the sources in their order [-], 1 together; words of each share stand in it
         */
        public record Row(String place, String amount, List<Double> shares, List<String> words) {
            /** Copies the lists. */
            public Row {
                shares = List.copyOf(shares);
                words = List.copyOf(words);
            }
        }
    }
}
