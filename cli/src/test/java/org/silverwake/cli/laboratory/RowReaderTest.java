// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported.Kind;
import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Medium;

/**
 * What laboratories write. Spellings are common practice, no source, but for those of ../shared/reference/cases.md (limit in
 * another unit, decimal commas, micro signs, month names, the range checks).
 */
class RowReaderTest {
    /** Units are powers of ten [percent]. */
    private static final double ROUNDING = 1e-9;

    private static final Map<String, String> WATER =
            Map.of("medium", "surface water", "substance", "total mercury", "fraction", "filtered", "unit", "ug/L");
    private static final Map<String, String> SEDIMENT =
            Map.of("medium", "sediment", "substance", "total mercury", "basis", "dry", "unit", "mg/kg");

    private static LabRow read(Map<String, String> base, DecimalMark mark, String... more) {
        Map<String, String> cells = new LinkedHashMap<>(base);
        for (int i = 0; i < more.length; i += 2) {
            cells.put(more[i], more[i + 1]);
        }
        cells.values().removeIf(String::isEmpty);
        Map<String, List<String>> lists = new LinkedHashMap<>();
        cells.forEach((column, cell) -> lists.put(column, List.of(cell)));
        return RowReader.read(
                new RowCells(lists, RowReader.columns(), mark), Vocabulary.of(List.of("dry season", "wet season")));
    }

    private static LabRow water(String... more) {
        return read(WATER, DecimalMark.POINT, more);
    }

    private static void isFound(LabRow row, Kind kind, double micrograms) {
        assertThat(row.reasons()).isEmpty();
        Finding finding = row.finding().orElseThrow();
        assertThat(finding.reported().kind()).isEqualTo(kind);
        assertThat(finding.reported().value()).isCloseTo(micrograms * 1e-6, withinPercentage(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0.12|DETECTED|0.12",
                "'0,12'|DETECTED|0.12",
                "'0,125'|DETECTED|0.125",
                "<0.5|BELOW|0.5",
                "'< 0,5'|BELOW|0.5",
                "≤0.5|BELOW|0.5",
                "&lt;0.5|BELOW|0.5",
                "> 20|ABOVE|20",
                "ND (0.5)|BELOW|0.5",
                "ND<0.5|BELOW|0.5",
                "0.5 U|BELOW|0.5",
                "0.5U|BELOW|0.5",
                "0.12 J|ESTIMATED|0.12",
                "1.2e-2|DETECTED|0.012",
                "120 ng/L|DETECTED|0.12"
            })
    void valueCells(String cell, Kind kind, double micrograms) {
        boolean own = cell.contains("ng/L");
        isFound(water("value", cell, "unit", own ? "" : "ug/L"), kind, micrograms);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ND",
                "n.d.",
                "not detected",
                "Non-detect",
                "BDL",
                "no detectado",
                "não detectado",
                "non détecté",
                "tidak terdeteksi",
                "< RL",
                "<LOD",
                "< MDL",
                "<",
                "trace"
            })
    void wordsForNothingFoundTakeTheLimit(String word) {
        isFound(water("value", word, "limit", "50", "limit_unit", "ng/L"), Kind.BELOW, 0.05);
        LabRow without = water("value", word);
        assertThat(without.standing()).isEqualTo(Standing.REFUSED);
    }

    @Test
    void limitThatIsNotThereIsUnknown() {
        assertThat(water("value", "ND").reasons())
                .containsExactly("was not found, but the limit is unknown; give it in the column limit, with its unit");
        assertThat(water("value", "< RL").reasons().toString()).contains("the limit is unknown");
        assertThat(water("value", "", "limit", "0.5").reasons())
                .containsExactly("has no result; where nothing was found, say so and give the limit");
    }

    /** cases.md "Limit unit differs from value unit": 0.0002 mg/L is 0.2 ug/L, above its limit of 0.05 ug/L. */
    @Test
    void limitHasItsOwnUnit() {
        LabRow row = water("value", "0.0002", "unit", "mg/L", "limit", "0.05", "limit_unit", "ug/L");
        isFound(row, Kind.DETECTED, 0.2);
        LabRow below = water("value", "0.00002", "unit", "mg/L", "limit", "0.05", "limit_unit", "ug/L");
        assertThat(below.reasons().toString()).contains("below its own limit and carries no flag");
        LabRow unitless = water("value", "ND", "unit", "mg/L", "limit", "0.05");
        assertThat(unitless.reasons().toString()).contains("the limit is unknown");
    }

    @Test
    void numberBesideAFlagIsALimit() {
        LabRow row = water(
                "value", "0.17", "qualifier", "Not Detected at Detection Limit", "limit", "0.02", "limit_unit", "ug/L");
        isFound(row, Kind.BELOW, 0.17);
        isFound(water("value", "0.02", "qualifier", "U", "limit", "0.17", "limit_unit", "ug/L"), Kind.BELOW, 0.17);
        isFound(water("value", "0.02", "qualifier", "Present Below Quantification Limit"), Kind.ESTIMATED, 0.02);
        isFound(water("value", "0.02", "qualifier", "<"), Kind.BELOW, 0.02);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "ng/l|0.001",
                "NG/L|0.001",
                "µg/L|1",
                "μg/L|1",
                "ug/l|1",
                "mcg/L|1",
                "ug L-1|1",
                "µg·L⁻¹|1",
                "mg/m3|1",
                "ppb|1",
                "ug/L as Hg|1"
            })
    void unitsOfWater(String unit, double factor) {
        isFound(water("value", "2", "unit", unit), Kind.DETECTED, 2 * factor);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mg/kg dw|DRY_WEIGHT|2",
                "ug/g dw|DRY_WEIGHT|2",
                "mg/kg (dry weight)|DRY_WEIGHT|2",
                "mg/kg ww|WET_WEIGHT|2",
                "mg/kg wet wt|WET_WEIGHT|2",
                "ng/g dry|DRY_WEIGHT|0.002",
                "mg kg-1 dw|DRY_WEIGHT|2",
                "ppm dw|DRY_WEIGHT|2",
                "ppb dw|DRY_WEIGHT|0.002",
                "MG/KG DRY|DRY_WEIGHT|2"
            })
    void unitsOfSolids(String unit, Basis basis, double milligrams) {
        LabRow row = read(SEDIMENT, DecimalMark.POINT, "value", "2", "unit", unit, "basis", "");
        isFound(row, Kind.DETECTED, milligrams);
        assertThat(row.finding().orElseThrow().basis()).isEqualTo(basis);
    }

    @Test
    void unitsThatAreRefused() {
        assertThat(water("value", "2", "unit", "").reasons())
                .containsExactly("the unit of the value is blank; give one");
        assertThat(water("value", "2", "unit", "ppt").reasons().toString()).contains("has two meanings");
        assertThat(water("value", "2", "unit", "Mg/L").reasons().toString()).contains("is not known");
        assertThat(water("value", "2", "unit", "mg/kg").reasons().toString()).contains("does not go with water");
        assertThat(read(SEDIMENT, DecimalMark.POINT, "value", "2", "unit", "mg/L")
                        .reasons()
                        .toString())
                .contains("does not go with solids");
        assertThat(read(SEDIMENT, DecimalMark.POINT, "value", "2", "unit", "mg/kg ww")
                        .reasons()
                        .toString())
                .contains("basis is told twice and differently: dry weight and wet weight");
        assertThat(read(SEDIMENT, DecimalMark.POINT, "value", "2", "basis", "")
                        .reasons()
                        .toString())
                .contains("basis is blank");
        assertThat(water("value", "2", "unit", "ppb").said()).containsExactly("ppb in water understood as ug/L");
        assertThat(water("value", "2", "unit", "ppb", "medium", "").reasons())
                .containsExactly("medium is blank; give surface water, bed sediment, fish ...");
        assertThat(water("value", "120 ng/L").reasons().toString()).contains("in the cell and ug/L beside it differ");
    }

    /** cases.md "Semicolon CSV, decimal comma". */
    @Test
    void decimalMarks() {
        isFound(read(WATER, DecimalMark.COMMA, "value", "0,0002", "unit", "mg/L"), Kind.DETECTED, 0.2);
        assertThat(read(WATER, DecimalMark.COMMA, "value", "1.234,5").reasons().toString())
                .contains("could be 1234.5 or 1.2345");
        assertThat(water("value", "1,234").reasons().toString()).contains("could be 1234 or 1.234");
        assertThat(read(WATER, DecimalMark.COMMA, "value", "1.234").reasons().toString())
                .contains("could be");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-0.2", "0.1 - 0.3", "0.1 ± 0.02", "about 2", "2*", "Hg", "#VALUE!", "<>"})
    void valuesThatAreRefused(String cell) {
        LabRow row = water("value", cell);
        assertThat(row.standing()).isEqualTo(Standing.REFUSED);
        assertThat(row.reasons()).hasSize(1);
    }

    @Test
    void contradictionsAreRefused() {
        assertThat(water("value", "<0.5", "qualifier", ">").reasons().toString())
                .contains("two things at once");
        assertThat(water("value", "0.5", "qualifier", "U, J").reasons().toString())
                .contains("two things at once");
        assertThat(water("value", "0.5", "qualifier", "Q7").reasons().toString())
                .contains("qualifier \"Q7\" is not known; say under samples.words");
        assertThat(water("value", "2", "substance", "Arsenic").reasons().toString())
                .contains("\"Arsenic\" is not known");
        assertThat(water("value", "2", "fraction", "").reasons().toString()).contains("fraction is blank");
        assertThat(water("value", "2", "state", "monsoon").reasons().toString()).contains("wet season");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "03/04/2021|could be 2021-04-03 or 2021-03-04",
                "25/04/2021|can only be 2021-04-25",
                "31/31/2021|is not a day",
                "2021-02-30|is not a day",
                "12 marzo 2021|give dates as YYYY-MM-DD",
                "12 Mar 2021|give dates as YYYY-MM-DD",
                "3 de agosto de 2021|give dates as YYYY-MM-DD",
                "12 Agustus 2021|give dates as YYYY-MM-DD",
                "fevereiro|give dates as YYYY-MM-DD",
                "44289|count of days"
            })
    void datesAreAskedFor(String date, String reason) {
        LabRow row = water("value", "2", "date", date);
        assertThat(row.standing()).isEqualTo(Standing.REFUSED);
        assertThat(row.reasons()).hasSize(1);
        assertThat(row.reasons().get(0)).contains(reason);
    }

    @Test
    void isoDatesAreRead() {
        assertThat(water("value", "2", "date", "2021-04-03").date().orElseThrow())
                .hasToString("2021-04-03");
        assertThat(water("value", "2", "date", "2021-04-03T10:30").date().orElseThrow())
                .hasToString("2021-04-03");
        assertThat(water("value", "2", "state", "Dry Season").state()).contains("dry season");
    }

    /** cases.md "Column in ug or mg?". */
    @Test
    void impossibleValuesAskForTheUnit() {
        assertThat(water("value", "61", "unit", "ppb").reasons().toString())
                .contains("solubility")
                .contains("which unit");
        assertThat(water("value", "2000000").reasons().toString())
                .contains("1 g/L")
                .contains("which unit");
        assertThat(water("value", "61", "fraction", "total").reasons()).isEmpty();
        assertThat(read(SEDIMENT, DecimalMark.POINT, "value", "2000000")
                        .reasons()
                        .toString())
                .contains("which unit");
    }

    /** Cyanide holds mercury in solution: common practice, no source for how much. */
    @Test
    void filteredAboveTheSolubilityIsKeptWithADoubt() {
        LabRow row = water("value", "61");
        isFound(row, Kind.DETECTED, 61);
        assertThat(row.said()).singleElement().asString().contains("solubility").contains("leach tank");
        assertThat(water("value", "59").said()).isEmpty();
    }

    @Test
    void bottlesWithoutAnyResultAreNotRefused() {
        LabRow row = water("value", "", "date", "03/04/2021");
        assertThat(row.standing()).isEqualTo(Standing.NO_RESULT);
        assertThat(row.reasons()).containsExactly("value, qualifier and limit are blank");
        assertThat(water("value", "", "qualifier", "U").standing()).isEqualTo(Standing.REFUSED);
        assertThat(water("value", "", "limit", "0.5").standing()).isEqualTo(Standing.REFUSED);
    }

    @ParameterizedTest
    @CsvSource({"Field Blank,blank", "Lab duplicate,replicate", "matrix spike,spike", "rejected,rejected"})
    void whatIsNoSampleIsLeftOut(String type, String reason) {
        LabRow row = water("value", "nonsense", "type", type);
        assertThat(row.standing()).isEqualTo(Standing.LEFT_OUT);
        assertThat(row.reasons()).containsExactly(reason + " (" + type + ")");
        assertThat(water("value", "2", "qualifier", "R").standing()).isEqualTo(Standing.LEFT_OUT);
    }

    @Test
    void oneWordMaySaySeveralThings() {
        Vocabulary words = Vocabulary.of(List.of("dry"));
        words.add("MeHg- filtered", "methylmercury, filtered, surface water");
        words.add("X-*", "estimated");
        RowCells cells = new RowCells(
                Map.of(
                        "substance", List.of("MEHG - Filtered"),
                        "value", List.of("2"),
                        "unit", List.of("ng/L"),
                        "qualifier", List.of("X- 12 b")),
                RowReader.columns(),
                DecimalMark.POINT);
        Finding finding = RowReader.read(cells, words).finding().orElseThrow();
        assertThat(finding.words()).isEqualTo("filtered MeHg in surface water");
        assertThat(finding.reported().kind()).isEqualTo(Kind.ESTIMATED);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> words.add("seco", "dry"))
                .hasMessage("\"dry\" could be basis dry or state dry; give one of these");
        words.add("estiaje", "state dry");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> words.add("x", "murky"))
                .hasMessageContaining("\"murky\" is not a word known here");
    }

    @Test
    void suspendedFractionIsOnSolids() {
        LabRow row = water("value", "2", "unit", "mg/kg dw", "fraction", "suspended");
        assertThat(row.finding().orElseThrow().medium()).isEqualTo(Medium.SUSPENDED_SOLIDS);
        assertThat(water("value", "2", "fraction", "particulate").reasons())
                .singleElement()
                .asString()
                .contains("mass per volume")
                .contains("whole and filtered")
                .contains("mg/kg of solids");
    }
}
