// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.Outputs.ShownForm;
import org.silverwake.cli.scenario.Outputs.ShownMedium;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;

/** Keys and columns of further forms: what is read, and one clear line for what is wrong. */
class FormsSectionTest {
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mercury: {forms: [cyanide]} | mercury.forms[1]: \"cyanide\" is not known; give elemental or methyl or complex or droplets",
                "mercury: {forms: [elemental]} | mercury.oxidation-rate: is missing; elemental is carried",
                "mercury: {forms: [droplets]} | mercury.oxidation-rate: is missing; elemental is carried",
                "mercury: {forms: [methyl]} | mercury.demethylation-rate: is missing; methyl is carried",
                "mercury: {forms: [elemental], oxidation-rate: {by-state: {dry: 1 1/d}}} | mercury.oxidation-rate: has no value for every flow state",
                "mercury: {forms: [complex], complex-breakdown-rate: 200 1/d} | mercury.complex-breakdown-rate: 200 1/d is not allowed; give 0 to 100 1/d",
                "mercury: {complex-breakdown-rate: 0.1} | mercury.complex-breakdown-rate: 0.1 has no unit",
                "mercury: {droplets: {s: {share: 1}}} | mercury.droplets.s.diameter: is missing; give 0.1 to 2000 um",
                "mercury: {droplets: {s: {diameter: 3 um}}} | mercury.droplets.s.share: is missing; give 0 to 1",
                "mercury: {droplets: {s: {diameter: 3 um, share: 0.4}, t: {diameter: 9 um, share: 0.4}}} | mercury.droplets: share sums to 0.8; give shares that sum to 1",
                "mercury: {droplets: {s: {diameter: 3 mm, share: 1}}} | mercury.droplets.s.diameter: 3 mm is not allowed; give 0.1 to 2000 um",
                "mercury: {droplets: {}} | mercury.droplets: holds no class; give at least one with diameter and share",
                "mercury: {droplet-passivation: 2} | mercury.droplet-passivation: 2 is not allowed; give 0.01 to 1",
                "outputs: {forms: [MeHg]} | outputs.forms[1]: \"MeHg\" is not known; give divalent or grain-bound or droplets or complex or elemental or methyl",
                "outputs: {forms: [methyl], form-media: [water]} | outputs.form-media[1]: \"water\" is not known; give whole-water or filtered-water or suspended-solids or bed-sediment",
            })
    void oneClearLine(String yaml, String message) {
        assertThat(new ScenarioFolder(folder).plus(yaml).problems())
                .anySatisfy(problem ->
                        assertThat(problem).startsWith("scenario.yaml:").contains(" " + message));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "release,share_complex,share_droplets | 1 kg/yr,0.7,0.6 | share_droplets, share_complex, share_elemental, share_methyl: sum to 1.3; give shares of the site's mercury that sum to at most 1",
                "release,share_complex | 1 kg/yr,1.2 | share_complex: 1.2 is not allowed; give 0 to 1",
                "release,share_methyl | 1 kg/yr,-0.1 | share_methyl: -0.1 is not allowed; give 0 to 1",
                "release,share_elemental | 1 kg/yr,much | share_elemental: \"much\" is not a",
                "release,share_cyanide | 1 kg/yr,0.5 | share_cyanide: is not a column",
            })
    void columnsOfSites(String header, String row, String message) {
        assertThat(new ScenarioFolder(folder).site(header, row).problems())
                .anySatisfy(
                        problem -> assertThat(problem).startsWith("sites.csv").contains(message));
    }

    /** What a site releases is carried, and droplets dissolve into Hg(0), whose fate must then be known. */
    @Test
    void whatASiteReleasesIsCarried() {
        ScenarioInput input = new ScenarioFolder(folder)
                .site("release,share_droplets", "1 kg/yr,0.5")
                .plus("mercury: {oxidation-rate: 1 1/d}")
                .read();
        assertThat(input.mercury().forms()).containsExactly(FurtherForm.ELEMENTAL, FurtherForm.DROPLETS);
        assertThat(new ScenarioFolder(folder)
                        .site("release,share_droplets", "1 kg/yr,0.5")
                        .problems())
                .anySatisfy(problem -> assertThat(problem).contains("mercury.oxidation-rate: is missing"));
    }

    @Test
    void picturesOfForms() {
        ScenarioInput input = new ScenarioFolder(folder)
                .plus("mercury: {forms: [complex]}\noutputs: {forms: [complex, divalent]}")
                .read();
        assertThat(input.outputs().forms()).containsExactly(ShownForm.DIVALENT, ShownForm.COMPLEX);
        assertThat(input.outputs().formMedia()).isEqualTo(Set.of(ShownMedium.values()));
        assertThat(input.warnings()).noneMatch(w -> w.contains("outputs"));
        assertThat(new ScenarioFolder(folder)
                        .plus("outputs: {form-media: [whole-water]}")
                        .read()
                        .warnings())
                .anySatisfy(w -> assertThat(w)
                        .contains("outputs.form-media: draws nothing without outputs.forms, the forms to be drawn"));
    }
}
