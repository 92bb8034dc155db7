// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WorkbookWordsTest {
    /** Longest name of a sheet that spreadsheet programs take (common practice, no source). */
    private static final int LONGEST_SHEET_NAME = 31;

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everySheetHasNameAndPurpose(String language) throws IOException {
        Properties words = load(language);
        for (SheetPlan plan : WorkbookPlan.sheets()) {
            assertThat(words.getProperty("sheet." + plan.id()))
                    .as("name of sheet %s", plan.id())
                    .isNotBlank()
                    .hasSizeLessThanOrEqualTo(LONGEST_SHEET_NAME)
                    .doesNotContainPattern("[:\\\\/?*\\[\\]'!]");
            assertThat(words.getProperty("about." + plan.id()))
                    .as("purpose of %s", plan.id())
                    .isNotBlank();
        }
    }

    /** Headings of states go into formulas, which the library writes without escaping. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void headingsHoldNothingThatBreaksAFormula(String language) throws IOException {
        load(language).forEach((word, text) -> {
            if (word.toString().startsWith("column.") || word.toString().startsWith("heading.")) {
                assertThat(text.toString()).doesNotContainPattern("[\"&<>]");
            }
        });
    }

    @Test
    void spanishHasNoWordThatEnglishLacks() throws IOException {
        assertThat(load("en").keySet())
                .containsAll(load("es").keySet().stream()
                        .filter(w -> !w.toString().matches("(column|fallback|meaning)\\..*"))
                        .toList());
        assertThat(load("es").getProperty("sheet.title")).contains("borrador", "sin revisar");
    }

    @Test
    void otherLanguagesSayWhichThereAre() {
        assertThatThrownBy(() -> WorkbookWords.of("fr"))
                .hasMessage("the workbook has no words in \"fr\" yet; give en or es");
    }

    private static Properties load(String language) throws IOException {
        Properties words = new Properties();
        try (Reader reader = new InputStreamReader(
                WorkbookWords.class.getResourceAsStream("words_" + language + ".properties"), StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }
}
