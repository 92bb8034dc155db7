// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported;
import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/**
 * Reads one row: words first, then whether it is a sample at all, then the number. Every reason to refuse it is collected.
 * Start at {@link #read}.
 */
public final class RowReader {
    /** What a row that is not a sample is, and why it is left out. */
    private static final List<Meaning> LEFT_OUT = List.of(
            new Meaning(Category.TYPE, "blank"),
            new Meaning(Category.TYPE, "replicate"),
            new Meaning(Category.TYPE, "spike"),
            new Meaning(Category.TYPE, "rejected"),
            new Meaning(Category.QUALIFIER, "rejected"),
            new Meaning(Category.TYPE, "not a river"),
            new Meaning(Category.SUBSTANCE, "other substance"));

    private final RowCells row;
    private final Labels labels;
    private final List<String> said = new ArrayList<>();
    private final List<String> reasons = new ArrayList<>();

    private RowReader(RowCells row, Vocabulary words) {
        this.row = row;
        this.labels = new Labels(words, reasons);
    }

    /** Our own columns, besides those that say where the sample was taken. */
    public static Set<String> columns() {
        Set<String> columns = new LinkedHashSet<>(List.of("name", "station", "date", "time"));
        Stream.of(Category.values()).map(Category::column).forEach(columns::add);
        columns.addAll(
                List.of("value", "unit", "limit", "limit_unit", "species", "length", "length_unit", "method", "note"));
        return columns;
    }

    /** Reads a row with these words. */
    public static LabRow read(RowCells row, Vocabulary words) {
        RowReader reader = new RowReader(row, words);
        reader.labels.read(row);
        Optional<String> leftOut = reader.leftOut();
        if (leftOut.isPresent()) {
            reader.reasons.clear();
            return reader.row(Standing.LEFT_OUT, Optional.empty(), Optional.empty())
                    .without(Standing.LEFT_OUT, leftOut.get());
        }
        if (Stream.of("value", "qualifier", "limit").allMatch(c -> row.all(c).isEmpty())) {
            reader.reasons.clear();
            return reader.row(Standing.NO_RESULT, Optional.empty(), Optional.empty())
                    .without(Standing.NO_RESULT, "value, qualifier and limit are blank");
        }
        Optional<LocalDate> date = reader.date();
        Optional<Finding> finding = reader.finding(words);
        boolean understood = reader.reasons.isEmpty() && finding.isPresent();
        return reader.row(
                understood ? Standing.UNDERSTOOD : Standing.REFUSED, understood ? finding : Optional.empty(), date);
    }

    private Optional<String> leftOut() {
        for (Meaning each : LEFT_OUT) {
            if (labels.has(each.category(), each.value())) {
                Stream<String> cells = Stream.of(Category.TYPE, Category.QUALIFIER, Category.SUBSTANCE)
                        .filter(c -> c == each.category())
                        .flatMap(c -> row.all(c.column()).stream());
                return Optional.of(each.value() + " (" + cells.collect(Collectors.joining(", ")) + ")");
            }
        }
        return Optional.empty();
    }

    private LabRow row(Standing standing, Optional<Finding> finding, Optional<LocalDate> date) {
        String written = Stream.of(row.joined("qualifier"), row.text("value"), row.text("unit"))
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining(" "));
        String limit = row.first("limit")
                .map(l -> "; limit " + (l + " " + row.text("limit_unit")).strip())
                .orElse("");
        String fish = Stream.of(row.text("species"), (row.text("length") + " " + lengthUnit()).strip())
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining(", "));
        Set<String> states = labels.all(Category.STATE);
        return new LabRow(
                standing,
                row.text("name"),
                row.text("station"),
                date,
                row.text("time"),
                states.size() == 1 ? states.stream().findFirst() : Optional.empty(),
                written + limit,
                finding,
                fish,
                row.text("method"),
                row.joined("note"),
                said,
                reasons);
    }

    private String lengthUnit() {
        return row.first("length").isPresent() ? row.text("length_unit") : "";
    }

    private Optional<LocalDate> date() {
        try {
            return row.first("date").map(LabDate::parse);
        } catch (IllegalArgumentException e) {
            reasons.add(e.getMessage());
            return Optional.empty();
        }
    }

    private Optional<Finding> finding(Vocabulary words) {
        labels.one(Category.STATE);
        Optional<Substance> substance = substance();
        Optional<Medium> medium = medium(substance);
        if (medium.isEmpty()) {
            return Optional.empty();
        }
        if (medium.get() == Medium.SUSPENDED_SOLIDS && isPerVolume()) {
            reasons.add("mercury on the filter as mass per volume of water is not compared, as the model's whole and"
                    + " filtered water are: give those two, or mg/kg of solids (divide by the suspended solids of the"
                    + " same bottle)");
            return Optional.empty();
        }
        ResultReader results = new ResultReader(row, labels, said, reasons);
        Optional<Reported> reported = results.read(medium.get().isWater(), words);
        Fraction fraction = fraction(medium.get(), substance);
        Basis basis = basis(medium.get());
        if (reported.isEmpty() || substance.isEmpty() || !reasons.isEmpty()) {
            return Optional.empty();
        }
        Finding finding = new Finding(medium.get(), substance.get(), fraction, basis, reported.get());
        Plausible.check(finding, results.isImplied()).ifPresent(reasons::add);
        Plausible.doubt(finding).filter(d -> reasons.isEmpty()).ifPresent(said::add);
        return reasons.isEmpty() ? Optional.of(finding) : Optional.empty();
    }

    private boolean isPerVolume() {
        try {
            return row.first("unit").map(u -> LabUnit.of(u, true).isWater()).orElse(false);
        } catch (IllegalArgumentException e) {
            return false; // it is some other unit, as said elsewhere
        }
    }

    private Optional<Substance> substance() {
        Optional<String> word = labels.one(Category.SUBSTANCE);
        if (word.isEmpty() && row.all("substance").isEmpty()) {
            reasons.add("substance is blank; give total mercury, methylmercury ...");
        }
        return word.flatMap(w ->
                Stream.of(Substance.values()).filter(s -> s.word().equals(w)).findFirst());
    }

    private Optional<Medium> medium(Optional<Substance> substance) {
        Optional<String> word = labels.one(Category.MEDIUM);
        if (word.isEmpty() && row.all("medium").isEmpty()) {
            reasons.add("medium is blank; give surface water, bed sediment, fish ...");
        }
        if (word.isEmpty()) {
            return Optional.empty();
        }
        boolean onSolids = labels.has(Category.FRACTION, "suspended")
                && word.get().equals(Medium.SURFACE_WATER.word())
                && substance.filter(s -> s != Substance.SUSPENDED_SOLIDS).isPresent();
        if (onSolids) {
            said.add("suspended fraction of water understood as mercury on suspended solids");
        }
        String found = onSolids ? Medium.SUSPENDED_SOLIDS.word() : word.get();
        return Stream.of(Medium.values()).filter(m -> m.word().equals(found)).findFirst();
    }

    private Fraction fraction(Medium medium, Optional<Substance> substance) {
        if (!medium.isWater()) {
            return Fraction.NONE;
        }
        if (substance.filter(s -> s == Substance.SUSPENDED_SOLIDS).isPresent()) {
            return Fraction.WHOLE;
        }
        Optional<String> word = labels.one(Category.FRACTION);
        if (word.isEmpty() && row.all("fraction").isEmpty()) {
            reasons.add("fraction is blank; give whole or filtered");
        }
        return word.filter(w -> w.equals(Fraction.FILTERED.word())).isPresent() ? Fraction.FILTERED : Fraction.WHOLE;
    }

    private Basis basis(Medium medium) {
        if (medium.isWater()) {
            return Basis.NONE;
        }
        Optional<String> word = labels.one(Category.BASIS);
        if (word.isEmpty() && row.all("basis").isEmpty()) {
            reasons.add("basis is blank; give dry or wet weight, in the unit or in its own column");
        }
        return word.filter(w -> w.equals(Basis.WET_WEIGHT.word())).isPresent() ? Basis.WET_WEIGHT : Basis.DRY_WEIGHT;
    }
}
