// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.quantity.DecimalMark;

class UtmCellsTest {
    /** ROUNDING: meters. */
    private static final double ROUNDING = 1e-6;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "POINT | 623456 | 623456",
                "POINT | 623456.78 | 623456.78",
                "POINT | 623,456 | 623456",
                "POINT | 623.456,78 | 623456.78",
                "POINT | 623,456.78 | 623456.78",
                "POINT | 623 456 | 623456",
                "POINT | 623 456.5 m | 623456.5",
                "POINT | 623456mE | 623456",
                "POINT | 623.456 km | 623456",
                "POINT | 0623456 | 623456",
                "COMMA | 623456,78 | 623456.78",
                "COMMA | 623.456,78 | 623456.78",
                "COMMA | 623.456 | 623456",
                "COMMA | 623,456.78 | 623456.78",
            })
    void eastingsAreReadWhereOneReadingFits(DecimalMark mark, String text, double meters) {
        assertThat(MeterText.read(text, 1e5, 9e5, mark)).isCloseTo(meters, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8.123 | \"8.123\" could be 8.123 or 8123 m; give it without thousands separators",
                "93081234 | 93081234 is not allowed; give 0 to 1e7 m",
                "-5 | -5 is not allowed",
                "abc | \"abc\" is not a number of meters",
                "12.34.56 | 12.34.56 is not allowed",
            })
    void northingsThatCouldBeTwoAreRefused(String text, String message) {
        assertThatThrownBy(() -> MeterText.read(text, 0, 1e7, DecimalMark.POINT))
                .hasMessageContaining(message);
    }

    /** Bands of 8 degrees from 80 S: M ends at the equator, N begins there, S is 32 to 40 N (UTM's own rule). */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "21 south | | 9308123 | 21 | true",
                "21 Sur | | 9308123 | 21 | true",
                "zona 21 norte | | 308123 | 21 | false",
                "UTM 21N | | 308123 | 21 | false",
                "21 | S | 9308123 | 21 | true",
                "21.0 | south | 9308123 | 21 | true",
                "21 | norte | 308123 | 21 | false",
                "21M | | 9308123 | 21 | true",
                "21L | | 8500000 | 21 | true",
                "30P | | 1200000 | 30 | false",
                "21S | | 9308123 | 21 | true",
                "21S | south | 4000000 | 21 | true",
                "11S | north | 4000000 | 11 | false",
            })
    void zonesAreReadWithTheirHemisphere(String text, String hemisphere, double northing, int number, boolean south) {
        assertThat(UtmZone.read(text, Optional.ofNullable(hemisphere), northing))
                .isEqualTo(new UtmZone(number, south));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "11S | | 4000000 | \"11S\" could be zone 11 south (latitude about -54.1) or band S of zone 11, north of the equator (latitude about 36); give 11 south or 11 north",
                "21 | | 9308123 | zone 21 is there north and south of the equator; give 21 south or 21 north",
                "61 south | | 9308123 | \"61 south\" is not a UTM zone; give 1 to 60",
                "21 south | N | 9308123 | zone \"21 south\" and hemisphere \"N\" contradict each other",
                "21L | | 9900000 | zone 21L lies between latitudes -16 and -8, but northing 9900000 m is at about -0.9",
                "21O | | 9308123 | O is no latitude band",
                "21 | up | 9308123 | \"up\" is no hemisphere; give north or south",
                "Lamp | | 9308123 | \"Lamp\" is not a UTM zone",
            })
    void zonesThatCouldBeTwoOrNoneAreRefused(String text, String hemisphere, double northing, String message) {
        assertThatThrownBy(() -> UtmZone.read(text, Optional.ofNullable(hemisphere), northing))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }
}
