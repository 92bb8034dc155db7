// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.model.screening.Guideline;

/** Which of many bottles of one place are drawn. */
class SampleMarksTest {
    @TempDir
    private Path folder;

    @Test
    void worstOfManyStandOnTopAndTheOthersAreCounted() throws IOException {
        DemoCopy.into(folder);
        StringBuilder rows =
                new StringBuilder("code,longitude,latitude,sampled,state,matrix,analyte,fraction,result,unit,kind\n");
        for (String sample : List.of("A,total,3", "B,total,<100", "C,total,>400", "D,total,30", "E,dissolved,2")) {
            String[] part = sample.split(",");
            rows.append(part[0] + ",-19.7612,-30.0456,2026-06-09,dry,river water,Hg-T," + part[1] + "," + part[2]
                    + ",ng/L,sample\n");
        }
        Files.writeString(folder.resolve("lab.csv"), rows);
        Outcome outcome = MainRun.run(folder, step -> {});
        Guideline guideline = Shown.guideline(outcome).orElseThrow();
        assertThat(guideline.id()).isEqualTo("CCME-FW-iHg"); // 26 ng/L of whole water
        List<MapPoint> points = new SampleMarks(outcome).onMap(guideline, 0);
        assertThat(points).extracting(MapPoint::label).containsExactly("B", "D", "C (and 1 more)");
        assertThat(points)
                .extracting(MapPoint::kind)
                .containsExactly(MapPoint.Kind.SAMPLE_CANNOT_TELL, MapPoint.Kind.SAMPLE, MapPoint.Kind.SAMPLE);
    }
}
