// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.silverwake.cli.page.CheckPage;
import org.silverwake.cli.report.CorrectionsReport;
import org.silverwake.cli.report.RunSummary;
import org.silverwake.cli.report.SampleSummary;
import org.silverwake.cli.report.SampleTables;
import org.silverwake.cli.report.Tables;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.Dams;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.run.ProfileEnds;
import org.silverwake.cli.run.ReachClasses;
import org.silverwake.cli.run.SampleStep;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.map.CheckPicture;
import org.silverwake.geo.place.PlacedPoint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Reads everything and computes nothing heavy: problems of scenario, layer and network, in words and as a picture. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Reads a scenario and its river layer; lists every defect with its remedy, draws them,"
                + " and writes a page on which points and rivers are corrected.",
        footer = {"", "Example: silverwake check scenarios/lantern"})
public final class CheckCommand implements Callable<Integer> {
    private static final String PAGE = "check.html";

    @Parameters(
            paramLabel = "SCENARIO",
            description = "A folder that holds scenario.xlsx or scenario.yaml, or such a file.")
    private Path scenario;

    @Option(names = "--out", paramLabel = "DIR", description = "Where results go (default out/<scenario>-check).")
    private Optional<Path> out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        ScenarioInput input = Scenarios.read(scenario);
        Basin basin = Basin.forLookingAt(input);
        boolean whole = basin.failure().isEmpty();
        List<String> unknownEnds = new ArrayList<>(whole ? ProfileEnds.problems(input, basin) : List.of());
        unknownEnds.addAll(whole ? Dams.problems(input, basin) : List.of());
        List<String> classWarnings = whole ? ReachClasses.find(input, basin).warnings() : List.of();
        Path usual = RunCommand.defaultOut(scenario);
        Path target = out.orElseGet(() -> usual.resolveSibling(usual.getFileName() + "-check"));
        List<String> sampleWarnings = new ArrayList<>();
        List<LocatedSample> samples = SampleStep.locate(input, basin, sampleWarnings);
        OutputFolder folder = OutputFolder.begin(target);
        try {
            if (!samples.isEmpty()) {
                SampleTables.understood(
                        samples,
                        folder.path().resolve("samples.csv"),
                        input.outputs().tables());
            }
            Tables.defects(
                    basin,
                    folder.path().resolve("check-defects.csv"),
                    input.outputs().tables());
            CorrectionsReport.write(
                    basin,
                    folder.path().resolve("check-corrections.csv"),
                    input.outputs().tables());
            CheckPicture.draw(
                    basin.map(),
                    basin.points(),
                    input.project().title(),
                    folder.path().resolve("check.png"));
            CheckPage.write(
                    input,
                    basin,
                    samples,
                    unknownEnds,
                    Silverwake.VERSION,
                    folder.path().resolve(PAGE));
            folder.complete();
        } finally {
            folder.discard();
        }
        print(input, basin, print);
        SampleSummary.understood(samples, print);
        sampleWarnings.forEach(w -> print.println("warning: " + w));
        classWarnings.forEach(w -> print.println("warning: " + w));
        print.println("written to " + target + "; open " + target.resolve(PAGE)
                + " in a browser to look at it and to correct points and rivers (not for posting)");
        print.flush();
        return refuse(basin, unknownEnds, spec.commandLine().getErr());
    }

    private static void print(ScenarioInput input, Basin basin, PrintWriter print) {
        print.println(basin.map().reachCount() + " reaches; coordinate system "
                + basin.layer().crs().name());
        RunSummary.defects(basin.map().defects(), print);
        for (Defect defect : basin.map().defects()) {
            if (!defect.settled()) {
                print.println(Tables.line(defect));
            }
        }
        CorrectionsReport.print(basin, input.corrections(), print);
        for (PlacedPoint point : basin.points()) {
            print.println(Tables.line(point));
        }
        input.warnings().forEach(w -> print.println("warning: " + w));
        basin.warnings().forEach(w -> print.println("warning: " + w));
    }

    /** Tells what keeps the scenario from running. The page is there all the same: it is where most of it is put right. */
    private static int refuse(Basin basin, List<String> unknownEnds, PrintWriter err) {
        basin.failure().ifPresent(err::println);
        basin.unplaced().forEach(point -> err.println(point.reason()));
        unknownEnds.forEach(err::println);
        err.flush();
        if (basin.failure().isPresent() || !basin.unplaced().isEmpty()) {
            return Silverwake.DATA;
        }
        return unknownEnds.isEmpty() ? 0 : Silverwake.USAGE;
    }
}
