// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Planned.Choice;
import org.silverwake.cli.run.Planned.Held;
import org.silverwake.cli.scenario.FieldNotesPlan;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.planning.Adoption;
import org.silverwake.model.planning.CostCurve;
import org.silverwake.model.planning.CostRange;
import org.silverwake.model.planning.Evaluator;
import org.silverwake.model.planning.Level;
import org.silverwake.model.planning.Limit;
import org.silverwake.model.planning.Option;
import org.silverwake.model.planning.Planner;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.FieldNotes;
import org.silverwake.model.release.Gain;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.Spread;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningRow;

/**
 * Looks for the cheapest set of practices, beside those in force, that brings places under guideline values. Every set is
 * judged by a full run; what each practice does by itself is the difference of two full runs, so that its solids and water
 * are in it. All practices are taken as in their first year.
 */
public final class PlanRun implements Evaluator {
    private static final int MOST_RUNS = 200;
    private static final int BUDGETS = 25;
    private static final int AS_ASKED = -1;
    /** Up to so many practices at a site are tried in all combinations, of more each two. */
    private static final int FEW = 4;

    private final Outcome outcome;
    private final FieldNotesPlan plan;
    private final List<Choice> choices;
    private final List<Held> held;

    private PlanRun(Outcome outcome, List<Choice> choices, List<Held> held) {
        this.outcome = outcome;
        this.plan = outcome.scenario().fieldNotes();
        this.choices = choices;
        this.held = held;
    }

    /**
     * What is asked.
     *
     * @param places names of places; all where none is named
     * @param guidelines ids of values; all that are compared with reaches where none is named
     * @param states flow states, each alone; all as the value asks where none is named
     * @param inPart whether a practice may be taken up by a share of the sheds
     */
    public record Asked(List<String> places, List<String> guidelines, List<String> states, boolean inPart) {
        /** Copies the lists. */
        public Asked {
            places = List.copyOf(places);
            guidelines = List.copyOf(guidelines);
            states = List.copyOf(states);
        }
    }

    /**
     * Searches.
     *
     * @throws ScenarioException for everything wrong in the scenario or in what is asked
     */
    public static Planned run(Path path, Asked asked, MainRun.Progress progress) {
        Outcome outcome = MainRun.run(path, progress);
        List<Choice> choices = choices(outcome.scenario());
        List<Held> held = held(outcome, asked);
        PlanRun run = new PlanRun(outcome, choices, held);
        List<Option> options = choices.stream().map(Choice::option).toList();
        List<Limit> limits = held.stream().map(Held::limit).toList();
        Adoption adoption = asked.inPart() ? Adoption.PARTIAL : Adoption.ALL_OR_NOTHING;
        progress.step("look for the cheapest set");
        var plans = Planner.of(options, limits, run, adoption, MOST_RUNS).plans();
        progress.step("see what each budget buys");
        CostCurve curve = CostCurve.of(options, limits, run, adoption, Level.MIDDLE, BUDGETS);
        SiteCuts cuts = SiteCuts.of(outcome, held, choices);
        return new Planned(outcome, choices, held, plans, curve, cuts.equal(), cuts.cheapest());
    }

    /** At each site every practice by itself, and several together, since what they do there does not add up. */
    private static List<Choice> choices(ScenarioInput scenario) {
        FieldNotesPlan plan = scenario.fieldNotes();
        List<Choice> choices = new ArrayList<>();
        for (Site site : plan.sites()) {
            Optional<NotedSite> noted =
                    NotedSites.find(plan, site).filter(n -> n.notes().isPresent());
            List<OfferedPractice> possible = plan.practices().stream()
                    .filter(offered -> offered.isFor(site))
                    .filter(offered -> !plan.isInForce(offered, site))
                    .toList();
            int together = possible.size() > FEW ? 2 : FEW;
            for (int set = 1; noted.isPresent() && set < 1 << possible.size(); set++) {
                if (Integer.bitCount(set) <= together) {
                    List<OfferedPractice> chosen = new ArrayList<>();
                    for (int i = 0; i < possible.size(); i++) {
                        if ((set >> i & 1) == 1) {
                            chosen.add(possible.get(i));
                        }
                    }
                    choices.add(new Choice(chosen, site, option(scenario, chosen, site, noted.get())));
                }
            }
        }
        if (choices.isEmpty()) {
            throw new ScenarioException(List.of("scenario: there is nothing to plan with: give field notes of sites"
                    + " (field-notes) and practices that are not in force yet (practices)"));
        }
        return choices;
    }

    private static Option option(ScenarioInput scenario, List<OfferedPractice> chosen, Site site, NotedSite noted) {
        FieldNotesPlan plan = scenario.fieldNotes();
        List<Practice> practices = new ArrayList<>(NotedSites.inForce(plan).by(site));
        double before = river(plan, noted, practices);
        Gain.Prices prices = plan.prices().orElse(new Gain.Prices(0, 0));
        FieldNotes notes = noted.notes().orElseThrow();
        for (Practice practice : practices) {
            notes = practice.apply(notes);
        }
        double[] net = new double[Spread.Level.values().length];
        for (OfferedPractice offered : chosen) {
            Practice practice = inFirstYear(scenario, offered.practice(), 1);
            Spread gain = Gain.of(practice, notes, noted.year(), prices).net();
            net[0] += gain.low();
            net[1] += gain.middle();
            net[2] += gain.high();
            notes = practice.apply(notes);
            practices.add(practice);
        }
        return new Option(
                chosen.stream().map(o -> o.practice().name()).collect(Collectors.joining(" + ")),
                site.name(),
                site.name(),
                new CostRange(-net[2], -net[1], -net[0]),
                Math.max(0, before - river(plan, noted, practices)));
    }

    /** Mercury to the river [kg/yr]. */
    private static double river(FieldNotesPlan plan, NotedSite noted, List<Practice> practices) {
        return noted.balance(practices, plan.year()).at(plan.level()).river() * Quantity.SECONDS_PER_YEAR;
    }

    /**
     * A practice taken up by a share of those who would, in force from the year that is run. What drums go on losing are
     * droplets, and left out where the scenario does not carry them.
     */
    static Practice inFirstYear(ScenarioInput scenario, Practice practice, double share) {
        boolean carried = scenario.mercury().forms().contains(FurtherForm.DROPLETS);
        return scenario.fieldNotes().inFirstYear(practice, share, carried);
    }

    private static List<Held> held(Outcome outcome, Asked asked) {
        List<String> problems = new ArrayList<>();
        List<ScenarioInput.Place> places = outcome.scenario().places();
        List<Integer> at = chosen(
                "--at",
                asked.places(),
                places.stream().map(ScenarioInput.Place::name).toList(),
                problems);
        List<Guideline> of = outcome.screening().compared().stream()
                .filter(outcome.screening()::isModelled)
                .filter(guideline -> !guideline.observable().substance().isCyanide())
                .toList();
        List<Integer> values = chosen(
                "--guideline",
                asked.guidelines(),
                of.stream().map(Guideline::id).toList(),
                problems);
        List<String> names = outcome.scenario().states().stream()
                .map(ScenarioInput.FlowState::name)
                .toList();
        List<Integer> states =
                asked.states().isEmpty() ? List.of(AS_ASKED) : chosen("--state", asked.states(), names, problems);
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
        List<Held> held = new ArrayList<>();
        for (int place : at) {
            for (int value : values) {
                for (int state : states) {
                    Guideline guideline = of.get(value);
                    boolean one = state != AS_ASKED
                            && guideline.observable().averaging().isOneForAllStates();
                    String when = state == AS_ASKED ? "" : ", " + names.get(state);
                    Held candidate = new Held(
                            place,
                            guideline,
                            state,
                            Limit.of(
                                    places.get(place).name() + ", " + guideline.displayName() + when,
                                    guideline.value()));
                    if (!one
                            && value(outcome, Rerun.present(outcome), candidate).isPresent()) {
                        held.add(candidate);
                    }
                }
            }
        }
        if (held.isEmpty()) {
            throw new ScenarioException(List.of("none of these values is assessed at any of these places"));
        }
        return held;
    }

    private static List<Integer> chosen(String what, List<String> asked, List<String> known, List<String> problems) {
        if (asked.isEmpty()) {
            return IntStream.range(0, known.size()).boxed().toList();
        }
        List<String> small = known.stream().map(k -> k.toLowerCase(Locale.ROOT)).toList();
        List<Integer> chosen = new ArrayList<>();
        for (String word : asked) {
            int index = small.indexOf(word.strip().toLowerCase(Locale.ROOT));
            if (index < 0) {
                problems.add(what + " " + word + " is not known here; " + Nearest.hint(word, known));
            } else {
                chosen.add(index);
            }
        }
        return chosen;
    }

    /** The high estimate at a place [kg/m3 or kg/kg]; empty where it is not assessed or the value does not apply. */
    static Optional<Double> value(Outcome outcome, Rerun run, Held held) {
        int reach = outcome.basin().reachAt(outcome.basin().points("place").get(held.place()));
        boolean applies = run.screening()
                .verdict(held.guideline(), run.screening().receptors().get(held.place()))
                .isPresent();
        if (!applies) {
            return Optional.empty();
        }
        ScreeningRow row = held.state() == AS_ASKED
                ? run.screening().row(held.guideline(), reach)
                : run.screening().inState(held.guideline(), reach, held.state());
        return row.values().map(v -> v.band().high());
    }

    @Override
    public double[] values(double[] shares) {
        Rerun run = Rerun.of(outcome, taken(shares));
        double[] values = new double[held.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value(outcome, run, held.get(i)).orElse(0.0);
        }
        return values;
    }

    @Override
    public double[][] slopes(double[] shares) {
        double[] now = values(shares);
        double[][] slopes = new double[held.size()][choices.size()];
        IntStream.range(0, choices.size()).parallel().forEach(i -> {
            double[] other = shares.clone();
            other[i] = shares[i] < 1 ? 1 : 0;
            double[] then = values(other);
            for (int k = 0; k < now.length; k++) {
                slopes[k][i] = (then[k] - now[k]) / (other[i] - shares[i]);
            }
        });
        return slopes;
    }

    /** Practices in force and, of those to choose from, each by its share. */
    private NotedSites.Taken taken(double[] shares) {
        return site -> {
            List<Practice> practices = new ArrayList<>(NotedSites.inForce(plan).by(site));
            for (int i = 0; i < choices.size(); i++) {
                if (shares[i] > 0 && choices.get(i).site().equals(site)) {
                    for (OfferedPractice offered : choices.get(i).offered()) {
                        practices.add(inFirstYear(outcome.scenario(), offered.practice(), shares[i]));
                    }
                }
            }
            return practices;
        };
    }
}
