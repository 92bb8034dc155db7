// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.silverwake.cli.compare.ComparePictures;
import org.silverwake.cli.compare.CompareSummary;
import org.silverwake.cli.compare.CompareTables;
import org.silverwake.cli.compare.Comparison;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.sheet.ChangeSheets;
import org.silverwake.geo.map.MapFormat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changes from one scenario to others. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = {
            "Runs scenarios of one river and sets them side by side: kilograms by path, people, intakes and river by answer,",
            "maps of what changes, profiles with all of them. The first is what the others are compared with."
        },
        footer = {"", "Example: silverwake compare scenarios/lantern scenarios/lantern/contained.yaml"})
public final class CompareCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SCENARIO",
            arity = "2..*",
            description = "Folders that hold scenario.xlsx or scenario.yaml, or such files.")
    private List<Path> scenarios;

    @Option(names = "--out", paramLabel = "DIR", description = "Where results go (default out/compare).")
    private Optional<Path> out;

    @Option(
            names = "--without-sites",
            description =
                    "Leave single sites off maps, profiles and sheets, so that they may be posted; tables keep them.")
    private boolean withoutSites;

    @Mixin
    private FormatsOption pictures;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (scenarios.size() < 2) {
            throw new ParameterException(spec.commandLine(), "give at least two scenarios");
        }
        PrintWriter print = spec.commandLine().getOut();
        Path target = out.orElse(Path.of("out", "compare"));
        OutputFolder folder = OutputFolder.begin(target);
        try {
            List<Outcome> outcomes = new ArrayList<>();
            for (Path scenario : scenarios) {
                Outcome found = MainRun.run(scenario, step -> {});
                outcomes.add(withoutSites ? found.forEverybody() : found);
            }
            Comparison comparison = Comparison.of(scenarios, outcomes);
            CompareTables.write(comparison, folder.path().resolve("tables"));
            ComparePictures.draw(comparison, folder.path(), pictures.formats(), withoutSites);
            ChangeSheets.draw(comparison, folder.path().resolve("sheets"), Set.of(MapFormat.PDF));
            folder.complete();
            CompareSummary.print(comparison, print);
            print.println("written to " + target);
            print.flush();
        } finally {
            folder.discard();
        }
        return 0;
    }
}
