// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.Background;
import org.silverwake.cli.scenario.ScenarioInput.Bed;
import org.silverwake.cli.scenario.ScenarioInput.Discharge;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.Gauge;
import org.silverwake.cli.scenario.ScenarioInput.Guidelines;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.cli.scenario.ScenarioInput.Project;
import org.silverwake.cli.scenario.ScenarioInput.Rivers;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.ScenarioInput.Solids;
import org.silverwake.model.input.Settings;
import org.silverwake.model.quantity.LocalUnits;
import org.silverwake.model.release.NoteFinding;
import org.silverwake.model.release.NotesException;

/** Reads a scenario and its tables into a {@link ScenarioInput}, every value checked and in SI. */
public final class ScenarioReader {
    /** Name of the scenario file in its folder. */
    public static final String FILE = "scenario.yaml";

    private static final LocalDate NO_DATE = LocalDate.EPOCH;

    private final Problems problems;
    private final Sources sources;

    private ScenarioReader(Sources sources, Problems problems) {
        this.sources = sources;
        this.problems = problems;
    }

    /**
     * Reads a scenario whose tables are CSV files.
     *
     * @param folderOrFile the scenario's folder, or its YAML file
     * @throws ScenarioException with all problems found
     */
    public static ScenarioInput read(Path folderOrFile) {
        return read(folderOrFile, file -> {
            throw new IllegalArgumentException(file.getFileName() + " is not a table; give a .csv file");
        });
    }

    /**
     * Reads a scenario whose tables are CSV files or point layers.
     *
     * @param folderOrFile the scenario's folder, or its YAML file
     * @param points reads tables that are not CSV files
     * @throws ScenarioException with all problems found
     */
    public static ScenarioInput read(Path folderOrFile, PointTable points) {
        Path file = Files.isDirectory(folderOrFile) ? folderOrFile.resolve(FILE) : folderOrFile;
        if (!Files.isRegularFile(file)) {
            throw new ScenarioException(
                    List.of(folderOrFile + ": there is no scenario here; give a folder that holds " + FILE));
        }
        return read(file, YamlFile::read, points);
    }

    /**
     * Reads a scenario by some door.
     *
     * @param file the scenario's file; other files are relative to its folder
     * @param door reads it
     * @param points reads tables that are not CSV files
     * @throws ScenarioException with all problems found
     */
    public static ScenarioInput read(Path file, ScenarioDoor door, PointTable points) {
        Problems problems = new Problems();
        Optional<Written> written = door.open(file, problems);
        if (written.isEmpty()) {
            problems.requireNone();
        }
        Path folder = file.toAbsolutePath().getParent();
        Sources sources = new Sources(folder, points, written.orElseThrow().tables(), problems);
        return new ScenarioReader(sources, problems).readAll(folder, file, written.get());
    }

    private ScenarioInput readAll(Path folder, Path file, Written written) {
        ScenarioValue root = withUnits(ScenarioValue.root(written.place(), written.root(), problems));
        root.checkKeys();
        sources.add("scenario", file.getFileName());
        Settings settings = SettingsSection.read(root);
        List<FlowState> states = StatesSection.read(root.at("flow-states"), settings);
        StateNames names = StateNames.of(states);
        Rivers rivers = RiversSection.read(root.at("rivers"), sources, settings, names);
        Discharge discharge = WaterSection.discharge(root.at("discharge"), rivers, settings, names);
        Solids solids = SolidsSection.read(root.at("solids").at("classes"), settings);
        PracticesSection practices = new PracticesSection(names, problems);
        List<FieldNotesPlan.NotedSite> noted = practices.notes(root.at(PracticesSection.NOTES), sources);
        SitesTable sites = new SitesTable(names, solids.classes(), noted, problems);
        PlaceTables places = new PlaceTables(names, problems);
        Project project = project(root);
        FieldNotesPlan present = practices.read(
                noted,
                root.at(PracticesSection.NOTES),
                root.at(PracticesSection.PRACTICES),
                sources,
                sites.read(siteTables(root)),
                project.date().getYear());
        FieldNotesPlan plan =
                present.trying(TrialSection.read(root.at(TrialSection.NAME), present, root.at("mercury")));
        List<Site> siteList = expanded(plan);
        List<Place> placeList = sources.table("places", root.atPath("places.file"))
                .map(places::places)
                .orElse(List.of());
        List<Gauge> gaugeList = sources.table("gauges", root.atPath("gauges.file"))
                .map(places::gauges)
                .orElse(List.of());
        Mercury mercury = FormsSection.read(root.at("mercury"), siteList, states, settings);
        ScenarioValue classes = root.at("reach-classes");
        Guidelines guidelines = OutputsSection.guidelines(
                root.at("guidelines"),
                Carried.substances(mercury, siteList),
                ReachClassSection.guidelines(classes),
                root.atPath("outputs.map"),
                sources);
        Optional<Bed> bed = BedSection.read(root, mercury, solids.classes(), settings);
        ScenarioInput input = new ScenarioInput(
                folder,
                project,
                rivers,
                states,
                discharge,
                WaterSection.channel(root.at("channel"), rivers, settings, names),
                solids,
                mercury,
                bed,
                HistorySection.read(root.at("history"), names, siteList),
                FishSection.read(root.at("fish"), mercury),
                new Background(settings.value("background.solids-mercury-content")),
                settings,
                siteList,
                plan,
                placeList,
                gaugeList,
                sources.table("abstractions", root.atPath("abstractions.file"))
                        .map(places::abstractions)
                        .orElse(List.of()),
                new SamplesSection(root.at("samples"), sources, names, problems)
                        .read(named(siteList, placeList, gaugeList)),
                WaterBodiesSection.read(root.at(WaterBodiesSection.TABLE), sources, problems),
                ReachClassSection.read(classes, guidelines.ownTable(), sources),
                CorrectionsTable.find(root.atPath("corrections.file"), sources, problems),
                guidelines,
                OutputsSection.outputs(
                        root.at("outputs"),
                        mercury,
                        bed.isPresent(),
                        new SheetsSection(root, sources),
                        project,
                        rivers.elevation().isPresent()),
                root.units().definitions(),
                sources.files(),
                problems.warnings());
        WaterSection.checkGauges(root.at("discharge"), input);
        CorrectionsTable.checkNames(input, problems);
        problems.requireNone();
        return input;
    }

    /** Discharge points of the year that is run; what is the matter with field notes is told of every site. */
    private List<Site> expanded(FieldNotesPlan plan) {
        for (FieldNotesPlan.NotedSite noted : plan.noted()) {
            Optional<Site> site = plan.sites().stream()
                    .filter(s -> s.name().equals(noted.site()))
                    .findFirst();
            if (site.isEmpty()) {
                problems.add(
                        noted.where(),
                        "\"" + noted.site() + "\" is no site of the table of sites; "
                                + Nearest.hint(
                                        noted.site(),
                                        plan.sites().stream().map(Site::name).toList()));
            }
            try {
                var balance =
                        noted.balance(site.map(NotedSites.inForce(plan)::by).orElse(List.of()), plan.year());
                balance.findings().forEach(finding -> problems.warn(noted.where(), finding.text()));
            } catch (NotesException e) {
                e.findings().stream()
                        .filter(NoteFinding::refused)
                        .forEach(finding -> problems.add(noted.where(), finding.text()));
                e.findings().stream()
                        .filter(finding -> !finding.refused())
                        .forEach(finding -> problems.warn(noted.where(), finding.text()));
            }
        }
        return problems.isNone() ? NotedSites.expand(plan, NotedSites.inForce(plan), plan.year()) : plan.sites();
    }

    /** Positions that a sample's station may name; a site's name comes last, as samples are taken at places. */
    private static Map<String, Position> named(List<Site> sites, List<Place> places, List<Gauge> gauges) {
        Map<String, Position> named = new HashMap<>();
        sites.forEach(site -> named.put(site.name(), site.position()));
        gauges.forEach(gauge -> named.put(gauge.name(), gauge.position()));
        places.forEach(place -> named.put(place.name(), place.position()));
        return named;
    }

    private static ScenarioValue withUnits(ScenarioValue root) {
        ScenarioValue section = root.at("units");
        Map<String, String> definitions = new LinkedHashMap<>();
        for (String name : section.names()) {
            section.at(name).text().ifPresent(text -> definitions.put(name, text));
        }
        return root.withUnits(
                LocalUnits.of(definitions, (name, text) -> section.at(name).problem(text)));
    }

    private List<Table> siteTables(ScenarioValue root) {
        List<Table> tables = new ArrayList<>();
        sources.file("sites", root.atPath("sites.file")).ifPresent(tables::add);
        sources.written("sites").map(t -> t.withUnits(root.units())).ifPresent(tables::add);
        InlineSites.table(root.atPath("sites.more")).ifPresent(tables::add);
        return tables;
    }

    private static Project project(ScenarioValue root) {
        ScenarioValue date = root.at("date");
        String written = date.requireText();
        LocalDate day = NO_DATE;
        if (!written.isEmpty()) {
            try {
                day = LocalDate.parse(written);
            } catch (DateTimeParseException e) {
                date.problem("\"" + written + "\" is not a date; give it as YYYY-MM-DD, such as 2026-03-04");
            }
        }
        String language = root.at("language").choice().orElse("en");
        return new Project(
                root.at("title").requireText(), root.at("prepared-by").requireText(), day, language);
    }
}
