// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.laboratory.LabRow;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Reported;
import org.silverwake.model.sample.Reported.Kind;
import org.silverwake.model.screening.Basis;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/**
 * Three real tables, read where they lie, with the mappings of docs/how-to/samples.md. Counts are those of the tables' own
 * README (../shared/data/open/README.md, section 3), or counted from the files with another program.
 */
class LaboratoryFilesTest {
    /** Units are powers of ten [percent]. */
    private static final double ROUNDING = 1e-9;

    @TempDir
    private Path folder;

    private List<String> warnings = List.of();

    private List<Sample> read(String file, String mapping) throws IOException {
        String shared = System.getProperty("silverwake.shared");
        assumeTrue(shared != null, "the shared folder is not given");
        Path table = Path.of(shared, "data", "open", "observations", file).toAbsolutePath();
        assumeTrue(Files.isRegularFile(table), "no " + table);
        Path yaml = folder.resolve("scenario.yaml");
        Files.writeString(yaml, "samples:\n  file: '" + table + "'\n" + mapping.indent(2));
        Problems problems = new Problems();
        Written written = YamlFile.read(yaml, problems).orElseThrow();
        ScenarioValue root = ScenarioValue.root(written.place(), written.root(), problems);
        StateNames states = new StateNames(List.of("low", "high"), List.of(0.5, 0.5));
        Sources sources = new Sources(folder, f -> null, written.tables(), problems);
        List<Sample> samples = new SamplesSection(root.at("samples"), sources, states, problems).read(Map.of());
        problems.requireNone();
        warnings = problems.warnings();
        return samples;
    }

    private static long count(List<Sample> samples, Predicate<LabRow> which) {
        return samples.stream().map(Sample::row).filter(which).count();
    }

    private static long found(List<Sample> samples, Kind kind) {
        return count(
                samples,
                r -> r.finding().filter(f -> f.reported().kind() == kind).isPresent());
    }

    /** Reasons with their numbers taken out, and how often each occurs. */
    private static Map<String, Integer> reasons(List<Sample> samples) {
        Map<String, Integer> reasons = new TreeMap<>();
        samples.forEach(s -> s.row().reasons().forEach(r -> reasons.merge(r.replaceAll(":\\d+", ""), 1, Integer::sum)));
        return reasons;
    }

    static final String PORTAL = """
            columns:
              name: ActivityIdentifier
              station: MonitoringLocationIdentifier
              longitude: LongitudeMeasure
              latitude: LatitudeMeasure
              date: ActivityStartDate
              time: ActivityStartTime.Time
              type: [ActivityTypeCode, MonitoringLocationTypeName]
              medium: [ActivityMediaSubdivisionName, ActivityMediaName]
              substance: CharacteristicName
              fraction: ResultSampleFractionText
              value: ResultMeasureValue
              unit: ResultMeasure.MeasureUnitCode
              qualifier: [ResultDetectionConditionText, MeasureQualifierCode]
              limit: DetectionQuantitationLimitMeasure.MeasureValue
              limit_unit: DetectionQuantitationLimitMeasure.MeasureUnitCode
              method: ResultAnalyticalMethod.MethodName
              note: ResultCommentText
            words:
              River/Stream*: sample
              Stream: sample
              Lake: not a river
              Well: not a river
            """;

    @Test
    void portalRowsAreReadOneByOne() throws IOException {
        List<Sample> samples = read("wqp_mercury_mn_nm_wi.csv", PORTAL);
        assertThat(samples).hasSize(634);
        assertThat(reasons(samples))
                .isEqualTo(Map.of(
                        "blank (Quality Control Sample-Field Blank, River/Stream)", 26,
                        "replicate (Quality Control Sample-Field Replicate, River/Stream)", 28,
                        "not a river (Sample-Routine, Lake)", 69,
                        "not a river (Sample-Routine, Well)", 1));
        assertThat(count(samples, r -> r.standing() == Standing.UNDERSTOOD)).isEqualTo(634 - 26 - 28 - 69 - 1);
        assertThat(count(samples, r -> r.standing() == Standing.REFUSED)).isZero();
        assertThat(samples).allSatisfy(s -> assertThat(s.position()).isPresent());
        // the file's own column of datums: 621 NAD83, 9 WGS84, 2 UNKWN, 2 OTHER
        assertThat(samples.stream()
                        .filter(s -> s.position().orElseThrow().system().isWgs84()))
                .hasSize(13);
        assertThat(warnings)
                .singleElement()
                .asString()
                .contains("100 to 400 m")
                .endsWith("(and so in 3 more rows of samples)");
    }

    /** Lakes taken in: 96 rows are flagged, 25 of them blanks and 1 a replicate; 3 rows repeat another. */
    @Test
    void flaggedRowsAreLimitsEvenWithANumber() throws IOException {
        List<Sample> samples = read("wqp_mercury_mn_nm_wi.csv", PORTAL.replace("Lake: not a river", "Lake: sample"));
        long repeated = count(samples, r -> r.reasons().toString().contains("the same in everything but its code"));
        assertThat(repeated).isEqualTo(3);
        long repeatedLimits = count(
                samples,
                r -> r.standing() == Standing.LEFT_OUT
                        && r.finding()
                                .filter(f -> f.reported().kind() == Kind.BELOW)
                                .isPresent());
        assertThat(found(samples, Kind.BELOW)).isEqualTo(96 - 25 - 1 - 1); // the last is a well

        assertThat(repeatedLimits).isEqualTo(1); // line 468 repeats line 466
        assertThat(samples.get(611).row().reasons())
                .containsExactly("the same in everything but its code as "
                        + samples.get(29).where());
        // "Not Detected at Detection Limit" with the number 0.17 and the limit 0.033877065 ng/L
        Sample numbered = samples.stream()
                .filter(s -> s.row().written().matches(".* 0\\.17 ng/L; limit 0\\.033877065 ng/L"))
                .findFirst()
                .orElseThrow();
        assertThat(numbered.row().finding().orElseThrow().reported()).isEqualTo(new Reported(Kind.BELOW, 0.17 * 1e-9));
        assertThat(numbered.row().said().toString()).contains("number and limit differ");
        // mg/L beside ng/L: the tribal rows have a limit of 0.0002 mg/L, that is 200 ng/L
        Finding milligrams = samples.get(0).row().finding().orElseThrow();
        assertThat(milligrams.reported().kind()).isEqualTo(Kind.BELOW);
        assertThat(milligrams.reported().value()).isCloseTo(200e-9, withinPercentage(ROUNDING));
        assertThat(milligrams.fraction()).isEqualTo(Fraction.WHOLE);
    }

    static final String BYPASS = """
            columns:
              name: SampleCode
              station: StationName
              date: SampleDate
              time: CollectionTime
              substance: Analyte
              value: Result
              unit: Units
              limit: RL
              qualifier: QualCode
              note: [LabComments, MME_Comments]
            fixed:
              medium: surface water
            words:
              THg- total: total mercury, whole
              THg- filtered: total mercury, filtered
              MeHg- total: methylmercury, whole
              MeHg- filtered: methylmercury, filtered
              DOC: other substance
              TOC: other substance
              R-*: qualifier rejected
              J-*: estimated
            """;

    @Test
    void bypassRowsAreReadOneByOne() throws IOException {
        List<Sample> samples = read("yolo_bypass_conc.csv", BYPASS);
        assertThat(samples).hasSize(1161);
        assertThat(reasons(samples))
                .isEqualTo(Map.of(
                        "other substance (DOC)", 164,
                        "other substance (TOC)", 164,
                        "rejected (R- FGT)", 9,
                        "rejected (R- FGT, DNQ)", 3,
                        "rejected (R- NRS)", 7));
        assertThat(count(samples, r -> r.standing() == Standing.REFUSED)).isZero();
        List<Sample> limits = samples.stream()
                .filter(s -> s.row()
                        .finding()
                        .filter(f -> f.reported().kind() == Kind.BELOW)
                        .isPresent())
                .toList();
        assertThat(limits).hasSize(1); // "< RL", with the limit in its own column
        Finding limit = limits.get(0).row().finding().orElseThrow();
        assertThat(limit.reported().value()).isCloseTo(0.5e-9, withinPercentage(ROUNDING));
        assertThat(limit.substance()).isEqualTo(Substance.TOTAL_MERCURY);
        assertThat(limit.fraction()).isEqualTo(Fraction.FILTERED);
        assertThat(found(samples, Kind.ESTIMATED)).isEqualTo(36); // every J- code but none of DOC and TOC
        assertThat(count(
                        samples,
                        r -> r.finding()
                                .filter(f -> f.substance() == Substance.SUSPENDED_SOLIDS)
                                .isPresent()))
                .isEqualTo(166 - 1); // one of 166 is rejected
        assertThat(samples).allSatisfy(s -> assertThat(s.unplaced()).contains("no place, gauge, site or station"));
    }

    static final String FISH = """
            columns:
              value: Hg
              qualifier: HgCen
              species: Species
              length: Length
            fixed:
              medium: fish
              substance: total mercury
              unit: ug/g wet
              length_unit: mm
            words:
              'TRUE': not detected
              'FALSE': detected
            """;

    @Test
    void fishAreReadOneByOne() throws IOException {
        List<Sample> samples = read("usgs_brumbaugh_fish_hg.csv", FISH);
        assertThat(samples).hasSize(133);
        assertThat(found(samples, Kind.BELOW)).isEqualTo(15);
        assertThat(found(samples, Kind.DETECTED)).isEqualTo(118);
        assertThat(reasons(samples)).isEmpty();
        Finding first = samples.get(0).row().finding().orElseThrow();
        assertThat(first.medium()).isEqualTo(Medium.FISH);
        assertThat(first.basis()).isEqualTo(Basis.WET_WEIGHT);
        assertThat(first.reported().value()).isCloseTo(0.127e-6, withinPercentage(ROUNDING));
        assertThat(samples.get(0).row().fish()).isEqualTo("LargemouthBass, 260 mm");
        assertThat(first.notCompared(Substance.always())).contains("the model does not carry mercury into fish yet");
    }

    /** The same file's sediment: dry weight is not said anywhere, so it is asked for. */
    @Test
    void sedimentWithoutABasisIsRefused() throws IOException {
        List<Sample> samples = read("usgs_brumbaugh_fish_hg.csv", """
                columns: {value: SedTotHg}
                fixed: {medium: sediment, substance: total mercury, unit: ng/g}
                """);
        assertThat(count(samples, r -> r.standing() == Standing.REFUSED)).isEqualTo(133);
        assertThat(samples.get(0).row().reasons())
                .containsExactly("basis is blank; give dry or wet weight, in the unit or in its own column");
    }

    /** The mappings of the how-to are those that are tried here, letter by letter. */
    @Test
    void howToShowsTheseMappings() throws IOException {
        String page = Files.readString(Path.of("..", "docs", "how-to", "samples.md"));
        for (String mapping : List.of(PORTAL, BYPASS, FISH)) {
            assertThat(page).contains(mapping.indent(2));
        }
    }

    @Test
    void everyColumnIsDescribed() {
        java.util.Set<String> columns = new java.util.TreeSet<>(SampleColumns.known());
        columns.removeAll(SampleColumns.LOCATION);
        assertThat(SampleColumns.described().keySet()).containsExactlyInAnyOrderElementsOf(columns);
        assertThat(SampleColumns.known())
                .containsAll(org.silverwake.cli.laboratory.Headings.known().keySet());
    }
}
