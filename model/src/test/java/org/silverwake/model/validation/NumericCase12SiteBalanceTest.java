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
import org.junit.jupiter.api.Test;
import org.silverwake.model.release.Noted;
import org.silverwake.model.release.Reconciliation;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;

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
}
