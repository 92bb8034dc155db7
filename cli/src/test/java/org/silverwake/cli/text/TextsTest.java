// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class TextsTest {
    private static final List<String> LANGUAGES = Texts.LANGUAGES;

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void everyLanguageHasEveryTextAndNoOther(String language) {
        assertThat(Texts.of(language).keys()).isEqualTo(Texts.of("en").keys());
    }

    @ParameterizedTest
    @FieldSource("LANGUAGES")
    void everyTextFillsInWhatTheEnglishOneDoes(String language) {
        Texts english = Texts.of("en");
        Texts other = Texts.of(language);
        Object[] parts = {"\u00ab0\u00bb", "\u00ab1\u00bb", "\u00ab2\u00bb", "\u00ab3\u00bb", "\u00ab4\u00bb"};
        for (String key : english.keys()) {
            String there = other.text(key, parts);
            assertThat(there).as(language + " " + key).isNotBlank().doesNotContain("{", "}", "''");
            for (Object part : parts) {
                assertThat(there.contains((String) part))
                        .as(language + " " + key + " " + part)
                        .isEqualTo(english.text(key, parts).contains((String) part));
            }
        }
    }

    @Test
    void numbersAndDaysAreWrittenAsTheLanguageDoes() {
        // Unicode CLDR as in the JDK: comma in Spanish, point in English.
        assertThat(Texts.of("en").number(1234.5, 5)).isEqualTo("1,234.5");
        assertThat(Texts.of("id").number(1234.5, 5)).isEqualTo("1.234,5");
        assertThat(Texts.of("es").number(0.026, 3)).isEqualTo("0,026");
        assertThat(Texts.of("en").date(LocalDate.of(2026, 11, 26))).isEqualTo("November 26, 2026");
        assertThat(Texts.of("es").date(LocalDate.of(2026, 11, 26))).isEqualTo("26 de noviembre de 2026");
    }

    @Test
    void anUnknownLanguageOrTextIsRefused() {
        assertThatThrownBy(() -> Texts.of("xx")).hasMessageContaining("give one of en, es");
        assertThatThrownBy(() -> Texts.of("en").text("nothing")).hasMessageContaining("nothing");
    }
}
