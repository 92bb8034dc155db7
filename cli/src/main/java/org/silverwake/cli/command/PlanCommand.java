// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.PlanPictures;
import org.silverwake.cli.report.PlanSummary;
import org.silverwake.cli.report.PlanTables;
import org.silverwake.cli.report.RunRecord;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.run.PlanRun;
import org.silverwake.cli.run.Planned;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The cheapest set of practices that brings places under guideline values. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = {
            "Looks for the cheapest set of practices that brings places under guideline values, each set judged by a full run.",
            "Needs field notes of sites and a table of practices. Writes tables of the set, of what becomes of each value,",
            "of what each budget buys and of the cuts that releases need, and a chart of cost against benefit."
        },
        footer = {
            "",
            "Example: silverwake plan scenarios/lantern/today.yaml --at Mwangurobe --guideline CCME-FW-iHg --state dry"
        })
public final class PlanCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SCENARIO",
            description = "A folder that holds scenario.xlsx or scenario.yaml, or such a file.")
    private Path scenario;

    @Option(
            names = "--at",
            paramLabel = "PLACE",
            description = "Place to bring under the values; may be given several times (default all places).")
    private List<String> at = List.of();

    @Option(
            names = "--guideline",
            paramLabel = "ID",
            description = "Value to come under; may be given several times (default all that the scenario uses).")
    private List<String> guidelines = List.of();

    @Option(
            names = "--state",
            paramLabel = "STATE",
            description = "Flow state, alone; may be given several times (default the year as each value asks).")
    private List<String> states = List.of();

    @Option(names = "--in-part", description = "A practice may be taken up by a share of a site's sheds.")
    private boolean inPart;

    @Option(names = "--out", paramLabel = "DIR", description = "Where results go (default out/<scenario>-plan).")
    private Optional<Path> out;

    @Mixin
    private FormatsOption pictures;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        Path target = out.orElseGet(() -> RunCommand.defaultOut(scenario, "plan"));
        OutputFolder folder = OutputFolder.begin(target);
        try {
            Planned planned = PlanRun.run(scenario, new PlanRun.Asked(at, guidelines, states, inPart), step -> {});
            PlanTables.write(planned, folder.path().resolve("tables"));
            PlanPictures.draw(planned, new MapFiles(folder.path(), pictures.formats()));
            RunRecord.write(planned.outcome(), Silverwake.VERSION, folder.path().resolve("run.json"));
            folder.complete();
            PlanSummary.print(planned, target, print);
        } finally {
            folder.discard();
        }
        return 0;
    }
}
