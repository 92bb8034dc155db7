// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.silverwake.cli.report.ApportionSummary;
import org.silverwake.cli.report.ApportionTable;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.RunRecord;
import org.silverwake.cli.report.ShareCharts;
import org.silverwake.cli.report.TornadoTable;
import org.silverwake.cli.report.Tornadoes;
import org.silverwake.cli.run.ApportionRun;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.run.Swing;
import org.silverwake.cli.run.SwingRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Who brings how much of what arrives at places, and what closing each site would change there. */
@Command(
        name = "apportion",
        mixinStandardHelpOptions = true,
        description = {
            "Shares out what arrives at places to the sites above them, and tells what closing each site would change.",
            "Shares are at the solids and water of the run; closing is a run without the site, its solids and its water.",
            "Where sites have field notes, also tells which of them makes each value uncertain, by its low and high estimate.",
            "Writes tables/apportion.csv (and tornado.csv), pictures for each place, and run.json, the record of the run."
        },
        footer = {"", "Example: silverwake apportion scenarios/lantern --at Bec-Quinquet"})
public final class ApportionCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SCENARIO",
            description = "A folder that holds scenario.xlsx or scenario.yaml, or such a file.")
    private Path scenario;

    @Option(
            names = "--at",
            paramLabel = "PLACE",
            description = "Name of a place of the scenario; may be given several times (default all places).")
    private List<String> at = List.of();

    @Option(names = "--out", paramLabel = "DIR", description = "Where results go (default out/<scenario>-apportion).")
    private Optional<Path> out;

    @Mixin
    private FormatsOption pictures;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        Path target = out.orElseGet(() -> RunCommand.defaultOut(scenario, "apportion"));
        OutputFolder folder = OutputFolder.begin(target);
        try {
            Apportioned apportioned = ApportionRun.run(scenario, at, step -> {});
            ApportionTable.write(apportioned, folder.path().resolve("tables").resolve("apportion.csv"));
            MapFiles files = new MapFiles(folder.path().resolve("shares"), pictures.formats());
            ShareCharts.draw(apportioned, files);
            List<Swing> swings = SwingRun.run(apportioned);
            if (!swings.isEmpty()) {
                TornadoTable.write(
                        apportioned, swings, folder.path().resolve("tables").resolve("tornado.csv"));
                Tornadoes.draw(apportioned, swings, files.in(folder.path().resolve("tornadoes")));
            }
            RunRecord.write(
                    apportioned.outcome(), Silverwake.VERSION, folder.path().resolve("run.json"));
            folder.complete();
            ApportionSummary.print(apportioned, target, print);
        } finally {
            folder.discard();
        }
        return 0;
    }
}
