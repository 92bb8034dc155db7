// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.silverwake.cli.scenario.Corrections;
import org.silverwake.cli.scenario.Corrections.Action;
import org.silverwake.cli.scenario.Corrections.Row;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.CorrectionOutcome;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.assembly.NetworkCorrections;
import org.silverwake.geo.assembly.NetworkCorrections.At;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.crs.PointReader;
import org.silverwake.geo.place.PointRequest;

/** The user's corrections, applied: those of the river go to the assembly, moved points are moved here. */
final class CorrectionStep {
    /** Positions that differ by less are the same, written with six decimals [degrees]. */
    /** Between the place of a point and what moved it. */
    static final String MOVED = ", moved by ";

    private static final double SAME = 2e-6;

    private final Corrections corrections;
    private final Map<String, CorrectionOutcome> outcomes = new HashMap<>();

    CorrectionStep(Corrections corrections) {
        this.corrections = corrections;
    }

    /** Those of the river, for the assembly. */
    NetworkCorrections network() {
        List<NetworkCorrections.Turn> turns = new ArrayList<>();
        for (Row row : corrections.rows(Action.TURN)) {
            turns.add(new NetworkCorrections.Turn(
                    row.where(), row.features().get(0), at(row.at()).orElseThrow(), at(row.was())));
        }
        List<NetworkCorrections.End> outlets = new ArrayList<>();
        for (Row row : corrections.rows(Action.OUTLET)) {
            outlets.add(new NetworkCorrections.End(row.where(), row.features().get(0), at(row.at())));
        }
        List<NetworkCorrections.Ruling> rulings = new ArrayList<>();
        for (Row row : corrections.rows()) {
            if (row.action() == Action.REFUSE || row.action() == Action.ACCEPT) {
                Defect.Kind kind = Defect.Kind.valueOf(
                        row.defect().toUpperCase(Locale.ROOT).replace('-', '_'));
                rulings.add(new NetworkCorrections.Ruling(
                        row.where(), row.action() == Action.ACCEPT, kind, row.features(), at(row.at())));
            }
        }
        return new NetworkCorrections(turns, outlets, rulings);
    }

    private static Optional<At> at(Optional<Position> position) {
        return position.map(p -> new At(p.x(), p.y()));
    }

    /** What the assembly made of them. */
    void heard(List<CorrectionOutcome> assembled) {
        assembled.forEach(outcome -> outcomes.put(outcome.where(), outcome));
    }

    /** For looking at a layer that makes no network: every correction of the river is left untried. */
    List<CorrectionOutcome> untried(String why) {
        return corrections.rows().stream()
                .filter(row -> row.action() != Action.MOVE)
                .map(row -> new CorrectionOutcome(row.where(), Status.DOES_NOT_FIT, "not tried: " + why))
                .toList();
    }

    /** The points, those moved at their new positions. */
    List<PointRequest> moved(List<PointRequest> requests, LayerCrs crs) {
        List<Row> moves = corrections.rows(Action.MOVE);
        List<PointRequest> points = new ArrayList<>(requests);
        for (Row move : moves) {
            List<Integer> named = IntStream.range(0, requests.size())
                    .filter(i -> requests.get(i).kind().equals(move.kind())
                            && requests.get(i).name().equals(move.name()))
                    .boxed()
                    .toList();
            for (int i : meant(move, named, requests, crs)) {
                if (applies(requests.get(i), move, crs)) {
                    for (int part : ofSameRow(requests, i)) {
                        points.set(part, at(requests.get(part), move));
                    }
                }
            }
        }
        return points;
    }

    /** A site of field notes may have several discharge points, which move together. */
    private static List<Integer> ofSameRow(List<PointRequest> requests, int point) {
        return IntStream.range(0, requests.size())
                .filter(i -> requests.get(i).kind().equals(requests.get(point).kind())
                        && requests.get(i).where().equals(requests.get(point).where()))
                .boxed()
                .toList();
    }

    /** Of the points of a row's name those it is about: bottles of one code may stand at several positions. */
    private List<Integer> meant(Row move, List<Integer> named, List<PointRequest> requests, LayerCrs crs) {
        List<Optional<Position>> places =
                named.stream().map(i -> position(requests.get(i), crs)).toList();
        if (places.stream().allMatch(place -> isSame(place, places.get(0)))) {
            return named;
        }
        if (move.was().isEmpty()) {
            String where = named.stream().map(i -> requests.get(i).where()).collect(Collectors.joining(", "));
            note(
                    move,
                    Status.DOES_NOT_FIT,
                    "\"" + move.name() + "\" stands at several positions (" + where + "), and it is not told which of"
                            + " them moves; nothing was moved; give was_longitude and was_latitude, the position before");
            return List.of();
        }
        List<Integer> there = IntStream.range(0, named.size())
                .filter(k -> isSame(places.get(k), move.was()))
                .mapToObj(named::get)
                .toList();
        if (!there.isEmpty()) {
            return there;
        }
        return IntStream.range(0, named.size())
                .filter(k -> isSame(places.get(k), move.at()))
                .mapToObj(named::get)
                .findFirst()
                .map(List::of)
                .orElseGet(() -> named.subList(0, 1));
    }

    private static boolean isSame(Optional<Position> one, Optional<Position> other) {
        return one.isPresent() == other.isPresent() && (one.isEmpty() || isSame(one.get(), other.get()));
    }

    private boolean applies(PointRequest request, Row move, LayerCrs crs) {
        Position to = move.at().orElseThrow();
        Optional<Position> table = position(request, crs);
        if (table.isPresent() && isSame(table.get(), to)) {
            note(move, Status.NO_LONGER_NEEDED, "its table has this position by now");
            return false;
        }
        if (move.was().isPresent()
                && table.isPresent()
                && !isSame(table.get(), move.was().get())) {
            note(
                    move,
                    Status.DOES_NOT_FIT,
                    request.where() + " has the position " + shown(table.get()) + " by now, not "
                            + shown(move.was().get()) + " from where it was moved to " + shown(to)
                            + "; the position of " + request.where() + " is used");
            return false;
        }
        note(
                move,
                Status.APPLIED,
                "to " + shown(to) + table.map(at -> " from " + shown(at)).orElse(""));
        return true;
    }

    private static PointRequest at(PointRequest request, Row move) {
        Position to = move.at().orElseThrow();
        return new PointRequest(
                request.kind(),
                request.name(),
                request.where() + MOVED + move.where() + ",",
                to.x(),
                to.y(),
                false,
                request.maxDistanceMeters(),
                request.riverName());
    }

    /** Where the table puts a point, in degrees; empty where that is no place, of which the placing will complain. */
    private static Optional<Position> position(PointRequest request, LayerCrs crs) {
        try {
            PointReader.Fix fix = new PointReader(crs).read(request.system(), request.x(), request.y());
            return Optional.of(new Position(fix.longitude(), fix.latitude(), false));
        } catch (GeoDataException e) {
            return Optional.empty();
        }
    }

    private static boolean isSame(Position one, Position other) {
        return Math.abs(one.x() - other.x()) <= SAME && Math.abs(one.y() - other.y()) <= SAME;
    }

    private static String shown(Position at) {
        return Numbers.degrees(at.x()) + ", " + Numbers.degrees(at.y());
    }

    private void note(Row row, Status status, String text) {
        outcomes.put(row.where(), new CorrectionOutcome(row.where(), status, text));
    }

    private static CorrectionOutcome unheard(Row row) {
        return new CorrectionOutcome(
                row.where(), Status.DOES_NOT_FIT, "this " + row.kind() + " is not placed on the river");
    }

    /** Every row with what became of it, in the file's order. */
    List<AppliedCorrection> applied() {
        return corrections.rows().stream()
                .map(row -> new AppliedCorrection(row, outcomes.getOrDefault(row.where(), unheard(row))))
                .toList();
    }
}
