// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class GuidelinesCommandTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return new CommandLine(new GuidelinesCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    @Test
    void listsAllButSuperseded() {
        assertThat(run()).isZero();
        assertThat(out.toString())
                .contains("WHO-DW-iHg: 6 ug/L, whole inorganic Hg in drinking water")
                .contains("Ghana, surface water: no national value")
                .doesNotContain("WHO-DW-tHg-1996")
                .endsWith(", 4 without a national value" + System.lineSeparator());
    }

    @Test
    void oneJurisdictionAndMedium() {
        assertThat(run("--jurisdiction", "peru", "--medium", "Surface Water")).isZero();
        assertThat(out.toString())
                .contains("PE-ECA-1A1: 1 ug/L", "PE-ECA-4E2 (not checked in print)", "MINAM", "checked: from memory")
                .doesNotContain("PE-LMP-any", "CCME");
    }

    @Test
    void countryWithoutAValueIsSaidSo() {
        assertThat(run("--jurisdiction", "Mali")).isZero();
        assertThat(out.toString())
                .contains("no national value (no value found)", "0 values, 1 without a national value");
    }

    @Test
    void supersededById() {
        assertThat(run("--id", "WHO-DW-tHg-1996", "--id", "WHO-DW-iHg")).isZero();
        assertThat(out.toString()).contains("WHO-DW-tHg-1996 (superseded): 1 ug/L", "2 values");
    }

    @Test
    void limitsThatNothingIsComparedWith() {
        assertThat(run("--medium", "air")).isZero();
        assertThat(out.toString()).contains("USEPA-RfC-Hg0: 0.3 ug/m3", "nothing the program computes is compared");
        assertThat(run("--medium", "intake", "--id", "X")).isEqualTo(CommandLine.ExitCode.USAGE);
    }

    @Test
    void unknownNamesAreErrorsOfUsage() {
        assertThat(run("--id", "WHO-DW-Hg")).isEqualTo(CommandLine.ExitCode.USAGE);
        assertThat(err.toString()).contains("guideline WHO-DW-Hg is not known (did you mean");
        assertThat(run("--jurisdiction", "Perou")).isEqualTo(CommandLine.ExitCode.USAGE);
        assertThat(err.toString()).contains("did you mean Peru?");
        assertThat(run("--medium", "beer")).isEqualTo(CommandLine.ExitCode.USAGE);
        assertThat(err.toString()).contains("--medium: beer is not known; give one of surface water");
    }
}
