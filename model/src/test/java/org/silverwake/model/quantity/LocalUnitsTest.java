// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LocalUnitsTest {
    /** ROUNDING: a few products of doubles, in percent. */
    private static final double ROUNDING = 1e-12;

    /** PRINTED: the values worked out by hand, in percent. */
    private static final double PRINTED = 1e-9;

    private static LocalUnits units(List<String> problems, String... pairs) {
        Map<String, String> definitions = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            definitions.put(pairs[i], pairs[i + 1]);
        }
        return LocalUnits.of(definitions, (name, text) -> problems.add(name + ": " + text));
    }

    private static LocalUnits usual() {
        List<String> problems = new ArrayList<>();
        LocalUnits units = units(
                problems,
                "sack",
                "50 kg",
                "flask",
                "34.5 kg",
                "drum charge",
                "2 sacks",
                "tin",
                "18 L",
                "tola",
                "11.66 g",
                "latas",
                "20 L",
                "seau",
                "12 L");
        assertThat(problems).isEmpty();
        return units;
    }

    /** By hand: the factor of each local unit times that of the standard unit beside it; a year is 365.25 d. */
    @ParameterizedTest
    @CsvSource({
        "3 sacks, MASS, 150",
        "1 SACK, MASS, 50",
        "2 flasks, MASS, 69",
        "0.5 drum charge, MASS, 50",
        "3 drum-charges/d, MASS_FLOW, 0.003472222222222222",
        "2 Drum  Charges / d, MASS_FLOW, 0.0023148148148148147",
        "12 tola/yr, MASS_FLOW, 4.4337972469389305e-9",
        "3 tin/h, DISCHARGE, 1.5e-5",
        "4 tins, VOLUME, 0.072",
        "1 lata, VOLUME, 0.02",
        "2 seaux/d, DISCHARGE, 2.7777777777777777e-7",
        "5 g/sack, MASS_CONTENT, 1e-4",
        "1 tola/sack, MASS_CONTENT, 2.332e-4",
        "1 mg/tin, CONCENTRATION, 5.5555555555555555e-5",
        "3 kg/d, MASS_FLOW, 3.472222222222222e-5",
    })
    void standsWhereverAMassOrAVolumeMay(String text, Dimension dimension, double si) {
        assertThat(Quantity.parse(text, dimension, DecimalMark.POINT, usual()).si())
                .isCloseTo(si, withinPercentage(PRINTED));
    }

    @Test
    void decimalCommasAreReadBesideThem() {
        assertThat(Quantity.parse("1,5 sacks/d", Dimension.MASS_FLOW, DecimalMark.COMMA, usual())
                        .si())
                .isCloseTo(75.0 / 86400, withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 sacks | DISCHARGE | sacks is a unit of mass, not of discharge; give one of m3/s",
                "3 tins/d | MASS_FLOW | tins/d is a unit of discharge, not of mass per time",
                "3 skacs | MASS | skacs is not known as a unit; the nearest one defined under units is sack",
                "3 sakc/d | MASS_FLOW | sakc is not known as a unit; the nearest one defined under units is sack",
                "3 bushels | MASS | bushels is not known as a unit of mass; give one of kg",
                "2 ounces | MASS | ounces is not one amount everywhere: the avoirdupois ounce is 28.3495 g, the troy ounce of gold 31.1035 g; define it under units",
                "2 oz/d | MASS_FLOW | oz is not one amount everywhere: the avoirdupois ounce",
                "2 gallons | VOLUME | the US gallon is 3.78541 L, the imperial gallon 4.54609 L",
            })
    void isCheckedLikeAnyUnit(String text, Dimension dimension, String message) {
        assertThatThrownBy(() -> Quantity.parse(text, dimension, DecimalMark.POINT, usual()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void aDoubtfulWordMayBeDefined() {
        List<String> problems = new ArrayList<>();
        LocalUnits units = units(problems, "ounce", "31.1035 g");
        assertThat(problems).isEmpty();
        assertThat(Quantity.parse("2 ounces", Dimension.MASS, DecimalMark.POINT, units)
                        .si())
                .isCloseTo(0.062207, withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kg | 2 kg | kg: is a unit already, of mass; give your unit another name",
                "KG | 2 kg | KG: is a unit already, of mass but for its case",
                "day | 2 kg | day: is a unit already, of duration",
                "tonne | 1000 kg | tonne: is a unit already, of mass",
                "sack | 50 | sack: \"50\" has no unit; give a mass (kg, t, g, mg) or a volume (m3, L, ML)",
                "sack | heavy | sack: \"heavy\" has no unit",
                "sack | 50 m | sack: m is a unit of length; give a mass",
                "sack | 5 kg/d | sack: kg/d is a unit of mass per time; give a mass",
                "sack | 50 sacks | sack: is defined by itself (50 sacks)",
                "sack | 2 bushels | sack: bushels is not known; give a mass",
                "sack | 3 ounces | sack: ounces is not known (the avoirdupois ounce is 28.3495 g, the troy ounce of gold 31.1035 g)",
                "sack | 0 kg | sack: 0 kg is not allowed; give an amount above 0",
                "sack | 1,234 kg | sack: \"1,234\" could be 1234 or 1.234",
                "50er | 2 kg | 50er: cannot be the name of a unit",
                "kg/sack | 2 kg | kg/sack: cannot be the name of a unit",
            })
    void whatCannotBeAUnitIsToldInOneLine(String name, String definition, String message) {
        List<String> problems = new ArrayList<>();
        LocalUnits units = units(problems, name, definition);
        assertThat(problems).singleElement().asString().startsWith(message).doesNotContain("\n");
        assertThat(units.definitions()).isEmpty();
    }

    @Test
    void circlesAndNamesThatReadAlikeAreRefused() {
        List<String> problems = new ArrayList<>();
        LocalUnits units = units(problems, "tin", "2 pots", "pot", "0.5 tin", "sack", "50 kg", "sacks", "40 kg");
        assertThat(problems)
                .containsExactlyInAnyOrder(
                        "sacks: reads like sack; keep one of them",
                        "tin: is defined by itself (2 pots); give a mass such as 50 kg or a volume such as 18 L",
                        "pot: is defined by itself (0.5 tin); give a mass such as 50 kg or a volume such as 18 L");
        assertThat(units.definitions()).containsExactly(Map.entry("sack", "50 kg"));
    }

    @Test
    void noneChangesNothing() {
        assertThat(LocalUnits.none().find("kg", Dimension.MASS)).contains(new Unit("kg", 1, 0));
        assertThatThrownBy(() -> LocalUnits.none().require("ounce", Dimension.MASS))
                .hasMessageContaining("troy ounce");
    }
}
