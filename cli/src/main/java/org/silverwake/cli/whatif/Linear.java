// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.transport.MercuryPart;
import org.silverwake.model.transport.MercuryParts;

/**
 * A run as a sum of what no lever moves and what each contributor adds, for every measure that guidelines are values of.
 */
public final class Linear {
    private final Outcome outcome;
    private final ReachUnits units;
    private final List<Contributor> contributors;
    private final List<Contribution> contributions;
    private final Contribution background;
    private final List<BitSet> reached;
    private final List<Measured> measures;
    private final List<List<ValueSet>> sets;
    private final Optional<FishRanges> fish;

    private Linear(Outcome outcome, ReachUnits units, List<Contributor> contributors) {
        this.outcome = outcome;
        this.units = units;
        this.contributors = contributors;
        this.measures = Measured.of(outcome);
        MercuryParts all = MercuryParts.of(outcome.result());
        this.background = Contribution.of(all.background(), outcome.result());
        this.reached = contributors.stream().map(c -> all.reached(c.set())).toList();
        ValueSets build =
                new ValueSets(outcome, units, reached.stream().map(units::of).toList(), measures);
        // a part is let go as soon as it is read: all together would be many times the run
        List<Found> found = IntStream.range(0, contributors.size())
                .parallel()
                .mapToObj(k -> found(build, all.of(contributors.get(k).set()), k))
                .toList();
        this.contributions = found.stream().map(Found::contribution).toList();
        this.sets =
                build.sets(all.background(), found.stream().map(Found::values).toList());
        this.fish = FishRanges.of(this);
    }

    private record Found(Contribution contribution, List<float[][]> values) {}

    private Found found(ValueSets build, MercuryPart part, int contributor) {
        return new Found(Contribution.of(part, outcome.result()), build.responses(contributor, part));
    }

    /** Takes a run apart. */
    public static Linear of(Outcome outcome, ReachUnits units, List<Contributor> contributors) {
        return new Linear(outcome, units, List.copyOf(contributors));
    }

    /** The run. */
    public Outcome outcome() {
        return outcome;
    }

    /** What is shown as a reach. */
    public ReachUnits units() {
        return units;
    }

    /** What sends mercury, in the order of the responses. */
    public List<Contributor> contributors() {
        return contributors;
    }

    /** Flows and marks of a contributor. */
    public Contribution contribution(int contributor) {
        return contributions.get(contributor);
    }

    /** Flows of background. */
    public Contribution background() {
        return background;
    }

    /** Reaches that a contributor's mercury gets to. */
    public BitSet reached(int contributor) {
        return (BitSet) reached.get(contributor).clone();
    }

    /** Quantities that guidelines are values of. */
    public List<Measured> measures() {
        return measures;
    }

    /** Whether levers move a measure. */
    public boolean isMoved(Measured measured) {
        return measured.fixed().isEmpty() && !contributors.isEmpty();
    }

    /** How fish follow the water; empty where they do not. */
    public Optional<FishRanges> fish() {
        return contributors.isEmpty() ? Optional.empty() : fish;
    }

    /** Whether a measure follows the levers, fish by way of the water. */
    public boolean follows(Measured measured) {
        return isMoved(measured) || measured.kind() == Measured.Kind.FISH && fish().isPresent();
    }

    /** Value sets of a measure. */
    public List<ValueSet> sets(int measure) {
        return sets.get(measure);
    }
}
