// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.quantity.DecimalMark;

class DegreeTextTest {
    /** ROUNDING: sums and quotients of doubles [degrees]. */
    private static final double ROUNDING = 1e-12;

    /** PRINTED: 14 digits of the expected value [degrees]. */
    private static final double PRINTED = 1e-11;

    /** 12 degrees 34 minutes 56.7 seconds = 12 + 34/60 + 56.7/3600. */
    private static final double SOUTH = -12.582416666666667;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "12\u00b034'56.7\"S",
                "12\u00b034'56,7\"S",
                "12\u00b0 34' 56.7\" S",
                "S 12\u00b034'56.7\"",
                "S12\u00b034\u203256.7\u2033",
                "12\u00ba34\u201956.7\u201dS",
                "12\u00b034\u00b456.7\u00b4\u00b4 S",
                "12\u00b0\u00a034'\u00a056.7\"\u00a0S",
                "-12\u00b034'56.7\"",
                "\u221212\u00b034'56.7\"",
                "12 34 56.7 S",
                "12 34 56.7 s",
                "-12 34 56.7",
                "12:34:56.7 S",
                "-12:34:56.7",
                "12-34-56.7S",
                "12d34m56.7sS",
                "12d34m56.7s S",
                "12d 34m 56.7s S",
                "12d34m56.7S",
                "12deg 34min 56.7sec South",
                "12 graus 34 min 56,7 seg Sul",
                "12\u00b034'56.7\" sur",
                "12\u00b034.945'S",
                "S12 34.945",
                "S 12\u00b0 34,945'",
                "12\u00b034.945' S.",
                "-12.582416666666667",
                "-12,582416666666667",
                "12.582416666666667\u00b0 S",
                "12,582416666666667\u00b0S",
                "-12.582416666666667 deg",
                "-12.582416666666667\u00b0 S",
            })
    void latitudesAreReadInTheUsualSpellings(String text) {
        assertThat(DegreeText.read(text, false, DecimalMark.POINT)).isCloseTo(SOUTH, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "56\u00b030'W | -56.5",
                "56\u00b030'O | -56.5",
                "56\u00b030' oeste | -56.5",
                "56.5 Ouest | -56.5",
                "O 56\u00b030'00\" | -56.5",
                "56\u00b030'E | 56.5",
                "56\u00b030'L | 56.5",
                "56\u00b030' leste | 56.5",
                "56d30m0s | 56.5",
                "56d30m0s W | -56.5",
                "0\u00b030'W | -0.5",
                "-0\u00b030' | -0.5",
                "-179.99 | -179.99",
                "1.0E-4 | 0.0001",
                "4,75 | 4.75",
            })
    void longitudesTooWithEastAndWestInSeveralLanguages(String text, double degrees) {
        assertThat(DegreeText.read(text, true, DecimalMark.POINT)).isCloseTo(degrees, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "4,30 | 4.3",
                "-4,3 | -4.3",
                "-4,3012 | -4.3012",
                "-4.3012 | -4.3012",
                "4.30 | 4.3",
                "12\u00b034.567' | 12.57611666666667",
            })
    void besideDecimalCommasACommaIsDecimal(String text, double degrees) {
        assertThat(DegreeText.read(text, false, DecimalMark.COMMA)).isCloseTo(degrees, within(PRINTED));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "POINT | 4,30 | \"4,30\" could be 4.30 degrees or 4 degrees 30 minutes; give 4.30, or 4\u00b030'",
                "POINT | -4,5 | \"-4,5\" could be 4.5 degrees or 4 degrees 50 minutes",
                "COMMA | 12.345 | \"12.345\" could be 12345 or 12,345; give degrees with a decimal comma",
                "POINT | 12\u00b034'56s | \"12\u00b034'56s\" could end in seconds or in south",
                "POINT | 12D34M56S | \"12D34M56S\" could end in seconds or in south",
                "POINT | -12.5 N | \"-12.5 N\": its sign and its letter contradict each other",
                "POINT | +12.5 S | \"+12.5 S\": its sign and its letter contradict each other",
                "POINT | 12.5 W | \"12.5 W\" is a longitude (W) in the place of the latitude; swap the two",
                "POINT | 12\u00b030'O | \"12\u00b030'O\" is a longitude (O) in the place of the latitude",
                "POINT | 12\u00b075' | \"12\u00b075'\": 75 minutes are not allowed; give below 60",
                "POINT | 12\u00b030'60\" | \"12\u00b030'60\"\": 60 seconds are not allowed; give below 60",
                "POINT | 12.5\u00b030' | \"12.5\u00b030'\": 12.5 degrees have decimals and a finer part follows",
                "POINT | 12\u00b030.5'10\" | \"12\u00b030.5'10\"\": 30.5 minutes have decimals and a finer part follows",
                "POINT | -12.345.678 | \"-12.345.678\" is not a latitude; give degrees such as -6.12345, or 6\u00b007'24.4\"S",
                "COMMA | 1.234,5 | \"1.234,5\" is not a latitude",
                "POINT | S 12 N | \"S 12 N\" is not a latitude",
                "POINT | 12.5 Q | \"12.5 Q\": \"Q\" is no direction; give N or S",
                "POINT | 12\ufffd34' | \"12\ufffd34'\" is not a latitude",
                "POINT | near the bridge | \"near the bridge\" is not a latitude",
                "POINT | 123456 | 123456 is not allowed; give -90 to 90 deg: longitude comes first, latitude second",
            })
    void whatIsNoLatitudeOrCouldBeTwoIsRefused(DecimalMark mark, String text, String message) {
        assertThatThrownBy(() -> DegreeText.read(text, false, mark))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "12\u00b034'S | \"12\u00b034'S\" is a latitude (S) in the place of the longitude; swap the two",
                "190.5 | 190.5 is not allowed; give -180 to 180 deg",
                "9308123.4 | 9308123.4 is not allowed; give -180 to 180 deg",
            })
    void longitudesToo(String text, String message) {
        assertThatThrownBy(() -> DegreeText.read(text, true, DecimalMark.POINT)).hasMessageContaining(message);
    }
}
