// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Effluent;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.Outfall;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;
import org.silverwake.cli.scenario.ScenarioInput.Tailings;
import org.silverwake.model.quantity.Dimension;

/** The table of discharge points. */
final class SitesTable {
    private static final List<String> PATHS = List.of("slurry", "leach-tank", "seepage", "erosion", "runoff");
    private static final List<String> OUTFALLS = List.of("bank", "mid-channel");

    private static final String FURTHER_BLANK =
            "; none if blank, but where the split is not known and such mercury is carried, all of it as one extreme";

    private static final Key RELEASE =
            Key.quantity("release", Dimension.MASS_FLOW, "kg/yr", 0, 1e6, "", "mercury released");
    private static final Key TAILINGS =
            Key.quantity("tailings", Dimension.MASS_FLOW, "t/yr", 0, 1e9, "", "dry tailings released");
    private static final Key CONTENT = Key.quantity(
            "content", Dimension.MASS_CONTENT, "mg/kg", 0, 1e6, "", "mercury content of the tailings, dry");
    private static final Key EFFLUENT =
            Key.quantity("effluent", Dimension.DISCHARGE, "L/s", 0, 1e6, "", "effluent, itself added water");
    private static final Key CONCENTRATION =
            Key.quantity("concentration", Dimension.CONCENTRATION, "ug/L", 0, 1e8, "", "mercury in the effluent");
    private static final Key WATER =
            Key.quantity("water", Dimension.DISCHARGE, "L/s", 0, 1e6, "", "water added with slurry; none if blank");
    private static final Key EXCHANGEABLE = share(
            "exchangeable_share",
            "share of what is in none of the forms of share_... that is exchangeable, the rest grain-bound; blank if not known");
    private static final Map<FurtherForm, Key> FURTHER = Map.of(
            FurtherForm.DROPLETS,
            share("share_droplets", "share of the mercury that is liquid droplets" + FURTHER_BLANK),
            FurtherForm.COMPLEX,
            share("share_complex", "share of the mercury that is bound to cyanide" + FURTHER_BLANK),
            FurtherForm.ELEMENTAL,
            share("share_elemental", "share of the mercury that is dissolved Hg(0); none if blank"),
            FurtherForm.METHYL,
            share("share_methyl", "share of the mercury that is MeHg; none if blank"));
    private static final Key YEAR_SHARE = share("year_share_STATE", "share of the year's release in each flow state");
    private static final Key CLASS_SHARE = share(
            "class_CLASS", "share of grain-bound mercury and of tailings solids; blank is the class's tailings-share");

    /** The columns, for the reference page. */
    static final List<Key> KEYS = List.of(
            Key.word("name", Kind.TEXT, "", "required, each once"),
            Key.word("group", Kind.TEXT, "", "group of sites it belongs to; its own if blank"),
            Key.choice("path", PATHS, "", "required without field notes: how mercury leaves the site"),
            RELEASE,
            TAILINGS,
            CONTENT,
            EFFLUENT,
            CONCENTRATION,
            CyanideCells.KEYS.get(0),
            CyanideCells.KEYS.get(1),
            Key.word(
                    "release_STATE, tailings_STATE, effluent_STATE, cyanide_STATE, water_STATE",
                    Kind.TEXT,
                    "",
                    "as above, one for each flow state"),
            YEAR_SHARE,
            EXCHANGEABLE,
            FURTHER.get(FurtherForm.DROPLETS),
            FURTHER.get(FurtherForm.COMPLEX),
            FURTHER.get(FurtherForm.ELEMENTAL),
            FURTHER.get(FurtherForm.METHYL),
            CLASS_SHARE,
            WATER,
            Key.choice("outfall", OUTFALLS, "", "where in the cross-section it enters; bank if blank"),
            Key.word("river", Kind.TEXT, "", "name of the river it should lie on"),
            Key.word("note", Kind.TEXT, "", "free"));

    private final StateNames states;
    private final List<SolidsClass> classes;
    private final Set<String> noted = new HashSet<>();
    private final Problems problems;

    /** Sites that field notes tell of give no release of their own. */
    SitesTable(StateNames states, List<SolidsClass> classes, List<FieldNotesPlan.NotedSite> notes, Problems problems) {
        this.states = states;
        this.classes = classes;
        notes.forEach(each -> noted.add(each.site()));
        this.problems = problems;
    }

    List<Site> read(List<Table> tables) {
        List<Site> sites = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Table table : tables) {
            Table checked = table.checkColumns(
                    columns(), noted.isEmpty() ? List.of("name", "path") : List.of("name"), problems);
            for (TableRow row : checked.read(problems)) {
                sites.add(site(row, seen));
            }
        }
        return sites;
    }

    /** Columns that the table may have, besides those that begin with note. */
    Set<String> columns() {
        Set<String> known = new LinkedHashSet<>(List.of("name", "group", "path", "exchangeable_share"));
        FURTHER.values().forEach(key -> known.add(key.path()));
        known.addAll(PositionCells.COLUMNS);
        for (String stem : List.of("release", "tailings", "effluent", "water")) {
            known.addAll(List.of(stem, stem + "_unit"));
            known.addAll(states.columns(stem));
        }
        known.addAll(List.of("content", "content_unit", "concentration", "concentration_unit"));
        known.addAll(CyanideCells.columns(states));
        known.addAll(states.columns("year_share"));
        classes.forEach(c -> known.add(classColumn(c)));
        known.addAll(List.of("outfall", "river", "note"));
        return known;
    }

    private Site site(TableRow row, Set<String> seen) {
        String name = row.requireName(seen);
        Optional<List<Double>> mercury = row.byState("release", RELEASE, states);
        Optional<List<Double>> mass = row.byState("tailings", TAILINGS, states);
        Optional<List<Double>> flow = row.byState("effluent", EFFLUENT, states);
        boolean isNoted = noted.contains(name);
        int ways = (mercury.isPresent() ? 1 : 0) + (mass.isPresent() ? 1 : 0) + (flow.isPresent() ? 1 : 0);
        if (isNoted && ways > 0) {
            row.problem("release, tailings, effluent", "stand beside field notes of the site; keep one of them");
        } else if (!isNoted && ways != 1) {
            row.problem(
                    "release, tailings, effluent",
                    (ways == 0 ? "none is given" : "several are given")
                            + "; give exactly one: release, or tailings with content, or effluent with concentration; or field notes");
        }
        double content = partner(row, "tailings", mass.isPresent(), "content", CONTENT);
        double concentration = partner(row, "effluent", flow.isPresent(), "concentration", CONCENTRATION);
        if (concentration > StatesSection.SOLUBILITY && !isLeachTank(row)) {
            row.warn("concentration", "is above 60 ug/L, the solubility of Hg(0); check the unit");
        }
        YearShares year = yearShares(row);
        Optional<List<Double>> effluent = flow.map(year::spread);
        List<Double> water = water(row, effluent);
        Optional<List<Double>> cyanide = CyanideCells.read(row, states, water, year::spread);
        return new Site(
                row.where(),
                name,
                row.text("group").orElse(name),
                row.position(),
                path(row, isNoted, cyanide.isPresent()),
                mercury.map(year::spread),
                mass.map(m -> new Tailings(year.spread(m), content)),
                effluent.map(f -> new Effluent(f, concentration)),
                cyanide,
                row.number("exchangeable_share", EXCHANGEABLE),
                furtherShares(row),
                classShares(row),
                water,
                outfall(row),
                row.text("river"),
                row.text("note").orElse(""));
    }

    /** Cyanide holds far more mercury in solution: barren solutions of 0.1 to 10 mg/L (from memory). */
    private static boolean isLeachTank(TableRow row) {
        return row.text("path")
                .filter(p -> p.strip().equalsIgnoreCase("leach-tank"))
                .isPresent();
    }

    private double partner(TableRow row, String first, boolean given, String second, Key key) {
        OptionalDouble value = row.quantity(second, key, second + "_unit");
        if (given != row.has(second)) {
            row.problem(
                    given ? second : first,
                    "is blank while " + (given ? first : second) + " is given; give both, or neither");
        }
        return value.orElse(0);
    }

    /** Effluent is itself added water; slurry water stands in its own column. */
    private List<Double> water(TableRow row, Optional<List<Double>> effluent) {
        Optional<List<Double>> water = row.byState("water", WATER, states);
        if (effluent.isPresent() && water.isPresent()) {
            row.problem("water", "stands beside effluent, which is itself the water added; leave it blank");
        }
        return effluent.or(() -> water).orElse(states.same(0));
    }

    private ReleasePath path(TableRow row, boolean isNoted, boolean isCyanideGiven) {
        String word = (isNoted
                        ? row.text("path").orElse(PATHS.get(0))
                        : row.requireText("path", String.join(" or ", PATHS)))
                .toLowerCase(Locale.ROOT);
        int index = PATHS.indexOf(word.replaceAll("[\\s_]+", "-"));
        if (index < 0 && !word.isEmpty()) {
            row.problem("path", "\"" + word + "\" is not known; give " + String.join(" or ", PATHS));
        }
        ReleasePath path = ReleasePath.values()[Math.max(0, index)];
        if (path == ReleasePath.LEACH_TANK && !isCyanideGiven) {
            row.warn("path", "is a leach tank: cyanide was not assessed; give cyanide or cyanide_concentration");
        }
        return path;
    }

    private Outfall outfall(TableRow row) {
        String word = row.text("outfall").orElse("bank").toLowerCase(Locale.ROOT);
        int index = OUTFALLS.indexOf(word.replaceAll("[\\s_]+", "-"));
        if (index < 0) {
            row.problem("outfall", "\"" + word + "\" is not known; give " + String.join(" or ", OUTFALLS));
        }
        return Outfall.values()[Math.max(0, index)];
    }

    private static Map<FurtherForm, Double> furtherShares(TableRow row) {
        Map<FurtherForm, Double> shares = new EnumMap<>(FurtherForm.class);
        double sum = 0;
        for (FurtherForm form : FurtherForm.values()) {
            OptionalDouble share = row.number(FURTHER.get(form).path(), FURTHER.get(form));
            if (share.isPresent()) {
                shares.put(form, share.getAsDouble());
                sum += share.getAsDouble();
            }
        }
        if (sum > 1 + StatesSection.SHARE_TOLERANCE) {
            row.problem(
                    "share_droplets, share_complex, share_elemental, share_methyl",
                    "sum to " + Key.show(sum) + "; give shares of the site's mercury that sum to at most 1");
        }
        return shares;
    }

    private List<Double> classShares(TableRow row) {
        List<Double> shares = new ArrayList<>();
        double sum = 0;
        for (SolidsClass each : classes) {
            double share = row.number(classColumn(each), CLASS_SHARE).orElse(each.tailingsShare());
            shares.add(share);
            sum += share;
        }
        boolean given = classes.stream().anyMatch(c -> row.has(classColumn(c)));
        if (given && Math.abs(sum - 1) > StatesSection.SHARE_TOLERANCE) {
            row.problem(
                    "class shares",
                    "sum to " + Key.show(sum)
                            + " (a blank one counts with its tailings-share); give shares that sum to 1");
        }
        return shares;
    }

    private static Key share(String column, String meaning) {
        return Key.quantity(column, Dimension.DIMENSIONLESS, "-", 0, 1, "", meaning);
    }

    private static String classColumn(SolidsClass solidsClass) {
        return "class_" + Table.columnName(solidsClass.name());
    }

    private YearShares yearShares(TableRow row) {
        Optional<List<Double>> shares = row.byState("year_share", YEAR_SHARE, states);
        if (shares.isEmpty()) {
            return new YearShares(states.same(1));
        }
        double sum = shares.get().stream().mapToDouble(s -> s).sum();
        if (Math.abs(sum - 1) > StatesSection.SHARE_TOLERANCE) {
            row.problem("year_share", "sums to " + Key.show(sum) + " over the flow states; give shares that sum to 1");
        }
        for (String stem : List.of("release", "tailings", "effluent", "cyanide")) {
            if (states.columns(stem).stream().anyMatch(row::has)) {
                row.problem("year_share", "stands beside " + stem + " per flow state; keep one way");
            }
        }
        List<Double> factors = new ArrayList<>();
        for (int s = 0; s < states.size(); s++) {
            double ofYear = states.shares().get(s);
            double share = shares.get().get(s);
            if (ofYear == 0 && share > 0) {
                row.problem(
                        "year_share",
                        "gives a release to flow state " + states.names().get(s)
                                + ", whose share-of-year is 0; give 0");
            }
            factors.add(share == 0 ? 0 : share / ofYear);
        }
        return new YearShares(factors);
    }

    /** Factors from the year's mean rate to the rate in each state: a_s/p_s (model.md, discharge points). */
    private record YearShares(List<Double> factors) {
        List<Double> spread(List<Double> rates) {
            List<Double> spread = new ArrayList<>();
            for (int s = 0; s < rates.size(); s++) {
                spread.add(rates.get(s) * factors.get(s));
            }
            return spread;
        }
    }
}
