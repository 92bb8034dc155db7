// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.Amalgamation;
import org.silverwake.model.release.FieldNotes;
import org.silverwake.model.release.FlowYear;
import org.silverwake.model.release.Noted;
import org.silverwake.model.release.Reconciliation;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.SitePath;
import org.silverwake.model.release.YearBalance;

/** Numeric case 12: eleven streams of a site's mercury, one of them unmeasured, drums that hold back 2 kg/yr. */
@Reference(key = "numericcases", locator = "12_site_balance")
class NumericCase12SiteBalanceTest {
    /** ROUNDING: the case states a relative accuracy of 1e-11. */
    private static final double STATED = 1e-11;

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked")
    private static List<String> names(Object value) {
        return (List<String>) value;
    }

    private static Reconciliation reconciled(JsonCase given) {
        Map<String, Object> inputs = map(given.values().get("inputs"));
        List<Stream> streams = new ArrayList<>();
        for (Object each : (List<?>) inputs.get("streams")) {
            Map<String, Object> row = map(each);
            streams.add(new Stream(
                    (String) row.get("name"),
                    Optional.ofNullable((Double) row.get("measured_kg_per_yr"))
                            .map(value -> Noted.of(value, JsonCase.number(row, "sd_kg_per_yr")))));
        }
        List<Node> nodes = new ArrayList<>();
        for (Object each : (List<?>) inputs.get("units")) {
            Map<String, Object> row = map(each);
            nodes.add(Node.of(
                    (String) row.get("name"),
                    names(row.get("in")),
                    names(row.get("out")),
                    JsonCase.number(row, "store_kg_per_yr")));
        }
        return Reconciliation.of(streams, nodes);
    }

    @Test
    void allStreams() throws IOException {
        JsonCase given = JsonCase.read("12_site_balance.json");
        Map<String, Object> expected = map(given.values().get("expected"));
        Reconciliation found = reconciled(given);
        Map<String, Object> values = map(expected.get("reconciled_kg_per_yr"));
        assertThat(values).hasSize(11);
        values.forEach((name, value) ->
                assertThat(found.value(name).value()).isCloseTo((Double) value, within(STATED * (Double) value)));
        map(expected.get("sd_kg_per_yr"))
                .forEach((name, sd) ->
                        assertThat(found.value(name).sd()).isCloseTo((Double) sd, within(STATED * (Double) sd)));
        map(expected.get("adjustment_over_sd"))
                .forEach((name, adjustment) -> assertThat(
                                found.value(name).adjustmentOverSd().orElseThrow())
                        .isCloseTo((Double) adjustment, within(STATED)));
        assertThat(found.objective()).isCloseTo(JsonCase.number(expected, "objective"), within(STATED));
        assertThat(found.pValue()).isCloseTo(JsonCase.number(expected, "p_value"), within(STATED));
        assertThat((double) found.degreesOfFreedom())
                .isCloseTo(JsonCase.number(expected, "degrees_of_freedom"), within(STATED));
        assertThat(found.improbable()).isEmpty();
    }

    private static FieldNotes notes(FieldNotes.Work work, FieldNotes.Burning burning) {
        FieldNotes blank = FieldNotes.of("site", Amalgamation.CONCENTRATE);
        FieldNotes.Tailings none = blank.tailings();
        return blank.with(work)
                .with(burning)
                .with(new FieldNotes.Tailings(
                        none.massPerCycle(),
                        none.content(),
                        none.tableTest(),
                        Optional.of(new FieldNotes.Fate(0, 0, 0, 0, 1)),
                        none.forms(),
                        none.storage(),
                        0));
    }

    private static FieldNotes.Burning burning(Optional<Noted> amalgam, Optional<Noted> share, double retort) {
        return new FieldNotes.Burning(
                amalgam,
                share,
                OptionalDouble.of(retort),
                OptionalDouble.of(0.95),
                Optional.empty(),
                OptionalDouble.of(0),
                new FieldNotes.Nearby(0, 0, false));
    }

    private static double kilograms(double rate) {
        return rate * Quantity.SECONDS_PER_YEAR;
    }

    /** 10 kg of amalgam in the year, 40 % mercury, all in a retort that gives back 95 %. */
    @Test
    void burning() throws IOException {
        Map<String, Object> expected =
                map(map(JsonCase.read("12_site_balance.json").values().get("expected"))
                        .get("burn_10kg_40pc_95pc_kg"));
        FieldNotes.Work work = new FieldNotes.Work(
                OptionalDouble.empty(), OptionalDouble.of(1), OptionalDouble.of(1), Optional.empty(), 1);
        YearBalance year = SiteBalance.of(
                        notes(work, burning(Optional.of(Noted.of(10)), Optional.of(Noted.of(0.4)), 1)),
                        FlowYear.even(List.of(1.0)))
                .middle();
        assertThat(kilograms(year.rate(SitePath.RETORT_RECOVERED) + year.air() + year.rate(SitePath.PRODUCT)))
                .isCloseTo(JsonCase.number(expected, "mercury_kg"), within(STATED));
        assertThat(kilograms(year.rate(SitePath.RETORT_RECOVERED)))
                .isCloseTo(JsonCase.number(expected, "recovered_kg"), within(STATED));
        assertThat(kilograms(year.air())).isCloseTo(JsonCase.number(expected, "to_air_kg"), within(STATED));
        assertThat(kilograms(year.rate(SitePath.PRODUCT)))
                .isCloseTo(JsonCase.number(expected, "kept_in_gold_kg"), within(STATED));
    }

    /** 1 kg of gold by concentrate amalgamation, burned in the open, at the middle of what is published. */
    @Test
    void split() throws IOException {
        Map<String, Object> expected =
                map(map(JsonCase.read("12_site_balance.json").values().get("expected"))
                        .get("split_1kg_gold_kg"));
        FieldNotes.Work work = new FieldNotes.Work(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.of(Noted.of(1 / Quantity.SECONDS_PER_YEAR)),
                1);
        YearBalance year = SiteBalance.of(
                        notes(work, burning(Optional.empty(), Optional.empty(), 0)), FlowYear.even(List.of(1.0)))
                .middle();
        assertThat(kilograms(year.used())).isCloseTo(JsonCase.number(expected, "lost_kg"), within(STATED));
        assertThat(kilograms(year.air())).isCloseTo(JsonCase.number(expected, "air_kg"), within(STATED));
        assertThat(kilograms(year.river())).isCloseTo(JsonCase.number(expected, "land_and_water_kg"), within(STATED));
    }
}
