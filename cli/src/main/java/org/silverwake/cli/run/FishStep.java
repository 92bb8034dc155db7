// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.fish.FishEstimate;
import org.silverwake.model.fish.FishEstimate.Basis;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.fish.MeasuredFish;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported.Kind;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.SteadyResult;

/** Fish of every reach, with those that laboratories measured in place of the estimate. */
final class FishStep {
    private final ScenarioInput scenario;
    private final ScenarioInput.Fish asked;
    private final Set<String> withoutLevel = new TreeSet<>();
    private int limits;
    private int unused;

    private FishStep(ScenarioInput scenario, ScenarioInput.Fish asked) {
        this.scenario = scenario;
        this.asked = asked;
    }

    /** Empty where the scenario has nothing to do with fish. */
    static Optional<FishRun> run(
            ScenarioInput scenario,
            Basin basin,
            SteadyResult result,
            List<LocatedSample> samples,
            List<String> warnings) {
        return scenario.fish().map(asked -> new FishStep(scenario, asked).run(basin, result, samples, warnings));
    }

    private FishRun run(Basin basin, SteadyResult result, List<LocatedSample> samples, List<String> warnings) {
        List<MeasuredFish> measured = new ArrayList<>();
        for (LocatedSample sample : samples) {
            boolean fish = sample.sample().row().standing() == Standing.UNDERSTOOD
                    && sample.sample().row().finding().orElseThrow().medium() == Medium.FISH;
            if (fish && sample.at().isPresent()) {
                int reach = basin.network().reachOfInput(sample.at().get().reach());
                measured(sample, reach).ifPresent(measured::add);
            }
        }
        FishRun run =
                FishRun.of(result, scenario.settings(), Dams.nodes(asked, basin), asked.isMethylCarried(), measured);
        warn(basin, run, measured, warnings);
        return run;
    }

    /** A limit below which a fish lies stands for it, which gives the higher answer. */
    private Optional<MeasuredFish> measured(LocatedSample sample, int reach) {
        Finding finding = sample.sample().row().finding().orElseThrow();
        boolean mercury =
                finding.substance() == Substance.METHYLMERCURY || finding.substance() == Substance.TOTAL_MERCURY;
        if (!mercury
                || finding.basis() != Medium.FISH.basis()
                || finding.reported().kind() == Kind.ABOVE) {
            unused++;
            return Optional.empty();
        }
        limits += finding.reported().kind() == Kind.BELOW ? 1 : 0;
        String name = sample.sample().row().fish().split(",")[0];
        Optional<TrophicLevel> level = asked.level(name);
        if (level.isEmpty()) {
            withoutLevel.add(name.isBlank() ? "without a name" : name);
        }
        return Optional.of(new MeasuredFish(
                reach, level.orElse(TrophicLevel.THREE), finding.reported().value()));
    }

    private void warn(Basin basin, FishRun run, List<MeasuredFish> measured, List<String> warnings) {
        if (!asked.isMethylCarried()) {
            warnings.add("fish: not assessed" + (measured.isEmpty() ? "" : " but where fish were measured")
                    + ", since methylmercury is not carried; list methyl under mercury.forms");
        }
        if (!withoutLevel.isEmpty()) {
            warnings.add("samples of fish: trophic level of " + String.join(", ", withoutLevel)
                    + " is not stated; taken as 3, which gives the higher answer; state it under fish.species");
        }
        if (limits > 0) {
            warnings.add("samples of fish: " + limits + " below a limit entered with the limit");
        }
        if (unused > 0) {
            warnings.add(
                    "samples of fish: " + unused + " not used in place of the estimate: only total Hg or MeHg by wet"
                            + " weight within the measuring range is");
        }
        run.aboveEstimate()
                .forEach(reach ->
                        warnings.add("fish measured in " + basin.reach(reach).id()
                                + " hold more than the high estimate there: where none were measured the estimate may be too low"
                                + " as well, and no fish there is answered \"below\""));
        measured.stream()
                .map(MeasuredFish::reach)
                .distinct()
                .filter(reach -> asked.isMethylCarried() && !run.isCarriedDown(reach))
                .forEach(
                        reach -> warnings.add(
                                "fish measured in " + basin.reach(reach).id()
                                        + " tell of that reach alone: the model has no methylmercury there to carry them on by"));
    }

    /** Values for screening: those of trophic level 4, which hold more, and doubts of all reaches within the range. */
    static void values(ReachValues.Builder builder, SteadyResult result, Breaks breaks, FishRun fish) {
        boolean isTooLow = !fish.aboveEstimate().isEmpty();
        for (int r = 0; r < result.input().hydraulics().reaches().size(); r++) {
            Optional<FishEstimate> found =
                    fish.find(r, TrophicLevel.FOUR).filter(f -> f.background().isPresent());
            if (found.isPresent()) {
                builder.fish(Estimate.LAID_DOWN, r, found.get().content().low());
                builder.fish(Estimate.CARRIED_THROUGH, r, found.get().content().high());
                builder.fish(Estimate.BACKGROUND, r, found.get().background().get());
            }
            int reach = r;
            Optional<NotAssessed> doubt = fish.range().lengths(r).keySet().stream()
                    .sorted()
                    .map(breaks::doubt)
                    .flatMap(Optional::stream)
                    .findFirst()
                    .or(() -> found.filter(f -> isTooLow && f.basis() == Basis.MODELLED)
                            .map(f -> NotAssessed.FISH_HOLD_MORE));
            doubt.ifPresent(why -> builder.fishNeverBelow(reach, why));
        }
    }
}
