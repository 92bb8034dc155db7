// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/** Makes a directed network of a layer's lines. Start reading at {@link #assemble}. */
public final class Assembly {
    private static final double LARGEST_TOLERANCE = 1000;

    private Assembly() {}

    /**
     * A network, and what became of the user's corrections.
     *
     * @param map the network
     * @param corrections one for each correction, in no particular order
     */
    public record Corrected(RiverMap map, List<CorrectionOutcome> corrections) {
        /** Copies the list. */
        public Corrected {
            corrections = List.copyOf(corrections);
        }
    }

    /**
     * Cleans the lines, joins their ends, splits them at junctions, finds the direction of flow and lists every defect.
     *
     * @throws GeoDataException if no line is left, a mapped column or named outlet does not exist, a value cannot be
     *     read, all lines seem to be drawn upstream with nothing else to go by, or reaches run in a circle
     */
    public static RiverMap assemble(VectorLayer layer, AssemblyOptions options) {
        return corrected(layer, options).map();
    }

    /**
     * The same, with what became of each correction.
     *
     * @throws GeoDataException as {@link #assemble} does; also if a correction names a feature that is not there, or two
     *     contradict each other
     */
    public static Corrected corrected(VectorLayer layer, AssemblyOptions options) {
        if (!(options.snapToleranceMeters() >= 0 && options.snapToleranceMeters() <= LARGEST_TOLERANCE)) {
            throw new GeoDataException("snap-tolerance: " + options.snapToleranceMeters()
                    + " m is not allowed; give 0 m to " + (int) LARGEST_TOLERANCE + " m");
        }
        List<AttributeReader.Values> values = AttributeReader.read(layer, options);
        NetworkCorrections corrections = options.corrections();
        DefectLog collected = new DefectLog(corrections.rulings());
        List<Line> lines = LineCollector.collect(Antimeridian.joined(layer), collected);
        if (lines.isEmpty()) {
            throw new GeoDataException(AttributeReader.name(layer) + ": no usable line among "
                    + layer.features().size() + " features; give a layer of lines, or check the filter");
        }
        requireFeatures(lines, corrections);
        lines = Bridges.build(lines, corrections.rulings(), options.snapToleranceMeters(), collected);
        Set<Set<Coordinate>> refused = new HashSet<>();
        while (true) {
            DefectLog log = new DefectLog(corrections.rulings());
            log.addAll(collected);
            Net net = Net.of(lines, options.snapToleranceMeters(), refused, log);
            Orientation orientation = Orientation.of(net, values, options, AttributeReader.name(layer), log);
            if (orientation.knots().isEmpty()) {
                FinalChecks.list(net, orientation, options, log);
                Set<String> ids =
                        layer.features().stream().map(LayerFeature::id).collect(Collectors.toSet());
                return new Corrected(
                        reaches(net, orientation, values, log), log.rulings().outcomes(ids));
            }
            Set<Set<Coordinate>> guilty = net.joinsIn(orientation.knots());
            if (guilty.isEmpty() || orientation.isKnottedByCorrections()) {
                throw new GeoDataException(orientation.knotText(AttributeReader.name(layer)));
            }
            refused.addAll(guilty);
        }
    }

    /**
     * The lines of a layer as they are drawn, neither joined nor directed, for looking at a layer that makes no network.
     * Empty if there is none.
     *
     * @throws GeoDataException if a mapped column does not exist or a value cannot be read
     */
    public static Optional<RiverMap> asDrawn(VectorLayer layer, AssemblyOptions options) {
        List<AttributeReader.Values> values = AttributeReader.read(layer, options);
        DefectLog log = new DefectLog();
        List<Line> lines = LineCollector.collect(Antimeridian.joined(layer), log);
        GeometryFactory factory = new GeometryFactory();
        List<ReachPart> parts = lines.stream()
                .map(line -> new ReachPart(line.featureId, line.feature, line.part, line.from, line.to, false))
                .toList();
        List<String> ids = ReachIds.of(parts);
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            reaches.add(new RiverMap.Reach(
                    ids.get(i),
                    parts.get(i),
                    2 * i,
                    2 * i + 1,
                    line.length(),
                    factory.createLineString(line.points),
                    values.get(line.feature).name(),
                    Map.of(),
                    Map.of()));
        }
        return reaches.isEmpty()
                ? Optional.empty()
                : Optional.of(new RiverMap(reaches, 2 * reaches.size(), log.sorted()));
    }

    /** A direction or an outlet for a feature that is not there would let the water run otherwise than the user thinks. */
    private static void requireFeatures(List<Line> lines, NetworkCorrections corrections) {
        Map<String, String> named = new LinkedHashMap<>();
        corrections.turns().forEach(turn -> named.put(turn.where(), turn.featureId()));
        corrections.outlets().forEach(end -> named.put(end.where(), end.featureId()));
        if (named.isEmpty()) {
            return;
        }
        Set<String> ids = lines.stream().map(line -> line.featureId).collect(Collectors.toSet());
        List<String> problems = new ArrayList<>();
        named.forEach((where, id) -> {
            if (!ids.contains(id)) {
                problems.add(where + " feature: no line of the layer has the id " + id
                        + Nearest.word(id, List.copyOf(ids))
                                .map(word -> "; did you mean " + word + "?")
                                .orElse("; delete the row, or give a line's id"));
            }
        });
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
    }

    private static RiverMap reaches(
            Net net, Orientation orientation, List<AttributeReader.Values> values, DefectLog log) {
        GeometryFactory factory = new GeometryFactory();
        List<ReachPart> parts = new ArrayList<>();
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            parts.add(new ReachPart(
                    line.featureId, line.feature, line.part, line.from, line.to, orientation.isFlipped(i)));
        }
        List<String> ids = ReachIds.of(parts);
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            boolean flipped = orientation.isFlipped(i);
            AttributeReader.Values value = values.get(line.feature);
            reaches.add(new RiverMap.Reach(
                    ids.get(i),
                    parts.get(i),
                    flipped ? line.endNode : line.startNode,
                    flipped ? line.startNode : line.endNode,
                    Line.length(line.points),
                    factory.createLineString(flipped ? LineCollector.reversed(line.points) : line.points),
                    value.name(),
                    numbers(value.numbers(), net, i, flipped),
                    value.texts()));
        }
        return new RiverMap(reaches, net.nodeCount(), log.sorted());
    }

    private static Map<String, Double> numbers(Map<String, Double> numbers, Net net, int i, boolean flipped) {
        Line line = net.line(i);
        double whole = net.partLength(line);
        double from = line.from / whole;
        double to = line.to / whole;
        Map<String, Double> turned = flipped ? ReachNumbers.turned(numbers) : numbers;
        return flipped ? ReachNumbers.piece(turned, 1 - to, 1 - from) : ReachNumbers.piece(turned, from, to);
    }
}
