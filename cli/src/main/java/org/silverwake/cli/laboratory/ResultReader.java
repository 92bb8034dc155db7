// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.model.sample.Reported;
import org.silverwake.model.sample.Reported.Kind;

/** The number, its sign, its flags and its limit: one {@link Reported}, or the reasons why there is none. */
final class ResultReader {
    private static final String DETECTED = "detected";
    private static final String ESTIMATED = "estimated";
    private static final String NOT_DETECTED = "not detected";
    private static final String BELOW_QUANTIFICATION = "below quantification";
    private static final double SAME = 1e-9;

    private final RowCells row;
    private final Labels labels;
    private final List<String> said;
    private final List<String> reasons;
    private boolean isImplied;

    ResultReader(RowCells row, Labels labels, List<String> said, List<String> reasons) {
        this.row = row;
        this.labels = labels;
        this.said = said;
        this.reasons = reasons;
    }

    Optional<Reported> read(boolean water, Vocabulary words) {
        try {
            ResultCell cell = row.first("value")
                    .map(v -> ResultCell.of(v, row.mark(), words))
                    .orElse(new ResultCell(List.of(), OptionalDouble.empty(), Optional.empty()));
            cell.claims().forEach(labels::claim);
            OptionalDouble number = number(cell, water);
            OptionalDouble limit = limit(water);
            return decide(labels.all(Category.QUALIFIER), number, limit);
        } catch (IllegalArgumentException e) {
            reasons.add(e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<Reported> decide(Set<String> flags, OptionalDouble number, OptionalDouble limit) {
        boolean sign = flags.contains(ResultCell.BELOW);
        boolean below = sign || flags.contains(NOT_DETECTED);
        boolean above = flags.contains(ResultCell.ABOVE);
        boolean quantified = flags.contains(DETECTED) || flags.contains(ESTIMATED);
        if (above && (below || flags.contains(BELOW_QUANTIFICATION)) || below && quantified) {
            throw new IllegalArgumentException("says two things at once: " + String.join(" and ", flags));
        }
        if (number.isPresent() && !(number.getAsDouble() > 0)) {
            throw new IllegalArgumentException("value " + row.text("value")
                    + " is no measured value; where nothing was found, give < and the laboratory's limit");
        }
        if (above) {
            return of(Kind.ABOVE, number, "says above without a number");
        }
        if (below || flags.contains(BELOW_QUANTIFICATION) && number.isEmpty()) {
            return below(number, limit);
        }
        if (number.isEmpty()) {
            throw new IllegalArgumentException("has no result; where nothing was found, say so and give the limit");
        }
        boolean estimated = flags.contains(ESTIMATED) || flags.contains(BELOW_QUANTIFICATION);
        if (limit.isPresent() && number.getAsDouble() < limit.getAsDouble() * (1 - SAME) && !estimated) {
            if (!flags.contains(DETECTED)) {
                throw new IllegalArgumentException(
                        "value is below its own limit and carries no flag; say in the column qualifier whether it was"
                                + " detected or estimated");
            }
            said.add("below its own limit, detected all the same");
        }
        return of(estimated ? Kind.ESTIMATED : Kind.DETECTED, number, "");
    }

    /** Where a number and a limit are both there, the larger is a limit under either reading. */
    private Optional<Reported> below(OptionalDouble number, OptionalDouble limit) {
        if (number.isEmpty()) {
            return of(
                    Kind.BELOW,
                    limit,
                    "was not found, but the limit is unknown; give it in the column limit, with its unit");
        }
        if (limit.isPresent() && Math.abs(limit.getAsDouble() / number.getAsDouble() - 1) > SAME) {
            boolean larger = limit.getAsDouble() > number.getAsDouble();
            said.add("not found; number and limit differ: below the larger, the " + (larger ? "limit" : "number")
                    + ", is true under either reading");
            return of(Kind.BELOW, larger ? limit : number, "");
        }
        said.add("not found; the number is a limit, not a value");
        return of(Kind.BELOW, number, "");
    }

    private static Optional<Reported> of(Kind kind, OptionalDouble value, String missing) {
        if (value.isEmpty()) {
            throw new IllegalArgumentException(missing);
        }
        return Optional.of(new Reported(kind, value.getAsDouble()));
    }

    private OptionalDouble number(ResultCell cell, boolean water) {
        if (cell.number().isEmpty()) {
            return OptionalDouble.empty();
        }
        LabUnit unit = unit(cell.unit().or(() -> row.first("unit")), "value", water);
        if (cell.unit().isPresent() && row.first("unit").isPresent()) {
            LabUnit column = LabUnit.of(row.text("unit"), water);
            if (!column.unit().name().equals(unit.unit().name())) {
                throw new IllegalArgumentException(
                        "unit " + cell.unit().get() + " in the cell and " + row.text("unit") + " beside it differ");
            }
        }
        return OptionalDouble.of(unit.unit().si(cell.number().getAsDouble()));
    }

    private LabUnit unit(Optional<String> text, String of, boolean water) {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("the unit of the " + of + " is blank; give one");
        }
        LabUnit unit = LabUnit.of(text.get(), water);
        unit.basis().ifPresent(b -> labels.basis(b.word()));
        isImplied |= unit.said().isPresent();
        unit.said().filter(s -> !said.contains(s)).ifPresent(said::add);
        return unit;
    }

    /** Whether a unit was read out of parts per million or the like. */
    boolean isImplied() {
        return isImplied;
    }

    /** The limit in SI, in its own unit; in the value's where the table has no column for it. Without a unit it is none. */
    private OptionalDouble limit(boolean water) {
        Optional<String> text = row.first("limit").map(t -> t.replaceFirst("^<\\s*", ""));
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        String number = text.get().replaceFirst("^(" + LabNumber.PATTERN + ").*$", "$1");
        String ownUnit = text.get().substring(number.length()).strip();
        Optional<String> written =
                Optional.of(ownUnit).filter(u -> !u.isEmpty()).or(() -> row.first("limit_unit"));
        if (written.isEmpty() && row.hasColumn("limit_unit")) {
            said.add("the limit has no unit and is not used");
            return OptionalDouble.empty();
        }
        LabUnit unit = unit(written.or(() -> row.first("unit")), "limit", water);
        double value;
        try {
            value = LabNumber.parse(number, row.mark());
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("limit " + e.getMessage(), e);
        }
        if (!(value > 0)) {
            throw new IllegalArgumentException("limit " + text.get() + " is no limit; give a number above 0");
        }
        return OptionalDouble.of(unit.unit().si(value));
    }
}
