// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;

/**
 * Checks after the sweep, on three reaches of 10 m3/s. The solubility of Hg(0) is 60 ug/L (IARC 1994), so a tenth of it is
 * 6 ug/L, 6e-5 kg/s in 10 m3/s. Ranges of the formulas as Chin (2006) has them: O'Connor-Dobbins 0.3 to 9 m and 0.15 to
 * 0.5 m/s, Owens 0.1 to 3 m and 0.03 to 1.5 m/s.
 */
class FormChecksTest {
    private static TestRiver river(double elemental, boolean droplets, double passivation, double measured) {
        TestRiver river = TestRiver.chain(3, 1000, 10);
        river.sediment = 0.02;
        river.cohesive("fine", 0, 0.1, 100, 1);
        List<Form> forms = new ArrayList<>(List.of(new Form(
                Form.ELEMENTAL, true, new Partitioned(List.of(Double.NEGATIVE_INFINITY), List.of(0.0)), true)));
        if (droplets) {
            forms.add(new Form("droplets 20 um", false, Droplets.of(2e-5), false));
        }
        river.chemistry = new Chemistry(
                forms,
                List.of(),
                List.of(20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(5e-3),
                ByStateAndKind.same(measured),
                passivation);
        river.site("r1", elemental, 1);
        river.furtherShares.put("site 1", Map.of(Form.ELEMENTAL, 1.0));
        return river;
    }

    private static FormChecks checks(TestRiver river) {
        return new FormChecks(river.run());
    }

    @Test
    void aTenthOfTheSolubility() {
        TestRiver above = river(6.01e-5, true, 1, 0);
        int r1 = above.index("r1");
        int r2 = above.index("r2");
        assertThat(checks(above).nearlySaturated(0).stream()).containsExactlyInAnyOrder(r1, r2);
        assertThat(checks(river(5.99e-5, true, 1, 0)).nearlySaturated(0).isEmpty())
                .isTrue();
        // escaping to the air at 1 m/h it falls below within the reach of the site, and is above at that reach's head
        // alone
        assertThat(checks(river(6.01e-5, true, 1, 1 / 3600.0)).nearlySaturated(0).stream())
                .containsExactly(r1);
    }

    @Test
    void saturationMattersOnlyWhereDropletsDissolve() {
        assertThat(checks(river(1e-4, false, 1, 0)).nearlySaturated(0).isEmpty())
                .isTrue();
        assertThat(checks(river(1e-4, true, 0, 0)).nearlySaturated(0).isEmpty()).isTrue();
        assertThat(checks(river(1e-4, true, 0.01, 0)).nearlySaturated(0).isEmpty())
                .isFalse();
    }

    @Test
    void formulasBeyondTheirRange() {
        TestRiver river = river(1e-6, false, 1, Double.NaN);
        river.depth.set(1, 12.0);
        river.velocity.set(2, 0.05);
        FormChecks checks = checks(river);
        assertThat(checks.heldDepth(0).stream()).containsExactly(river.index("r1"));
        assertThat(checks.strangeVelocity(0).stream()).containsExactly(river.index("r2"));
        assertThat(checks.apply()).isTrue();
    }

    @Test
    void shallowWaterIsOwens() {
        TestRiver river = river(1e-6, false, 1, Double.NaN);
        river.depth.replaceAll(depth -> 0.09);
        river.velocity.replaceAll(velocity -> 1.6);
        FormChecks checks = checks(river);
        int[] withMercury = {river.index("r1"), river.index("r2")}; // none comes to r0
        assertThat(checks.heldDepth(0).stream().toArray()).containsExactlyInAnyOrder(withMercury);
        assertThat(checks.strangeVelocity(0).stream().toArray()).containsExactlyInAnyOrder(withMercury);
    }

    @Test
    void aMeasuredVelocityNeedsNoFormula() {
        TestRiver river = river(1e-6, false, 1, 1e-5);
        river.depth.set(1, 12.0);
        assertThat(checks(river).heldDepth(0).isEmpty()).isTrue();
        assertThat(checks(river).strangeVelocity(0).isEmpty()).isTrue();
    }

    @Test
    void withoutHgZeroThereIsNothingToCheck() {
        TestRiver river = TestRiver.chain(1, 1000, 10);
        river.depth.set(0, 12.0);
        river.cohesive("fine", 0, 0.1, 100, 1).site("r0", 1e-3, 1);
        FormChecks checks = checks(river);
        assertThat(checks.apply()).isFalse();
        assertThat(checks.heldDepth(0).isEmpty()).isTrue();
        assertThat(checks.nearlySaturated(0).isEmpty()).isTrue();
    }
}
