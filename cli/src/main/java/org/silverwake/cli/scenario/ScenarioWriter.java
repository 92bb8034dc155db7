// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.cli.scenario.Outputs.Profile;
import org.silverwake.cli.scenario.ScenarioInput.Change;
import org.silverwake.cli.scenario.ScenarioInput.Column;
import org.silverwake.cli.scenario.ScenarioInput.DropletClass;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.HistoryPlan;
import org.silverwake.cli.scenario.ScenarioInput.Outlet;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.cli.scenario.ScenarioInput.Rivers;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;
import org.silverwake.geo.crs.PointSystem;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;

/**
 * Writes a scenario with its defaults filled in, for the record of the run. Units stand in brackets behind the keys; paths
 * are relative to the scenario's folder, so that the record is the same on every machine.
 */
public final class ScenarioWriter {
    private final ScenarioInput input;
    private final JsonGenerator json;

    private ScenarioWriter(ScenarioInput input, JsonGenerator json) {
        this.input = input;
        this.json = json;
    }

    /**
     * Writes the scenario as one JSON object, at the generator's place.
     *
     * @throws IOException if the generator cannot write
     */
    public static void write(ScenarioInput input, JsonGenerator json) throws IOException {
        new ScenarioWriter(input, json).writeAll();
    }

    private void writeAll() throws IOException {
        json.writeStartObject();
        json.writeStringField("title", input.project().title());
        json.writeStringField("prepared-by", input.project().preparedBy());
        json.writeStringField("date", input.project().date().toString());
        json.writeStringField("language", input.project().language());
        if (!input.localUnits().isEmpty()) {
            json.writeObjectFieldStart("units");
            for (Map.Entry<String, String> unit : input.localUnits().entrySet()) {
                json.writeStringField(unit.getKey(), unit.getValue());
            }
            json.writeEndObject();
        }
        rivers(input.rivers());
        states();
        water();
        solids();
        mercury();
        bed();
        history();
        fish();
        settings();
        new TableWriter(input, json).write();
        new FieldNotesWriter(json).write(input.fieldNotes());
        new WaterBodiesWriter(json, this::relative).write(input.waterBodies());
        new ReachClassWriter(json, this::relative).write(input.reachClasses());
        corrections();
        outputs();
        json.writeEndObject();
    }

    private void rivers(Rivers rivers) throws IOException {
        json.writeObjectFieldStart("rivers");
        json.writeStringField("file", relative(rivers.file()));
        text("layer", rivers.layer());
        text("crs", rivers.crs());
        text("filter", rivers.filter());
        text("id", rivers.idColumn());
        text("name", rivers.nameColumn());
        json.writeArrayFieldStart("columns");
        for (Column column : rivers.columns()) {
            json.writeStartObject();
            json.writeStringField("key", column.key());
            json.writeStringField("column", column.column());
            json.writeNumberField("factor to SI", column.toSi());
            texts("missing", column.missing());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (rivers.elevation().isPresent()) {
            json.writeObjectFieldStart("elevation");
            json.writeStringField("file", relative(rivers.elevation().get().file()));
            json.writeNumberField("factor to m", rivers.elevation().get().toMeters());
            json.writeBooleanField(
                    "drainage area from it", rivers.elevation().get().drainageArea());
            json.writeEndObject();
        }
        json.writeArrayFieldStart("outlets");
        for (Outlet outlet : rivers.outlets()) {
            json.writeStartObject();
            text("feature", outlet.feature());
            if (outlet.position().isPresent()) {
                position(json, outlet.position().get());
            }
            number(json, "basin-area [m2]", outlet.basinArea());
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("orient-by", rivers.orientBy());
        if (!rivers.kinds().isEmpty()) {
            json.writeObjectFieldStart("kinds");
            for (var kind : rivers.kinds().entrySet()) {
                json.writeStringField(kind.getKey(), kind.getValue().word());
            }
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void states() throws IOException {
        json.writeArrayFieldStart("flow-states");
        for (FlowState state : input.states()) {
            json.writeStartObject();
            json.writeStringField("name", state.name());
            json.writeNumberField("share-of-year [-]", state.share());
            json.writeNumberField("temperature [degC]", state.temperature());
            number(json, "suspended-sediment [kg/m3]", state.suspendedSediment());
            if (state.rating().isPresent()) {
                json.writeNumberField(
                        "rating.a [kg/m3 at 1 m3/s]", state.rating().get().a());
                json.writeNumberField("rating.b [-]", state.rating().get().b());
            }
            json.writeNumberField("lateral-filtered-mercury [kg/m3]", state.lateralFilteredMercury());
            number(json, "dissolved-organic-carbon [kg/m3]", state.dissolvedOrganicCarbon());
            json.writeBooleanField("flood", state.flood());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void water() throws IOException {
        json.writeObjectFieldStart("discharge");
        json.writeStringField("method", word(input.discharge().method()));
        numbers(json, "specific-discharge [m/s]", input.discharge().specificDischarge());
        numbers(json, "headwater-discharge [m3/s]", input.discharge().headwaterDischarge());
        numbers(json, "lateral-inflow [m2/s]", input.discharge().lateralPerLength());
        json.writeEndObject();
        json.writeObjectFieldStart("channel");
        json.writeStringField("method", word(input.channel().method()));
        json.writeEndObject();
    }

    private void solids() throws IOException {
        json.writeArrayFieldStart("solids-classes");
        for (SolidsClass each : input.solids().classes()) {
            json.writeStartObject();
            json.writeStringField("name", each.name());
            json.writeNumberField("diameter [m]", each.diameter());
            json.writeNumberField("density [kg/m3]", each.density());
            json.writeStringField("law", each.law());
            number(json, "settling-velocity [m/s]", each.settlingVelocity());
            json.writeBooleanField("cohesive", each.cohesive());
            json.writeNumberField("tau-cd [Pa]", each.criticalShearDeposition());
            json.writeNumberField("log10-kd [log10 L/kg]", each.log10Kd());
            json.writeNumberField("methyl-log10-kd [log10 L/kg]", each.methylLog10Kd());
            number(json, "retention-length [m]", each.retentionLength());
            json.writeNumberField("background-share [-]", each.backgroundShare());
            json.writeNumberField("tailings-share [-]", each.tailingsShare());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void mercury() throws IOException {
        json.writeStringField("mercury.basis", word(input.mercury().basis()));
        texts(
                "mercury.forms",
                input.mercury().forms().stream().map(ScenarioWriter::word).toList());
        json.writeArrayFieldStart("mercury.droplets");
        for (DropletClass each : input.mercury().droplets()) {
            json.writeStartObject();
            json.writeStringField("name", each.name());
            json.writeNumberField("diameter [m]", each.diameter());
            json.writeNumberField("share [-]", each.share());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void bed() throws IOException {
        if (input.bed().isPresent()) {
            json.writeObjectFieldStart("bed");
            json.writeBooleanField("modelled", true);
            json.writeStringField("given", input.bed().get().erosionGiven() ? "erosion" : "burial");
            json.writeEndObject();
        }
    }

    private void history() throws IOException {
        if (input.history().isEmpty()) {
            return;
        }
        HistoryPlan plan = input.history().get();
        json.writeObjectFieldStart("history");
        json.writeNumberField("start", plan.firstYear());
        json.writeNumberField("years", plan.years());
        json.writeBooleanField("together", plan.order().isEmpty());
        texts(
                "order",
                plan.order().stream().map(s -> input.states().get(s).name()).toList());
        number(json, "bed-content [kg/kg]", plan.bedContent());
        json.writeArrayFieldStart("changes");
        for (Change change : plan.changes()) {
            json.writeStartObject();
            json.writeStringField("name", change.name());
            json.writeNumberField("year", change.year());
            json.writeNumberField("factor [-]", change.factor());
            texts("sites", change.sites());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void fish() throws IOException {
        if (input.fish().isPresent() && !input.fish().get().dams().isEmpty()) {
            texts(FishSection.DAMS, input.fish().get().dams());
        }
        if (input.fish().isPresent() && !input.fish().get().species().isEmpty()) {
            json.writeObjectFieldStart(FishSection.SPECIES);
            for (Map.Entry<String, TrophicLevel> each :
                    input.fish().get().species().entrySet()) {
                json.writeNumberField(each.getKey(), each.getValue().number());
            }
            json.writeEndObject();
        }
    }

    private void settings() throws IOException {
        json.writeObjectFieldStart("settings");
        Map<String, Double> shown = input.settings().shown();
        for (Setting setting : SettingList.all()) {
            Double value = shown.get(setting.path());
            Map<String, Double> varied = input.settings().shownVaried(setting);
            if (value != null || !varied.isEmpty()) {
                json.writeObjectFieldStart(setting.path() + " [" + setting.unit() + "]");
                if (value != null) {
                    json.writeNumberField("value", value);
                }
                json.writeBooleanField("given", input.settings().isGiven(setting.path()));
                for (Map.Entry<String, Double> own : varied.entrySet()) {
                    json.writeNumberField(own.getKey(), own.getValue());
                }
                json.writeEndObject();
            }
        }
        json.writeEndObject();
    }

    private void corrections() throws IOException {
        if (input.corrections().rows().isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("corrections");
        for (Corrections.Row row : input.corrections().rows()) {
            json.writeStartObject();
            json.writeStringField("action", word(row.action()));
            json.writeStringField("kind", row.kind());
            json.writeStringField("name", row.name());
            texts("features", row.features());
            if (row.at().isPresent()) {
                position(json, row.at().get());
            }
            if (row.was().isPresent()) {
                json.writeNumberField("was-longitude", row.was().get().x());
                json.writeNumberField("was-latitude", row.was().get().y());
            }
            json.writeStringField("defect", row.defect());
            json.writeStringField("note", row.note());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void outputs() throws IOException {
        json.writeObjectFieldStart("guidelines");
        texts("use", input.guidelines().ids());
        text("jurisdiction", input.guidelines().jurisdiction());
        text("file", input.guidelines().ownTable().map(this::relative));
        json.writeEndObject();
        json.writeObjectFieldStart("outputs");
        text("map.medium", input.outputs().mapMedium());
        text("map.guideline", input.outputs().mapGuideline());
        texts(
                "forms",
                input.outputs().forms().stream().map(ScenarioWriter::word).toList());
        texts(
                "form-media",
                input.outputs().formMedia().stream().map(ScenarioWriter::word).toList());
        json.writeStringField("tables", word(input.outputs().tables()));
        json.writeArrayFieldStart("profiles");
        for (Profile profile : input.outputs().profiles()) {
            json.writeStartObject();
            json.writeStringField("name", profile.name());
            json.writeStringField("from", profile.from());
            text("to", profile.to());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("audience", word(input.outputs().audience()));
        json.writeEndObject();
        SheetsWriter.write(input.outputs(), json, this::relative);
    }

    private String relative(Path file) {
        Path folder = input.folder();
        Path shown = file.isAbsolute() && folder.isAbsolute() ? folder.relativize(file) : file;
        return shown.toString().replace('\\', '/');
    }

    private void text(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        }
    }

    private void texts(String key, List<String> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    static void number(JsonGenerator json, String key, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(key, value.getAsDouble());
        }
    }

    static void numbers(JsonGenerator json, String key, List<Double> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (double value : values) {
            json.writeNumber(value);
        }
        json.writeEndArray();
    }

    static void position(JsonGenerator json, Position position) throws IOException {
        PointSystem system = position.system();
        boolean degrees = system.kind() == PointSystem.Kind.DEGREES;
        json.writeNumberField(degrees ? "longitude" : position.inLayerCrs() ? "x" : "easting", position.x());
        json.writeNumberField(degrees ? "latitude" : position.inLayerCrs() ? "y" : "northing", position.y());
        if (!system.isWgs84() && !position.inLayerCrs()) {
            json.writeStringField("system", system.text());
        }
        number(json, "accuracy [m]", position.accuracy());
    }

    /** An enum constant as the scenario spells it. */
    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
