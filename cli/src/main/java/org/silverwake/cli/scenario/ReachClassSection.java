// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.silverwake.cli.scenario.Key.quantity;
import static org.silverwake.cli.scenario.Key.word;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ReachClass.Selection;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;

/** Legal classes and uses of reaches; whether their reaches are there is seen once the river layer is read. */
final class ReachClassSection {
    private static final String EACH = "reach-classes.*.";
    private static final String RANGE = EACH + "ranges.*.";
    private static final String NONE = "none";
    private static final String WAYS = "column with values, ranges, polygons, or default: true";

    private ReachClassSection() {}

    static void keys(List<Key> keys) {
        keys.add(word(EACH + "guidelines", Kind.TEXT, "required", "list of ids of the values compared on its reaches"));
        keys.add(word(EACH + "use", Kind.TEXT, NONE, "what its water is used for, in words"));
        keys.add(word(EACH + "legal", Kind.TEXT, NONE, "where the class is laid down, in words"));
        keys.add(word(EACH + "default", Kind.FLAG, "false", "true: the reaches of no other class"));
        keys.add(word(EACH + "column", Kind.TEXT, NONE, "column of the river layer that tells the class"));
        keys.add(word(EACH + "values", Kind.TEXT, "required by column", "value or list of values in that column"));
        keys.add(word(
                RANGE + "from",
                Kind.TEXT,
                "required",
                "feature id, or name of a site, place, gauge or abstraction, where a stretch begins"));
        keys.add(word(RANGE + "to", Kind.TEXT, "the outlet", "feature id or point where it ends, downstream"));
        keys.add(chainage("from-chainage", "the feature's upstream end"));
        keys.add(chainage("to-chainage", "the feature's downstream end"));
        keys.add(word(
                EACH + "polygons.file",
                Kind.FILE,
                "required",
                "layer of polygons; a reach belongs to it if more than half of it lies within"));
        keys.add(word(EACH + "polygons.layer", Kind.TEXT, "the only one", "layer of the file"));
        keys.add(word(EACH + "polygons.crs", Kind.TEXT, "as in the file", "coordinate system where the file has none"));
        keys.add(word(EACH + "polygons.filter", Kind.TEXT, NONE, "ECQL filter to choose polygons"));
    }

    private static Key chainage(String name, String fallback) {
        return quantity(
                RANGE + name,
                Dimension.LENGTH,
                "km",
                0,
                100_000,
                fallback,
                "distance along that feature in flow direction, from its upstream end");
    }

    /** Every guideline id that a class names. */
    static List<String> guidelines(ScenarioValue section) {
        return section.names().stream()
                .flatMap(name -> section.at(name).at("guidelines").texts().stream())
                .distinct()
                .toList();
    }

    static List<ReachClass> read(ScenarioValue section, Optional<Path> ownGuidelines, Sources sources) {
        if (section.isPresent() && !section.isMap()) {
            section.problemUnlessScalar("is no map; give names of classes, each with " + WAYS + ", and guidelines");
        }
        Optional<GuidelineLibrary> library = library(ownGuidelines);
        List<ReachClass> classes = new ArrayList<>();
        String rest = "";
        for (String name : section.names()) {
            ScenarioValue value = section.at(name);
            ScenarioValue guidelines = value.at("guidelines");
            if (guidelines.texts().isEmpty()) {
                guidelines.missing();
            }
            library.ifPresent(known ->
                    guidelines.items().forEach(item -> item.text().ifPresent(id -> check(id, item, known))));
            Optional<Selection> selection = selection(value, sources);
            if (selection.isPresent() && selection.get() instanceof ReachClass.Rest) {
                if (!rest.isEmpty()) {
                    value.at("default").problem("is true at " + rest + " already; only one class can have the rest");
                }
                rest = name;
            }
            String use = value.at("use").text().orElse("");
            String legal = value.at("legal").text().orElse("");
            selection.ifPresent(
                    s -> classes.add(new ReachClass(value.where(), name, guidelines.texts(), use, legal, s)));
        }
        return classes;
    }

    /** Empty where the user's own table is at fault, which is told elsewhere. */
    private static Optional<GuidelineLibrary> library(Optional<Path> own) {
        try {
            return Optional.of(GuidelineFiles.library(own));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    private static void check(String id, ScenarioValue item, GuidelineLibrary library) {
        try {
            Guideline guideline = library.require(id);
            boolean compared =
                    guideline.scope() == Medium.Scope.REACH || guideline.scope() == Medium.Scope.DRINKING_PLACE;
            if (!compared) {
                item.warn(
                        id + " is a value of " + guideline.observable().medium().word() + ", which is "
                                + guideline.scope().words() + ", in no class");
            }
        } catch (IllegalArgumentException e) {
            item.problem(e.getMessage());
        }
    }

    /** Every key is read, so that none is passed over; exactly one way must be there. */
    private static Optional<Selection> selection(ScenarioValue value, Sources sources) {
        List<Selection> found = new ArrayList<>();
        ScenarioValue column = value.at("column");
        ScenarioValue values = value.at("values");
        List<String> wanted = values.texts();
        column.text().ifPresent(name -> found.add(new ReachClass.ByColumn(name, wanted)));
        if (column.isPresent() && !values.isPresent()) {
            values.missing();
        }
        if (values.isPresent() && !column.isPresent()) {
            values.problem("are given without column; name the column of the river layer that holds them");
        }
        ScenarioValue ranges = value.at("ranges");
        List<ReachClass.Range> along = new ArrayList<>();
        ranges.items().forEach(item -> along.add(range(item)));
        if (ranges.isPresent()) {
            found.add(new ReachClass.Along(along));
        }
        polygons(value.at("polygons"), sources).ifPresent(found::add);
        if (value.at("default").flag(false)) {
            found.add(new ReachClass.Rest());
        }
        if (found.size() > 1) {
            value.problem("says in " + found.size() + " ways which reaches belong to it; keep one of " + WAYS
                    + " (a second class may have the same guidelines)");
        } else if (found.isEmpty() && !value.at("polygons").isPresent() && !values.isPresent() && !column.isPresent()) {
            value.problem("does not say which reaches belong to it; give " + WAYS);
        }
        return found.stream().findFirst();
    }

    private static ReachClass.Range range(ScenarioValue item) {
        return new ReachClass.Range(
                item.at("from").requireText(),
                item.at("to").text(),
                item.at("from-chainage").quantity(),
                item.at("to-chainage").quantity());
    }

    private static Optional<Selection> polygons(ScenarioValue polygons, Sources sources) {
        if (!polygons.isPresent()) {
            return Optional.empty();
        }
        ScenarioValue file = polygons.at("file");
        if (!file.isPresent()) {
            file.missing();
        }
        Optional<String> layer = polygons.at("layer").text();
        Optional<String> crs = polygons.at("crs").text();
        Optional<String> filter = polygons.at("filter").text();
        return sources.find("polygons", file).map(found -> new ReachClass.Within(found, layer, crs, filter));
    }
}
