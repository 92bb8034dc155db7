// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was noted of a processing site, or of a typical shed of a group: whichever numbers are known. Start with {@link #of} and
 * add what there is; {@link SiteBalance} says what it had to assume, and what is missing.
 *
 * @param name the site
 * @param practice how gold and mercury are brought together
 * @param work ore, cycles, gold
 * @param mercury mercury put in and got back
 * @param burning amalgam and how it is burned
 * @param tailings what the ore leaves, and where it goes
 * @param tank leaching of tailings with cyanide, where there is any
 * @param changes practices adopted, in order
 */
public record FieldNotes(
        String name,
        Amalgamation practice,
        Work work,
        Mercury mercury,
        Burning burning,
        Tailings tailings,
        Optional<Tank> tank,
        List<Change> changes) {
    /** Copies the list. */
    public FieldNotes {
        changes = List.copyOf(changes);
    }

    /**
     * Work of one shed.
     *
     * @param orePerCycle dry ore [kg]
     * @param cyclesPerDay cycles on a working day, all drums of the shed together [1/d]
     * @param workingDays working days in a year [d]
     * @param gold gold produced, mean of the year [kg/s]
     * @param sheds how many sheds like this there are [-]
     */
    public record Work(
            OptionalDouble orePerCycle,
            OptionalDouble cyclesPerDay,
            OptionalDouble workingDays,
            Optional<Noted> gold,
            double sheds) {}

    /**
     * Mercury of one shed.
     *
     * @param chargedPerCycle put into the drum [kg]
     * @param squeezedBackPerCycle run out and squeezed back through the cloth [kg]
     * @param bought bought to replace what was lost, mean of the year [kg/s]
     * @param perGold mercury used per gold [-], before what retorts give back
     * @param held what drums hold back more each year, mean of the year [kg/s]
     */
    public record Mercury(
            Optional<Noted> chargedPerCycle,
            Optional<Noted> squeezedBackPerCycle,
            Optional<Noted> bought,
            Optional<Noted> perGold,
            double held) {}

    /**
     * Amalgam and its burning.
     *
     * @param amalgamPerCycle squeezed amalgam [kg]
     * @param mercuryShare mercury's share of the amalgam's mass [-]
     * @param retortShare share of the amalgam that is burned in a retort [-]
     * @param retortRecovery share of the mercury driven off in a retort that it gives back [-]
     * @param retortReturnPerCycle mercury that retorts give back [kg]
     * @param spongeRemainder mercury's share of the sponge gold's mass [-]
     * @param nearby what is told of the mercury that comes down nearby
     */
    public record Burning(
            Optional<Noted> amalgamPerCycle,
            Optional<Noted> mercuryShare,
            OptionalDouble retortShare,
            OptionalDouble retortRecovery,
            Optional<Noted> retortReturnPerCycle,
            OptionalDouble spongeRemainder,
            Nearby nearby) {}

    /**
     * What becomes of mercury in the air near the site. An upper-bound line, off (0) unless stated.
     *
     * @param laidDown share of the mercury to air that comes down nearby [-]
     * @param runoff share of that which runs off to the river each year [-]
     * @param residential whether amalgam is burned where people live
     */
    public record Nearby(double laidDown, double runoff, boolean residential) {}

    /**
     * Tailings of one shed.
     *
     * @param massPerCycle dry tailings that held mercury [kg]; for whole ore the ore where not stated
     * @param content mercury content from samples [kg/kg]
     * @param tableTest a table test
     * @param fate where they go
     * @param forms forms of their mercury; where not known, extremes are run
     * @param storage when what goes to the river goes there
     * @param waterPerCycle slurry water [m3]
     */
    public record Tailings(
            OptionalDouble massPerCycle,
            Optional<Noted> content,
            Optional<TableTest> tableTest,
            Optional<Fate> fate,
            Optional<Forms> forms,
            Storage storage,
            double waterPerCycle) {}

    /**
     * Where tailings go. First a share is reprocessed by sluice or table, which takes mercury out; then all are stored, leached,
     * or given to the river.
     *
     * @param reprocessed share that is reprocessed [-]
     * @param recovery share of their mercury which that gives back [-]
     * @param stored share kept [-]
     * @param leached share leached in tanks [-]
     * @param river share given to the river [-]; the last three sum to 1
     */
    public record Fate(double reprocessed, double recovery, double stored, double leached, double river) {}

    /**
     * Forms of the mercury in tailings.
     *
     * @param droplets share in liquid droplets [-]
     * @param exchangeable share as exchangeable Hg(II) [-]
     * @param grainBound share bound in grains [-]; the three sum to 1
     */
    public record Forms(double droplets, double exchangeable, double grainBound) {}

    /**
     * A leach tank of one shed.
     *
     * @param volume solution let out of it at the end of a cycle [m3]
     * @param cyclesPerYear its cycles in a year [-]
     * @param dissolved mercury in that solution [kg/m3]
     * @param detoxified share of dissolved mercury that treatment throws out of solution [-]
     * @param solutionToRiver share of the solution that goes to the river [-]
     * @param residueToRiver share of the leached tailings that goes to the river [-]
     * @param mercuryRemovedFirst whether mercury is taken out before leaching
     */
    public record Tank(
            double volume,
            double cyclesPerYear,
            Optional<Noted> dissolved,
            double detoxified,
            double solutionToRiver,
            double residueToRiver,
            boolean mercuryRemovedFirst) {}

    /**
     * A practice in force.
     *
     * @param practice the practice
     * @param yearsSince whole years since it began
     */
    public record Change(Practice practice, int yearsSince) {}

    /** Notes that say nothing yet: one shed, no retort, tailings straight to where they go. */
    public static FieldNotes of(String name, Amalgamation practice) {
        return new FieldNotes(
                name,
                practice,
                new Work(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), 1),
                new Mercury(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 0),
                new Burning(
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        new Nearby(0, 0, false)),
                new Tailings(
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        new Storage.Straight(),
                        0),
                Optional.empty(),
                List.of());
    }

    /** The same with other work. */
    public FieldNotes with(Work other) {
        return new FieldNotes(name, practice, other, mercury, burning, tailings, tank, changes);
    }

    /** The same with other mercury. */
    public FieldNotes with(Mercury other) {
        return new FieldNotes(name, practice, work, other, burning, tailings, tank, changes);
    }

    /** The same with other burning. */
    public FieldNotes with(Burning other) {
        return new FieldNotes(name, practice, work, mercury, other, tailings, tank, changes);
    }

    /** The same with other tailings. */
    public FieldNotes with(Tailings other) {
        return new FieldNotes(name, practice, work, mercury, burning, other, tank, changes);
    }

    /** The same with a leach tank. */
    public FieldNotes with(Tank other) {
        return new FieldNotes(name, practice, work, mercury, burning, tailings, Optional.of(other), changes);
    }

    /** The same with one more practice, after the others. */
    public FieldNotes with(Change change) {
        List<Change> more = new ArrayList<>(changes);
        more.add(change);
        return withChanges(more);
    }

    private FieldNotes withChanges(List<Change> others) {
        return new FieldNotes(name, practice, work, mercury, burning, tailings, tank, others);
    }

    /** The same as they stand in a year: practices that begin later are left out. */
    public FieldNotes in(int year) {
        return withChanges(changes.stream()
                .filter(c -> c.practice().startYear() <= year)
                .map(c -> new Change(c.practice(), year - c.practice().startYear()))
                .toList());
    }

    /** Cycles of one shed in a year [-], where known. */
    OptionalDouble cyclesPerYear() {
        return work.cyclesPerDay().isPresent() && work.workingDays().isPresent()
                ? OptionalDouble.of(
                        work.cyclesPerDay().getAsDouble() * work.workingDays().getAsDouble())
                : OptionalDouble.empty();
    }

    /** Dry tailings of one cycle [kg], where known. */
    OptionalDouble tailingsPerCycle() {
        return tailings.massPerCycle().isPresent() || practice != Amalgamation.WHOLE_ORE
                ? tailings.massPerCycle()
                : work.orePerCycle();
    }

    /** Mercury content of tailings by samples, else by table test with its remainder assayed. */
    Optional<Noted> tailingsContent() {
        return tailings.content()
                .or(() -> tailings.tableTest().filter(t -> !t.isLowerBound()).map(TableTest::content));
    }
}
