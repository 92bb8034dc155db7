// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.Water;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.OutsideModelException;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyRun;
import org.silverwake.model.transport.TransportInput;

/** The main run up to its outcome: steps 1 to 7. Writing, step 8, is the command's. */
public final class MainRun {
    /** Dispersion number above which dispersion shows [-]. */
    static final double DISPERSION_SHOWS = 0.05;

    private static final double DENSE = 1;

    private static final int NAMED = 5;

    private MainRun() {}

    /** Hears of each step as it begins. */
    public interface Progress {
        /** A step begins. */
        void step(String name);
    }

    /**
     * Runs a scenario.
     *
     * @throws ScenarioException for everything wrong in the scenario
     * @throws org.silverwake.geo.GeoDataException for unusable geodata
     */
    public static Outcome run(Path path, Progress progress) {
        progress.step("read the scenario");
        ScenarioInput scenario = Scenarios.read(path);
        progress.step("read, assemble and cut the network");
        Basin basin = Basin.of(scenario);
        ProfileEnds.check(scenario, basin);
        Dams.check(scenario, basin);
        ReachClasses classes = ReachClasses.find(scenario, basin);
        progress.step("route water");
        Water water = WaterStep.run(scenario, basin);
        progress.step("carry solids and mercury");
        TransportInput input = MercuryStep.input(scenario, basin, water);
        SteadyResult result = carry(scenario, input);
        Optional<Cyanide> cyanide = CyanideStep.run(scenario, basin, input);
        progress.step("screen");
        Breaks breaks = Breaks.of(scenario, basin, result);
        List<String> sampleWarnings = new ArrayList<>();
        List<LocatedSample> samples = SampleStep.locate(scenario, basin, sampleWarnings);
        Optional<FishRun> fish = FishStep.run(scenario, basin, result, samples, sampleWarnings);
        ScreeningStep.Outcome screened = ScreeningStep.run(scenario, basin, result, cyanide, classes, breaks, fish);
        if (scenario.history().isPresent()) {
            progress.step("go through the years");
        }
        Optional<YearsRun> years = HistoryStep.run(scenario, basin, result, screened.screening(), fish);
        List<String> warnings = new ArrayList<>(warnings(scenario, basin, water, result, classes));
        warnings.addAll(sampleWarnings);
        warnings.addAll(breaks.warnings());
        warnings.addAll(CyanideStep.warnings(scenario, cyanide, screened.screening()));
        warnings.addAll(TakenWater.warnings(scenario, basin, result));
        if (screened.screening().compared().stream().noneMatch(screened.screening()::isOfReaches)) {
            warnings.add(
                    "none of the chosen guideline values is compared with river reaches, so no map is drawn; add one of"
                            + " surface water or bed sediment to guidelines.use (silverwake guidelines lists them)");
        }
        return new Outcome(
                scenario,
                basin.withDefects(OddRoughness.find(basin, result)),
                water,
                result,
                cyanide,
                screened.screening(),
                classes,
                years,
                fish,
                screened.gaps(),
                breaks,
                SteadyRun.changeOnHalving(input, result),
                samples,
                SampleStep.compare(scenario, samples, basin, result, cyanide),
                warnings);
    }

    private static SteadyResult carry(ScenarioInput scenario, TransportInput input) {
        try {
            return SteadyRun.run(input);
        } catch (OutsideModelException e) {
            throw new ScenarioException(List.of("flow state "
                    + scenario.states().get(e.state()).name() + ", " + e.getMessage()
                    + " of the sites at or above it in the table of sites"));
        }
    }

    private static List<String> warnings(
            ScenarioInput scenario, Basin basin, Water water, SteadyResult result, ReachClasses classes) {
        List<String> warnings = new ArrayList<>(scenario.warnings());
        warnings.addAll(basin.warnings());
        warnings.addAll(classes.warnings());
        warnings.addAll(water.notes());
        warnings.addAll(BedNotes.warnings(basin, result));
        warnings.addAll(FormNotes.warnings(scenario, basin, result));
        for (int s = 0; s < scenario.states().size(); s++) {
            String state = scenario.states().get(s).name();
            double number = result.dispersionNumber(s);
            if (number > DISPERSION_SHOWS) {
                warnings.add(state + ": k D/U^2 is " + number
                        + "; above 0.05 dispersion, which this model leaves out, shows in the answer");
            }
            if (!settles(result, s)) {
                warnings.add(
                        state + ": nothing settles in this state, so laid down and carried through are the same in it"
                                + " (skin shear is above tau-cd, sand stays in suspension)");
            }
            heldDry(warnings, basin, result, s, state);
            slurry(warnings, basin, result, s, state);
            if (scenario.settings().value("mercury.kd-slope") == 0 && isDense(result, s)) {
                warnings.add(
                        state
                                + ": suspended sediment exceeds 1 g/L and log10 Kd does not fall with it (mercury.kd-slope is 0)");
            }
        }
        return List.copyOf(warnings);
    }

    private static void heldDry(List<String> warnings, Basin basin, SteadyResult result, int s, String state) {
        List<Integer> dry = new ArrayList<>();
        for (int r = 0; r < basin.network().size(); r++) {
            if (!result.isWet(s, r)) {
                dry.add(r);
            }
        }
        if (dry.size() == basin.network().size()) {
            warnings.add(state + ": no reach has water, so no concentration is given in this state");
        }
        List<String> names = result.input().sites().stream()
                .filter(site -> site.mercury().get(s) > 0 && dry.contains(site.reach()))
                .map(SiteRelease::name)
                .toList();
        if (!names.isEmpty()) {
            warnings.add(
                    state + ": no water where " + String.join(", ", names) + " release" + (names.size() == 1 ? "s" : "")
                            + "; that mercury is counted as held dry and not carried on when water comes back");
        }
    }

    private static void slurry(List<String> warnings, Basin basin, SteadyResult result, int s, String state) {
        List<Integer> slurry = result.solution(Bound.CARRIED_THROUGH, s).slurry();
        if (!slurry.isEmpty()) {
            List<String> names = slurry.stream().map(r -> basin.reach(r).id()).toList();
            int more = names.size() - NAMED;
            warnings.add(state + ": slurry, outside this model, above 5 g/L of solids in "
                    + String.join(", ", names.subList(0, Math.min(NAMED, names.size())))
                    + (more > 0 ? " and " + more + " more reaches (reaches.csv)" : ""));
        }
    }

    private static boolean settles(SteadyResult result, int state) {
        var solution = result.solution(Bound.LAID_DOWN, state);
        for (int v = 0; v < result.variants(); v++) {
            if (solution.balance(v).sum(Balance.Process.SETTLED) > 0) {
                return true;
            }
        }
        return result.input().sites().isEmpty();
    }

    private static boolean isDense(SteadyResult result, int state) {
        for (int c = 0; c < result.cells().count(); c++) {
            if (result.solution(Bound.CARRIED_THROUGH, state).sediment(c) > DENSE) {
                return true;
            }
        }
        return false;
    }
}
