// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.silverwake.cli.scenario.Key.choice;
import static org.silverwake.cli.scenario.Key.quantity;
import static org.silverwake.cli.scenario.Key.word;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.text.Texts;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;
import org.silverwake.model.quantity.Dimension;

/** The rows of {@link KeyTable}. */
final class KeyList {
    private static final String REQUIRED = "required";
    private static final String NONE = "none";

    private KeyList() {}

    /** All keys in the order of the reference page. */
    static List<Key> build() {
        List<Key> keys = new ArrayList<>();
        project(keys);
        units(keys);
        rivers(keys);
        states(keys);
        water(keys);
        solids(keys);
        mercury(keys);
        BedSection.keys(keys);
        HistorySection.keys(keys);
        FishSection.keys(keys);
        tables(keys);
        samples(keys);
        PracticesSection.keys(keys);
        TrialSection.keys(keys);
        WaterBodiesSection.keys(keys);
        ReachClassSection.keys(keys);
        outputs(keys);
        SheetsSection.keys(keys);
        for (Setting setting : SettingList.all()) {
            keys.addAll(Key.of(setting));
        }
        return List.copyOf(keys);
    }

    private static void project(List<Key> keys) {
        keys.add(word("title", Kind.TEXT, REQUIRED, "title of the work, on every map"));
        keys.add(word("prepared-by", Kind.TEXT, REQUIRED, "who made it, on every map"));
        keys.add(word("date", Kind.DATE, REQUIRED, "date of the work as YYYY-MM-DD, on every map"));
        keys.add(choice("language", Texts.LANGUAGES, "en", "language of sheets and page"));
    }

    private static void units(List<Key> keys) {
        keys.add(word(
                "units.*",
                Kind.TEXT,
                NONE,
                "a unit of your own, such as `sack: 50 kg` or `tin: 18 L`, for use wherever a quantity stands"));
    }

    private static void rivers(List<Key> keys) {
        keys.add(word("rivers.file", Kind.FILE, REQUIRED, "river layer"));
        keys.add(word("rivers.layer", Kind.TEXT, "the only one", "layer of the file"));
        keys.add(word("rivers.crs", Kind.TEXT, "as in the file", "coordinate system where the file has none"));
        keys.add(word("rivers.filter", Kind.TEXT, NONE, "ECQL filter to choose features"));
        keys.add(word("rivers.id", Kind.TEXT, "the file's feature id", "column with the feature id"));
        keys.add(word("rivers.name", Kind.TEXT, NONE, "column with the river's name"));
        KeyTable.riverColumns().forEach((name, dimension) -> {
            column(keys, "rivers.columns." + name, KeyTable.OF_TEXT.contains(name), dimension);
            if (KeyTable.BY_STATE.contains(name)) {
                column(keys, "rivers.columns." + name + ".*", false, dimension);
            }
        });
        keys.add(word("rivers.elevation.file", Kind.FILE, REQUIRED, "elevation raster (GeoTIFF)"));
        keys.add(word("rivers.elevation.unit", Kind.UNIT, REQUIRED, "unit of its heights"));
        keys.add(word(
                "rivers.elevation.drainage-area",
                Kind.FLAG,
                "false",
                "true to take drainage areas from the raster where no column gives them"));
        keys.add(word("rivers.outlets", Kind.TEXT, "found", "list of feature ids, or of maps with the keys below"));
        keys.add(word("rivers.outlets.*.feature", Kind.TEXT, NONE, "feature id of an outlet"));
        PositionCells.KEYS.forEach(key -> keys.add(key.at("rivers.outlets.*.")));
        keys.add(quantity(
                "rivers.outlets.*.basin-area",
                Dimension.AREA,
                "km2",
                1e-3,
                1e7,
                "shared by length",
                "basin area above the outlet"));
        keys.add(choice(
                "rivers.orient-by",
                List.of("outlet", "elevation", "drainage-area", "drawn"),
                "all four in this order",
                "list: what decides which way a line runs"));
    }

    private static void column(List<Key> keys, String path, boolean text, Dimension dimension) {
        keys.add(word(path + ".column", Kind.TEXT, REQUIRED, "column of the river layer"));
        if (!text) {
            keys.add(word(
                    path + ".unit",
                    Kind.UNIT,
                    dimension.isBare() ? "-" : REQUIRED,
                    "its unit: " + dimension.accepted()));
        }
        keys.add(word(path + ".missing", Kind.TEXT, NONE, "value or list of values that mean missing"));
    }

    private static void states(List<Key> keys) {
        String state = "flow-states.*.";
        keys.add(share(state + "share-of-year", REQUIRED, "share of the year; all sum to 1 within 1e-6"));
        keys.add(quantity(state + "temperature", Dimension.TEMPERATURE, "degC", 0, 45, REQUIRED, "water temperature"));
        keys.add(milligramsPerLiter(
                state + "suspended-sediment", 200_000, "or rating", "suspended sediment of the river itself"));
        keys.add(milligramsPerLiter(state + "rating.a", 200_000, REQUIRED, "suspended sediment a Q^b: a at 1 m3/s"));
        keys.add(quantity(state + "rating.b", Dimension.DIMENSIONLESS, "-", -2, 4, REQUIRED, "exponent b"));
        keys.add(quantity(
                state + "lateral-filtered-mercury",
                Dimension.CONCENTRATION,
                "ng/L",
                0,
                1e6,
                REQUIRED,
                "filtered mercury of headwater and lateral inflow"));
        keys.add(milligramsPerLiter(
                state + "dissolved-organic-carbon", 500, "required where basis is free", "dissolved organic carbon"));
        keys.add(word(
                state + "months",
                Kind.TEXT,
                NONE,
                "list of months, 1 to 12, by which a sample's date names the state"));
        keys.add(word(state + "flood", Kind.FLAG, "false", "true where the state is a flood"));
    }

    private static void water(List<Key> keys) {
        keys.add(choice(
                "discharge.method",
                List.of("attribute", "specific-discharge", "gauges", "headwaters"),
                REQUIRED,
                "how discharge is found"));
        keys.add(quantity(
                "discharge.specific-discharge.*",
                Dimension.SPECIFIC_DISCHARGE,
                "L/s/km2",
                0,
                10_000,
                "required by its method",
                "per flow state"));
        keys.add(quantity(
                "discharge.headwater-discharge.*",
                Dimension.DISCHARGE,
                "m3/s",
                0,
                10_000,
                "required by headwaters, unless a column is mapped",
                "into every headwater, per flow state"));
        keys.add(quantity(
                "discharge.lateral-inflow.*",
                Dimension.LATERAL_DISCHARGE,
                "L/s/km",
                0,
                1e6,
                "required by headwaters",
                "inflow along the reaches, per flow state"));
        keys.add(choice(
                "channel.method",
                List.of("hydraulic-geometry", "manning", "attribute"),
                REQUIRED,
                "how width and depth are found"));
    }

    private static void solids(List<Key> keys) {
        String each = "solids.classes.*.";
        keys.add(quantity(each + "diameter", Dimension.LENGTH, "um", 0.1, 10_000, REQUIRED, "sieve diameter"));
        keys.add(quantity(
                each + "density", Dimension.DENSITY, "kg/m3", 1100, 20_000, "solids.density", "grain density"));
        keys.add(choice(
                each + "law",
                List.of("ferguson-church", "stokes", "measured"),
                "ferguson-church, or measured where settling-velocity is given",
                "settling law"));
        keys.add(quantity(
                each + "settling-velocity",
                Dimension.VELOCITY,
                "mm/s",
                0,
                5000,
                "required by measured",
                "measured settling velocity"));
        keys.add(word(each + "cohesive", Kind.FLAG, "true below solids.cohesive-below", "cohesive, or sand"));
        fate(keys, each);
    }

    private static void fate(List<Key> keys, String each) {
        keys.add(quantity(
                each + "tau-cd",
                Dimension.PRESSURE,
                "Pa",
                0.01,
                10,
                "solids.tau-cd",
                "critical shear stress for deposition"));
        keys.add(quantity(
                each + "log10-kd",
                Dimension.LOG10_PARTITION_COEFFICIENT,
                "log10 L/kg",
                1,
                8,
                "mercury.log10-kd",
                "of Hg(II) on this class"));
        keys.add(quantity(
                each + "methyl-log10-kd",
                Dimension.LOG10_PARTITION_COEFFICIENT,
                "log10 L/kg",
                1,
                8,
                "mercury.methyl-log10-kd",
                "of MeHg on this class"));
        keys.add(quantity(
                each + "retention-length",
                Dimension.LENGTH,
                "km",
                1e-3,
                100_000,
                NONE,
                "measured e-fold length, in place of settling"));
        keys.add(share(
                each + "background-share", "required where there are several classes", "of the river's own solids"));
        keys.add(share(each + "tailings-share", "required where there are several classes", "of tailings solids"));
    }

    private static void mercury(List<Key> keys) {
        keys.add(quantity(
                "mercury.kd",
                Dimension.PARTITION_COEFFICIENT,
                "L/kg",
                10,
                1e8,
                "mercury.log10-kd",
                "in place of log10-kd: the partition coefficient itself"));
        keys.add(choice(
                "mercury.basis", List.of("filtered", "free"), "filtered", "what Kd refers to; free needs doc-log10-k"));
        keys.add(choice(
                FormsSection.FORMS,
                FormsSection.words(),
                NONE,
                "list: forms carried beside Hg(II), besides those that some site releases"));
        String each = FormsSection.DROPLETS + ".*.";
        keys.add(quantity(
                each + "diameter",
                Dimension.LENGTH,
                "um",
                0.1,
                2000,
                "3, 20 and 100 um (common practice, no source)",
                "diameter of a size class of droplets"));
        keys.add(share(
                each + "share",
                "10, 30 and 60 % (common practice, no source)",
                "share of all droplets in it; all sum to 1"));
    }

    private static void tables(List<Key> keys) {
        keys.add(word("sites.file", Kind.FILE, "no sites, background alone", "table of discharge points"));
        for (String column : InlineSites.KEYS) {
            keys.add(word(
                    InlineSites.PATTERN + column,
                    Kind.TEXT,
                    NONE,
                    "of a site that stands here, not in the table: as the column " + Table.columnName(column)));
        }
        keys.add(word("places.file", Kind.FILE, NONE, "table of places where people use the water"));
        keys.add(word("gauges.file", Kind.FILE, "required by its method", "table of gauges"));
        keys.add(word("abstractions.file", Kind.FILE, NONE, "table of declared abstractions"));
        keys.add(word(
                "corrections.file",
                Kind.FILE,
                "corrections.csv in the scenario's folder, if it is there",
                "corrections that the check page wrote"));
    }

    private static void samples(List<Key> keys) {
        keys.add(word("samples.stations", Kind.FILE, NONE, "table of stations: name and coordinates"));
        for (String group : List.of("samples.", "samples.more.*.")) {
            keys.add(word(group + "file", Kind.FILE, NONE, "table of a laboratory, or a list of such"));
            keys.add(word(
                    group + "columns.*",
                    Kind.TEXT,
                    "our own names and usual spellings",
                    "for one of our columns, the laboratory's heading or a list of such"));
            keys.add(word(
                    group + "words.*",
                    Kind.TEXT,
                    "usual words",
                    "for one of the laboratory's words (a star at its end stands for anything), what it means here; several"
                            + " meanings with commas"));
            keys.add(word(
                    group + "fixed.*", Kind.TEXT, NONE, "for one of our columns, what holds where a cell is blank"));
        }
    }

    private static void outputs(List<Key> keys) {
        keys.add(word("guidelines.use", Kind.TEXT, NONE, "list of guideline ids"));
        keys.add(word("guidelines.jurisdiction", Kind.TEXT, NONE, "country or body whose values are used"));
        keys.add(word("guidelines.file", Kind.FILE, NONE, "table of your own guideline values"));
        keys.add(word("outputs.map.medium", Kind.TEXT, "chosen by the guidelines", "medium of the map"));
        keys.add(word("outputs.map.guideline", Kind.TEXT, "chosen by the guidelines", "guideline id of the map"));
        keys.add(choice(
                OutputsSection.FORMS,
                OutputsSection.words(Outputs.ShownForm.values()),
                NONE,
                "list: forms of mercury of which maps and profiles of their own are drawn, if they are carried"));
        keys.add(choice(
                OutputsSection.FORM_MEDIA,
                OutputsSection.words(Outputs.ShownMedium.values()),
                "all that hold the form",
                "list: media in which these forms are drawn; bed-sediment only where the bed is modelled"));
        keys.add(choice(
                "outputs.tables",
                List.of("comma", "semicolon"),
                "comma",
                "what stands between the cells of the tables written: comma, with decimal points, or semicolon, with"
                        + " decimal commas, as spreadsheet programs set to a decimal comma open them"));
        keys.add(word("outputs.profiles.*.name", Kind.TEXT, REQUIRED, "name of a profile"));
        keys.add(word("outputs.profiles.*.from", Kind.TEXT, REQUIRED, "feature id or place where it starts"));
        keys.add(word("outputs.profiles.*.to", Kind.TEXT, "the outlet", "feature id or place where it ends"));
    }

    private static Key share(String path, String fallback, String meaning) {
        return quantity(path, Dimension.DIMENSIONLESS, "-", 0, 1, fallback, meaning);
    }

    private static Key milligramsPerLiter(String path, double high, String fallback, String meaning) {
        return quantity(path, Dimension.CONCENTRATION, "mg/L", 0, high, fallback, meaning);
    }
}
