// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.VectorLayer;

/** Makes a directed network of a layer's lines. Start reading at {@link #assemble}. */
public final class Assembly {
    private static final double LARGEST_TOLERANCE = 1000;

    private Assembly() {}

    /**
     * Cleans the lines, joins their ends, splits them at junctions, finds the direction of flow and lists every defect.
     *
     * @throws GeoDataException if no line is left, a mapped column or named outlet does not exist, a value cannot be
     *     read, all lines seem to be drawn upstream with nothing else to go by, or reaches run in a circle
     */
    public static RiverMap assemble(VectorLayer layer, AssemblyOptions options) {
        if (!(options.snapToleranceMeters() >= 0 && options.snapToleranceMeters() <= LARGEST_TOLERANCE)) {
            throw new GeoDataException("snap-tolerance: " + options.snapToleranceMeters()
                    + " m is not allowed; give 0 m to " + (int) LARGEST_TOLERANCE + " m");
        }
        List<AttributeReader.Values> values = AttributeReader.read(layer, options);
        DefectLog collected = new DefectLog();
        List<Line> lines = LineCollector.collect(Antimeridian.joined(layer), collected);
        if (lines.isEmpty()) {
            throw new GeoDataException(AttributeReader.name(layer) + ": no usable line among "
                    + layer.features().size() + " features; give a layer of lines, or check the filter");
        }
        Set<Set<Coordinate>> refused = new HashSet<>();
        while (true) {
            DefectLog log = new DefectLog();
            log.addAll(collected);
            Net net = Net.of(lines, options.snapToleranceMeters(), refused, log);
            Orientation orientation = Orientation.of(net, values, options, AttributeReader.name(layer));
            if (orientation.knots().isEmpty()) {
                FinalChecks.list(net, orientation, options, log);
                return reaches(net, orientation, values, log);
            }
            Set<Set<Coordinate>> guilty = net.joinsIn(orientation.knots());
            if (guilty.isEmpty()) {
                throw new GeoDataException(orientation.knotText(AttributeReader.name(layer)));
            }
            refused.addAll(guilty);
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
