// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.model.quantity.Dimension;

/** Columns of the table of field notes. Numbers are of one shed. */
final class FieldNotesKeys {
    static final List<String> PRACTICES = List.of("whole-ore", "concentrate", "no-mercury");
    static final List<String> STORAGES = List.of("at-once", "heap", "pond");
    static final List<String> FLAGS = List.of("yes", "no");

    static final Key WORK_SHARE = share(
            "work_share_" + TableList.STATE, "share of the year's work in each flow state; by its length if blank");
    static final Key WASHED_SHARE = share(
            "washed_share_" + TableList.STATE,
            "of a heap: share of what is laid up that goes in each flow state, 0 in those that fill it; if blank the first state fills it and all goes in the others by their length (common practice, no source)");

    static final List<Key> ALL = List.of(
            Key.word("site", Kind.TEXT, "", "required, each once: a site of the table of sites that gives no release"),
            Key.choice(
                    "practice",
                    PRACTICES,
                    "",
                    "of a working site, required: how gold and mercury are brought together"),
            number("sheds", Dimension.DIMENSIONLESS, "-", 1e5, "number of sheds like this; 1 if blank"),
            number("ore_per_cycle", Dimension.MASS, "kg", 1e6, "dry ore of a cycle"),
            number(
                    "cycles_per_day",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1e4,
                    "cycles on a working day, all drums of the shed"),
            number("working_days", Dimension.DIMENSIONLESS, "-", 366, "working days of a year"),
            number("gold", Dimension.MASS_FLOW, "kg/yr", 1e5, "gold produced"),
            number("mercury_per_cycle", Dimension.MASS, "g", 1e6, "mercury put in for a cycle"),
            number("squeezed_back_per_cycle", Dimension.MASS, "g", 1e6, "mercury squeezed back after it"),
            number("mercury_bought", Dimension.MASS_FLOW, "kg/yr", 1e6, "mercury bought"),
            number(
                    "mercury_per_gold",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1e4,
                    "mercury used per gold produced, before retorts"),
            number(
                    "held_in_drums",
                    Dimension.MASS_FLOW,
                    "kg/yr",
                    1e5,
                    "mercury that drums hold back more each year; none if blank"),
            number("amalgam_per_cycle", Dimension.MASS, "g", 1e6, "squeezed amalgam of a cycle"),
            number(
                    "amalgam_mercury_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the amalgam that is mercury; 0.45 (0.40 to 0.75) if blank"),
            number(
                    "retort_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the amalgam that is burned in a retort; none if blank"),
            number(
                    "retort_recovery",
                    Dimension.DIMENSIONLESS,
                    "-",
                    10,
                    "share of the mercury driven off that the retort gives back"),
            number("retort_return_per_cycle", Dimension.MASS, "g", 1e6, "mercury that the retort gave back"),
            number(
                    "sponge_mercury_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the sponge gold that is still mercury"),
            number(
                    "laid_down_nearby",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the mercury to air that comes down nearby; off if blank"),
            number(
                    "runoff_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of that which runs off to the river in a year, as an upper bound; off if blank"),
            Key.choice("burned_among_homes", FLAGS, "no", "whether amalgam is burned where people live"),
            number(
                    "tailings_per_cycle",
                    Dimension.MASS,
                    "kg",
                    1e6,
                    "dry tailings that held mercury; the ore, of whole ore, if blank"),
            number(
                    "tailings_content",
                    Dimension.MASS_CONTENT,
                    "mg/kg",
                    1e6,
                    "mercury content of tailings, heap or ground, from samples"),
            number("table_test_mass", Dimension.MASS, "kg", 1e6, "tailings that went over a test table or sluice"),
            number("table_test_mercury", Dimension.MASS, "g", 1e6, "mercury that they gave"),
            number(
                    "table_test_remainder",
                    Dimension.MASS_CONTENT,
                    "mg/kg",
                    1e6,
                    "mercury content of what was left, assayed; without it the test is a lower bound"),
            number(
                    "reprocessed_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of tailings that go over a sluice or table first"),
            number(
                    "reprocessed_recovery",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of their mercury that this takes out"),
            number("stored_share", Dimension.DIMENSIONLESS, "-", 1, "share of tailings kept; the three sum to 1"),
            number("leached_share", Dimension.DIMENSIONLESS, "-", 1, "share of tailings leached in tanks"),
            number("river_share", Dimension.DIMENSIONLESS, "-", 1, "share of tailings given to the river"),
            number(
                    "droplet_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the tailings' mercury in droplets; all forms blank if not known"),
            number("exchangeable_share", Dimension.DIMENSIONLESS, "-", 1, "share of it that is exchangeable Hg(II)"),
            number(
                    "grain_bound_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of it locked in grains; the three sum to 1"),
            Key.choice("storage", STORAGES, "at-once", "when what the river gets goes there"),
            number(
                    "pond_escaping",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "of a pond: share of a year's mass that leaves it"),
            number(
                    "slurry_water_per_cycle",
                    Dimension.VOLUME,
                    "m3",
                    1e6,
                    "water that goes with the slurry; none if blank"),
            number(
                    "tank_volume",
                    Dimension.VOLUME,
                    "m3",
                    1e6,
                    "solution let out of the leach tank at the end of a cycle"),
            number("tank_cycles", Dimension.DIMENSIONLESS, "-", 1e5, "its cycles in a year"),
            number("tank_mercury", Dimension.CONCENTRATION, "mg/L", 1e4, "mercury dissolved in that solution"),
            number(
                    "detoxified_share",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of it that treatment takes out; none if blank"),
            number(
                    "solution_to_river",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of the solution that goes to the river; all if blank"),
            number(
                    "residue_to_river",
                    Dimension.DIMENSIONLESS,
                    "-",
                    1,
                    "share of leached tailings that goes to the river; all if blank"),
            Key.choice("mercury_removed_first", FLAGS, "no", "whether mercury is taken out before leaching"),
            number("heap_mass", Dimension.MASS, "t", 1e9, "of an old heap, in place of practice: its dry tailings"),
            number("heap_eroding", Dimension.RATE, "1/yr", 1, "share of it that the river takes in a year"),
            number("disturbed_area", Dimension.AREA, "ha", 1e6, "of ground laid bare, in place of practice: its area"),
            number("erosion", Dimension.AREA_FLUX, "t/ha/yr", 1e5, "what it loses"),
            number(
                    "relative_sd",
                    Dimension.DIMENSIONLESS,
                    "-",
                    10,
                    "standard deviation over the number of what is weighed or assayed; 0.1 and 0.3 if blank (common practice, no source)"),
            WORK_SHARE,
            WASHED_SHARE,
            Key.word("note", Kind.TEXT, "", "free"));

    private FieldNotesKeys() {}

    static Key require(String column) {
        return ALL.stream().filter(key -> key.path().equals(column)).findFirst().orElseThrow();
    }

    private static Key number(String column, Dimension dimension, String unit, double high, String meaning) {
        return Key.quantity(column, dimension, unit, 0, high, "", meaning);
    }

    private static Key share(String column, String meaning) {
        return Key.quantity(column, Dimension.DIMENSIONLESS, "-", 0, 1, "", meaning);
    }
}
