// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.Corrections.Action;
import org.silverwake.geo.assembly.Defect;

class CorrectionsTableTest {
    /** ROUNDING: degrees are read as they are written. */
    private static final double ROUNDING = 1e-12;

    private static final String HEADER =
            "action,kind,name,feature,longitude,latitude,was_longitude,was_latitude,defect,note\n";

    @TempDir
    private Path folder;

    private ScenarioFolder with(String... rows) {
        return new ScenarioFolder(folder).file("corrections.csv", HEADER + String.join("\n", rows) + "\n");
    }

    @Test
    void everyActionIsRead() {
        ScenarioInput input = with(
                        "move,site,Shed,,-20.2,-30.3,-20.1,-30.1,,behind the shed",
                        "move,place,Wick,,-20.2,-30.3,,,,",
                        "turn,,,L012,-20.2,-30.2,-20.21,-30.21,,",
                        "outlet,,,L001,,,,,,",
                        "refuse,,,L004|L007,-20.4,-30.4,,,gap,",
                        "accept,,,L008,,,,,null-shape,",
                        "refuse,,,,,,,,layer-reversed,")
                .read();
        List<Corrections.Row> rows = input.corrections().rows();
        assertThat(rows)
                .extracting(Corrections.Row::action)
                .containsExactly(
                        Action.MOVE,
                        Action.MOVE,
                        Action.TURN,
                        Action.OUTLET,
                        Action.REFUSE,
                        Action.ACCEPT,
                        Action.REFUSE);
        assertThat(rows.get(0).where()).isEqualTo("corrections.csv:2");
        assertThat(rows.get(0).words()).isEqualTo("move site Shed");
        assertThat(rows.get(0).note()).isEqualTo("behind the shed");
        assertThat(rows.get(0).at().orElseThrow().x()).isCloseTo(-20.2, within(ROUNDING));
        assertThat(rows.get(0).was().orElseThrow().y()).isCloseTo(-30.1, within(ROUNDING));
        assertThat(rows.get(4).features()).containsExactly("L004", "L007");
        assertThat(rows.get(4).words()).isEqualTo("refuse gap L004|L007");
        assertThat(rows.get(6).features()).isEmpty();
        assertThat(input.sourceFiles())
                .contains(new ScenarioInput.SourceFile("corrections", Path.of("corrections.csv")));
    }

    @Test
    void noFileMeansNoCorrections() {
        ScenarioInput input = new ScenarioFolder(folder).read();
        assertThat(input.corrections()).isEqualTo(Corrections.none());
        assertThat(input.sourceFiles()).noneMatch(file -> file.role().equals("corrections"));
    }

    @Test
    void keyNamesAnotherFileAndOfficesSaveItTheirWay() {
        ScenarioInput input = new ScenarioFolder(folder)
                .file("corrections.csv", "not a table of ours\n1\n")
                .file("mine.csv", "\ufeffaction;feature;longitude;latitude\nturn;L012;-20,25;-30,5\n")
                .plus("corrections: {file: mine.csv}")
                .read();
        assertThat(input.corrections().file()).isEqualTo("mine.csv");
        assertThat(input.corrections().rows().get(0).at().orElseThrow().x()).isCloseTo(-20.25, within(ROUNDING));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', quoteCharacter = '`', textBlock = """
            shift,site,Shed,,-20.2,-30.3,,,,~ action: "shift" is not an action; known here: move, turn, outlet, refuse, accept
            ,site,Shed,,-20.2,-30.3,,,,~ action: is blank; give one of move, turn, outlet, refuse, accept
            move,sites,Shed,,-20.2,-30.3,,,,~ kind: "sites" is not a kind of point; the nearest known one is site
            move,,Shed,,-20.2,-30.3,,,,~ kind: is blank; give one of site, place, gauge, abstraction, sample
            move,site,Shad,,-20.2,-30.3,,,,~ name: there is no site "Shad"; the nearest known one is Shed
            move,gauge,Weir,,-20.2,-30.3,,,,~ name: there is no gauge "Weir"; delete the row
            move,site,,,-20.2,-30.3,,,,~ name: is blank; give the point's name
            move,site,Shed,,,,,,,~ longitude, latitude: are blank; give the new position in degrees, longitude first
            move,site,Shed,,-20.2,,,,,~ latitude: is blank beside the other; give both or none
            move,site,Shed,,-20.2,-130,,,,~ latitude: -130 is not allowed; give -90 to 90 deg
            move,site,Shed,,-20.2,-30.3,far,-30,,~ was_longitude: "far" is not
            move,site,Shed,L001,-20.2,-30.3,,,,~ feature: is not used by move; leave it blank
            turn,,,,-20.2,-30.3,,,,~ feature: is blank; give the id of the feature that is turned
            turn,,,L001,,,,,,~ longitude, latitude: are blank; give the end where water enters
            turn,,,L001,-20.2,-30.3,,,gap,~ defect: is not used by turn; leave it blank
            outlet,,,,,,,,,~ feature: is blank; give the id of the feature that flows out
            outlet,,,L001,,,,,gap,~ defect: is not used by outlet; leave it blank
            refuse,,,L001,-20.2,-30.3,,,hole,~ defect: "hole" cannot be ruled on here; known here: gap, split-at-junction
            refuse,,,L001,-20.2,-30.3,,,,~ defect: is blank; give the kind of defect, such as gap
            refuse,,,,-20.2,-30.3,,,gap,~ feature: is blank; give the ids of the defect's features, joined by |
            refuse,,,L001,-20.2,-30.3,,,loop,~ defect: "loop" cannot be refused, there is no repair to undo; only gap, split-at-junction
            accept,,,L001,-20.2,-30.3,,,roughness-out-of-range,~ defect: "roughness-out-of-range" cannot be ruled on here
            """)
    void wrongLinesAreTold(String row, String problem) {
        assertThat(with(row).problems()).singleElement().asString().startsWith("corrections.csv:2 " + problem.strip());
    }

    @Test
    void allProblemsAtOnce() {
        assertThat(with("shift,,,,,,,,,", "move,site,Shad,,1,2,,,,", "refuse,,,a,,,,,hole,")
                        .problems())
                .hasSize(3);
        assertThat(new ScenarioFolder(folder)
                        .file("corrections.csv", "action,where\nturn,x\n")
                        .problems())
                .anySatisfy(p -> assertThat(p).startsWith("corrections.csv:1 where: is not a column here"));
        assertThat(new ScenarioFolder(folder)
                        .file("corrections.csv", "feature\nL001\n")
                        .problems())
                .containsExactly("corrections.csv:1 action: this column is missing; add it");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            move,site,Shed,,-20.2,-30.3,,,,~move,site,Shed,,-20.4,-30.3,,,,
            turn,,,L1,-20.2,-30.3,-20.3,-30.4,,~turn,,,L1,-20.3,-30.4,-20.2,-30.3,,
            outlet,,,L1,,,,,,~outlet,,,L1,-20.2,-30.3,,,,
            refuse,,,L1|L2,-20.2,-30.3,,,gap,~accept,,,L2|L1,-20.2,-30.3,,,gap,
            """)
    void oneRowForOneThing(String first, String second) {
        assertThat(with(first, second).problems())
                .containsExactly(
                        "corrections.csv:3 action: corrects what corrections.csv:2 corrects; keep one of them");
    }

    @Test
    void everyKindOfDefectHasItsWord() {
        Set<String> kinds = new TreeSet<>(Arrays.stream(Defect.Kind.values())
                .map(kind -> kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .toList());
        kinds.remove("roughness-out-of-range"); // shows only in a run, after the network is assembled
        assertThat(new TreeSet<>(CorrectionsTable.defects())).isEqualTo(kinds);
    }
}
