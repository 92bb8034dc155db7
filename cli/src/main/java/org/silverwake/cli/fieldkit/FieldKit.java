// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.ChosenGuidelines;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.place.PlacedPoint;

/** Writes the field kit of a scenario: sheets and labels as PDF, and the table in which results come back. */
public final class FieldKit {
    /** Samples for which one duplicate and one field blank are taken, unless told otherwise: common practice, no source. */
    public static final int EVERY = 10;

    private static final List<String> FILES = List.of("field-sheets.pdf", "labels.pdf", "results.csv");

    private FieldKit() {}

    /**
     * Writes.
     *
     * @param scenario with at least one place
     * @param basin its river
     * @param folder where the files go; made if absent
     * @param every samples of a kind for which one duplicate and one blank are taken, at least 1
     * @return lines that say what was written
     * @throws ScenarioException if there is no place, or a file is in the way
     */
    public static List<String> write(ScenarioInput scenario, Basin basin, Path folder, int every) {
        if (scenario.places().isEmpty()) {
            throw new ScenarioException(
                    List.of("places: none; field sheets are for places: list them in a table and name it"
                            + " under places.file"));
        }
        if (every < 1) {
            throw new ScenarioException(List.of("--one-in " + every + ": give a whole number, 1 or more"));
        }
        ScenarioInput.Project project = scenario.project();
        SamplePlan plan = SamplePlan.of(project.title(), stops(scenario, basin), ChosenGuidelines.of(scenario), every);
        List<String> states =
                scenario.states().stream().map(ScenarioInput.FlowState::name).toList();
        Kit kit = new Kit(project.title(), project.preparedBy(), project.date(), states, every, plan, new KitWords());
        refuseToOverwrite(folder);
        sheets(kit, folder.resolve(FILES.get(0)));
        labels(kit, folder.resolve(FILES.get(1)));
        ResultsTemplate.write(
                plan, folder.resolve(FILES.get(2)), scenario.outputs().tables());
        return List.of(
                plan.stops().size() + " places, " + plan.bottles().size()
                        + " bottles, duplicates and field blanks counted in",
                "written to " + folder + ": " + String.join(", ", FILES));
    }

    /** Filled-in results may stand under these names. */
    private static void refuseToOverwrite(Path folder) {
        List<String> problems = new ArrayList<>();
        for (String name : FILES) {
            if (Files.exists(folder.resolve(name))) {
                problems.add(folder.resolve(name) + ": is there already; move it, or give another folder");
            }
        }
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Stop> stops(ScenarioInput scenario, Basin basin) {
        List<PlacedPoint> points = basin.points("place");
        List<Stop> stops = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            ScenarioInput.Place place = scenario.places().get(i);
            PlacedPoint point = points.get(i);
            String river = basin.reach(basin.reachAt(point))
                    .name()
                    .map(name -> name + ", ")
                    .orElse("");
            String reference = river + "feature " + point.featureId() + ", "
                    + Numbers.shown(point.chainageMeters(), 5) + " m from its upper end; the river is "
                    + Numbers.shown(point.distanceMeters(), 3) + " m from this point, at latitude "
                    + Numbers.degrees(point.snappedLatitude()) + ", longitude "
                    + Numbers.degrees(point.snappedLongitude());
            stops.add(
                    new Stop(place.name(), point.longitude(), point.latitude(), reference, place.uses(), place.note()));
        }
        return stops;
    }

    private static void sheets(Kit kit, Path file) {
        try (PdfBook book = new PdfBook(kit.title(), kit.date())) {
            new SummarySheet(kit).draw(book);
            new FieldSheets(kit).draw(book);
            new CustodyForm(kit).draw(book);
            book.save(file);
        }
    }

    private static void labels(Kit kit, Path file) {
        try (PdfBook book = new PdfBook(kit.title(), kit.date())) {
            new LabelSheets(kit).draw(book);
            book.save(file);
        }
    }
}
