// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.silverwake.cli.page.ReportPage;
import org.silverwake.cli.report.FormStacks;
import org.silverwake.cli.report.Layers;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.Maps;
import org.silverwake.cli.report.Profiles;
import org.silverwake.cli.report.RunRecord;
import org.silverwake.cli.report.RunSummary;
import org.silverwake.cli.report.Tables;
import org.silverwake.cli.report.YearsPictures;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.sheet.PhoneMaps;
import org.silverwake.cli.sheet.PrintedSheets;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.map.MapFormat;
import org.silverwake.geo.map.OwnStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The main job: maps, profiles, sheets, page, tables, layers, the record of the run. */
@Command(
        name = "run",
        mixinStandardHelpOptions = true,
        description =
                "Runs a scenario: maps, profiles, printed sheets, the report page, tables, layers and the record of the run.",
        footer = {"", "Example: silverwake run scenarios/lantern --out out/lantern"})
public final class RunCommand implements Callable<Integer> {
    @Parameters(
            paramLabel = "SCENARIO",
            description = "A folder that holds scenario.xlsx or scenario.yaml, or such a file.")
    private Path scenario;

    @Option(names = "--out", paramLabel = "DIR", description = "Where results go (default out/<scenario>).")
    private Optional<Path> out;

    @Option(names = "--all", description = "Draw every guideline's map, not only the scenario's one.")
    private boolean all;

    @Option(
            names = "--without-sites",
            description =
                    "Leave single sites off maps, profiles, sheets and page, so that they may be posted; tables and layers"
                            + " keep them.")
    private boolean withoutSites;

    @Option(
            names = "--sheets",
            split = ",",
            paramLabel = "FORMAT",
            defaultValue = "pdf",
            converter = FormatsOption.Format.class,
            description =
                    "What printed sheets are written as, one or more of png, svg, pdf with commas between (default pdf).")
    private Set<MapFormat> sheets = new LinkedHashSet<>();

    @Option(
            names = "--style",
            paramLabel = "FILE",
            description = "Draw the reaches of flow states' maps by an SLD 1.0 or SE 1.1 file of your own.")
    private Optional<Path> style;

    @Mixin
    private RunFormatsOption formats;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        Map<String, Long> times = new LinkedHashMap<>();
        long began = System.nanoTime();
        StopWatch watch = new StopWatch(times);
        Path target = out.orElseGet(() -> defaultOut(scenario));
        Optional<OwnStyle> own = style.map(this::styleFile);
        OutputFolder folder = OutputFolder.begin(target);
        try {
            Outcome found = MainRun.run(scenario, watch::step);
            Outcome outcome = withoutSites ? found.forEverybody() : found;
            own.ifPresent(read -> requireColumns(read, outcome));
            FutureTask<Void> written = new FutureTask<>(() -> write(outcome, folder.path()), null);
            Thread writing = new Thread(written, "writing");
            writing.start();
            try {
                draw(outcome, own, folder.path(), watch);
            } finally {
                watch.step("wait for what is written beside the drawing");
                join(writing);
            }
            done(written);
            watch.end();
            times.put("all", (System.nanoTime() - began) / StopWatch.NANOS);
            RunRecord.timing(times, folder.path().resolve("timing.json"));
            folder.complete();
            RunSummary.print(outcome, target, times.get("all"), print);
        } finally {
            folder.discard();
        }
        return 0;
    }

    /** Tables, layers, record and page, while another thread draws: an outcome does not change. */
    private void write(Outcome outcome, Path folder) {
        Tables.write(outcome, folder.resolve("tables"));
        Layers.write(outcome, folder.resolve("layers"));
        RunRecord.write(outcome, Silverwake.VERSION, folder.resolve("run.json"));
        ReportPage.write(outcome, Silverwake.VERSION, folder.resolve("report.html"));
    }

    private void draw(Outcome outcome, Optional<OwnStyle> own, Path folder, StopWatch watch) {
        watch.step("draw maps");
        MapFiles files = new MapFiles(folder.resolve("maps"), formats.pictures(), formats.has(RunFormat.TIF));
        Maps.draw(outcome, files, own, all, withoutSites);
        if (formats.has(RunFormat.KMZ)) {
            PhoneMaps.write(outcome, files.folder(), all);
        }
        watch.step("draw profiles");
        MapFiles profiles = files.in(folder.resolve("profiles"));
        Profiles.draw(outcome, profiles, withoutSites);
        FormStacks.draw(outcome, profiles, withoutSites);
        watch.step("draw sheets");
        PrintedSheets.draw(outcome, folder.resolve("sheets"), sheets);
        watch.step("draw years");
        YearsPictures.draw(outcome, files.in(folder.resolve("years")));
    }

    /** Waits also when interrupted, so that nothing is written into a folder that is gone; the interrupt is kept. */
    private static void join(Thread thread) {
        boolean interrupted = false;
        while (true) {
            try {
                thread.join();
                break;
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Throws what a task that has ended threw. */
    private static void done(FutureTask<Void> task) {
        try {
            task.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private OwnStyle styleFile(Path file) {
        try {
            return OwnStyle.read(file);
        } catch (GeoDataException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    private void requireColumns(OwnStyle read, Outcome outcome) {
        List<String> unknown = read.unknown(Layers.columns(outcome));
        if (!unknown.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    read.name() + ": reaches have no column " + String.join(", ", unknown) + "; they have "
                            + String.join(", ", Layers.columns(outcome)));
        }
    }

    /** out/ and the scenario folder's name, with that of the file where it has one of its own, below the working directory. */
    static Path defaultOut(Path scenario) {
        Path absolute = scenario.toAbsolutePath().normalize();
        boolean file = absolute.getFileName() != null
                && (Scenarios.isWorkbook(absolute) || absolute.toString().endsWith(".yaml"));
        if (!file) {
            return Path.of("out").resolve(String.valueOf(absolute.getFileName()));
        }
        String name = absolute.getFileName().toString().replaceAll("\\.[^.]*$", "");
        return Path.of("out").resolve(absolute.getParent().getFileName() + (name.equals("scenario") ? "" : "-" + name));
    }

    /** The same with a word behind it, so that a run's own output is not replaced. */
    static Path defaultOut(Path scenario, String word) {
        Path usual = defaultOut(scenario);
        return usual.resolveSibling(usual.getFileName() + "-" + word);
    }

    /** Wall time of each step. */
    private static final class StopWatch {
        static final long NANOS = 1_000_000;
        private final Map<String, Long> times;
        private String current = "";
        private long since;

        StopWatch(Map<String, Long> times) {
            this.times = times;
        }

        void step(String name) {
            end();
            current = name;
            since = System.nanoTime();
        }

        void end() {
            if (!current.isEmpty()) {
                times.merge(current, (System.nanoTime() - since) / NANOS, Long::sum);
            }
            current = "";
        }
    }
}
