// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.silverwake.model.quantity.Quantity;

/**
 * A site's mercury in a year, from field notes: what goes to the air, stays in tailings kept, goes to the river by form and flow
 * state, is recovered, and is left in the product. Low, middle and high are whole balances, each of which closes: those that give
 * least and most to the river among all combinations of the low and high of what was assumed.
 */
public final class SiteBalance {
    private static final double MG_PER_KG = 1e6;

    private final String name;
    private final List<SiteYear> corners;
    private final SiteYear low;
    private final SiteYear middle;
    private final SiteYear high;
    private final List<Assumed> assumed;
    private final List<NoteFinding> findings;
    private final Optional<FieldNotes> notes;

    private SiteBalance(
            String name,
            SiteYear middle,
            List<SiteYear> others,
            List<Assumed> assumed,
            List<NoteFinding> findings,
            Optional<FieldNotes> notes) {
        this.name = name;
        this.notes = notes;
        this.middle = middle;
        this.corners = new ArrayList<>(others);
        corners.add(middle);
        Comparator<SiteYear> byRiver = Comparator.comparingDouble(
                        (SiteYear year) -> year.balance().river())
                .thenComparingDouble(year -> year.balance().bought());
        this.low = corners.stream().min(byRiver).orElseThrow();
        this.high = corners.stream().max(byRiver).orElseThrow();
        this.assumed = List.copyOf(assumed);
        this.findings = List.copyOf(findings);
    }

    /**
     * The balance of some notes, with all practices that they name in force.
     *
     * @param flowYear the year
     * @throws NotesException if something in the notes cannot be, or they do not determine it; with all that was found
     */
    public static SiteBalance of(FieldNotes notes, FlowYear flowYear) {
        List<NoteFinding> findings = new ArrayList<>(NoteCheck.of(notes));
        try {
            notes.tailings().storage().release(1, flowYear);
        } catch (IllegalArgumentException unfit) {
            findings.add(NoteFinding.missing("when tailings go", unfit.getMessage()));
        }
        if (findings.stream().anyMatch(NoteFinding::refused)) {
            throw new NotesException(notes.name(), findings);
        }
        Assumptions asked = new Assumptions(Map.of());
        SiteYear middle = SiteYear.of(notes, flowYear, asked);
        List<SiteYear> others = new ArrayList<>();
        for (Map<String, Spread.Level> corner : asked.corners()) {
            try {
                others.add(SiteYear.of(notes, flowYear, new Assumptions(corner)));
            } catch (NotesException contradiction) {
                // a combination that the notes rule out says nothing of the site
                continue;
            }
        }
        findings.addAll(afterwards(notes, middle, asked));
        return new SiteBalance(notes.name(), middle, others, asked.asked(), findings, Optional.of(notes));
    }

    /**
     * The balance of an old heap or disturbed ground.
     *
     * @param flowYear the year
     */
    public static SiteBalance of(Eroded eroded, FlowYear flowYear) {
        Assumptions asked = new Assumptions(Map.of());
        SiteYear middle = SiteYear.of(eroded, flowYear, asked);
        List<SiteYear> others = asked.corners().stream()
                .map(corner -> SiteYear.of(eroded, flowYear, new Assumptions(corner)))
                .toList();
        return new SiteBalance(eroded.name(), middle, others, asked.asked(), List.of(), Optional.empty());
    }

    /** What only the balance shows: improbable notes, unusual mercury per gold, a table test above it, solids not known. */
    private static List<NoteFinding> afterwards(FieldNotes notes, SiteYear year, Assumptions asked) {
        List<NoteFinding> found = new ArrayList<>();
        if (year.circuit().isEmpty()) {
            return found;
        }
        Circuit circuit = year.circuit().get();
        for (Reconciliation.Value value : circuit.sheet().improbable()) {
            Noted noted = value.stream().measured().orElseThrow();
            found.add(new NoteFinding(
                    value.stream().name(),
                    OptionalDouble.of(noted.value() * Quantity.SECONDS_PER_YEAR),
                    "kg/yr",
                    Optional.empty(),
                    "",
                    false,
                    "improbable beside the other notes, which make it "
                            + NoteFinding.show(value.value() * Quantity.SECONDS_PER_YEAR)
                            + " kg/yr; look at it again"));
        }
        Assumed ratio = notes.practice().ratio();
        double gold = circuit.value(Circuit.GOLD);
        double used = circuit.value(Circuit.USED);
        if (gold > 0
                && !asked.asked().contains(ratio)
                && notes.mercury().perGold().isEmpty()
                && !ratio.value().holds(used / gold)) {
            found.add(NoteFinding.outside(
                    ratio.what() + ", by the balance,", used / gold, "", ratio.value(), ratio.source()));
        }
        if (notes.tailings().fate().orElseThrow().river() > 0 && SiteYear.tailingsMass(notes) == 0) {
            found.add(new NoteFinding(
                    "dry tailings per cycle",
                    OptionalDouble.empty(),
                    "",
                    Optional.empty(),
                    "",
                    false,
                    "not noted, so mercury goes to the river without its solids"));
        }
        if (notes.tailingsContent().isEmpty() && SiteYear.tailingsMass(notes) > 0) {
            content(circuit.value(Circuit.TAILINGS) / SiteYear.tailingsMass(notes), found);
        }
        double least = SiteYear.least(notes);
        if (circuit.value(Circuit.TAILINGS) < least) {
            found.add(new NoteFinding(
                    "mercury by table test",
                    OptionalDouble.of(least * Quantity.SECONDS_PER_YEAR),
                    "kg/yr",
                    Optional.empty(),
                    "",
                    false,
                    "more than the balance leaves in the tailings, though the test gives the least"));
        }
        return found;
    }

    private static void content(double content, List<NoteFinding> found) {
        Spread usual = Published.TAILINGS_CONTENT.value().map(v -> v * MG_PER_KG);
        if (!usual.holds(content * MG_PER_KG)) {
            found.add(NoteFinding.outside(
                    "mercury content of tailings, by the balance,",
                    content * MG_PER_KG,
                    "mg/kg",
                    usual,
                    Published.TAILINGS_CONTENT.source()));
        }
    }

    /** The site. */
    public String name() {
        return name;
    }

    /** The balance that gives least to the river. */
    public YearBalance low() {
        return low.balance();
    }

    /** The balance with every assumption at its middle. */
    public YearBalance middle() {
        return middle.balance();
    }

    /** The balance that gives most to the river. */
    public YearBalance high() {
        return high.balance();
    }

    /** One of the three balances. */
    public YearBalance at(Spread.Level level) {
        return year(level).balance();
    }

    /** What goes to the river, path by path, in one of the three balances. */
    public List<PathRelease> releases(Spread.Level level) {
        return year(level).releases();
    }

    private SiteYear year(Spread.Level level) {
        return switch (level) {
            case LOW -> low;
            case MIDDLE -> middle;
            case HIGH -> high;
        };
    }

    /** Least, middle and most of any number of a balance, over all combinations of what was assumed. */
    public Spread range(ToDoubleFunction<YearBalance> number) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (SiteYear corner : corners) {
            double value = number.applyAsDouble(corner.balance());
            least = Math.min(least, value);
            most = Math.max(most, value);
        }
        return new Spread(least, number.applyAsDouble(middle.balance()), most);
    }

    /** Range of one path [kg/s]. */
    public Spread range(SitePath path) {
        return range(balance -> balance.rate(path));
    }

    /** Gold of all sheds [kg/s], as noted or as the notes make it. */
    public double gold() {
        return middle.gold();
    }

    /** Everything that was assumed, with range and source. */
    public List<Assumed> assumed() {
        return assumed;
    }

    /** What is told of notes that were kept. */
    public List<NoteFinding> findings() {
        return findings;
    }

    /** The flow sheet of one shed, kg/s; its misfit means something where it has degrees of freedom. */
    public Optional<Reconciliation> reconciliation() {
        return middle.circuit().map(Circuit::sheet);
    }

    /** The notes; none of an old heap or disturbed ground. */
    public Optional<FieldNotes> notes() {
        return notes;
    }

    /** Practices of Annex C that are in use. */
    public Set<WorstPractice> worst() {
        return notes.map(n -> WorstPractice.of(n, middle.balance())).orElse(Set.of());
    }
}
