// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;

/**
 * Fails when docs/reference/scenario.md is stale. Write it anew by
 * {@code mvn -pl cli -am test -Dtest=ReferencePageTest -Dsurefire.failIfNoSpecifiedTests=false -Dsilverwake.rewrite=true}.
 */
class ReferencePageTest {
    private static final Path PAGE = Path.of("..", "docs", "reference", "scenario.md");

    @Test
    void pageIsWhatTheReaderUses() throws IOException {
        String text = ReferencePage.text();
        if (Boolean.getBoolean("silverwake.rewrite")) {
            Files.createDirectories(PAGE.getParent());
            Files.writeString(PAGE, text);
        }
        assertThat(Files.readString(PAGE).replace("\r\n", "\n"))
                .as("stale page; rewrite it with -Dsilverwake.rewrite=true")
                .isEqualTo(text);
    }

    @Test
    void everySettingAndColumnIsThere() {
        String text = ReferencePage.text();
        for (Setting setting : SettingList.all()) {
            assertThat(text).contains("| `" + setting.path() + "` |").contains(setting.source());
        }
        assertThat(text).contains("| `headwater-discharge` | m3/s, L/s").contains("`year_share_STATE`");
    }
}
