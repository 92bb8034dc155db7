// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import org.silverwake.cli.scenario.ScenarioInput.Abstraction;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.scenario.ScenarioInput.Gauge;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/** The tables' part of {@link ScenarioWriter}: sites, places, gauges, abstractions. */
final class TableWriter {
    private final ScenarioInput input;
    private final JsonGenerator json;

    TableWriter(ScenarioInput input, JsonGenerator json) {
        this.input = input;
        this.json = json;
    }

    void write() throws IOException {
        json.writeArrayFieldStart("sites");
        for (Site site : input.sites()) {
            site(site);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("places");
        for (Place place : input.places()) {
            place(place);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("gauges");
        for (Gauge gauge : input.gauges()) {
            json.writeStartObject();
            json.writeStringField("name", gauge.name());
            ScenarioWriter.position(json, gauge.position());
            ScenarioWriter.numbers(json, "discharge [m3/s]", gauge.discharge());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("abstractions");
        for (Abstraction abstraction : input.abstractions()) {
            json.writeStartObject();
            json.writeStringField("name", abstraction.name());
            ScenarioWriter.position(json, abstraction.position());
            ScenarioWriter.numbers(json, "discharge [m3/s]", abstraction.discharge());
            json.writeStringField("use", abstraction.use());
            if (abstraction.field().isPresent()) {
                json.writeNumberField("area [m2]", abstraction.field().get().area());
                json.writeNumberField(
                        "plough_depth [m]", abstraction.field().get().ploughDepth());
                json.writeNumberField(
                        "soil_density [kg/m3]", abstraction.field().get().soilDensity());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void site(Site site) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", site.name());
        json.writeStringField("group", site.group());
        ScenarioWriter.position(json, site.position());
        json.writeStringField("path", ScenarioWriter.word(site.path()));
        if (site.mercury().isPresent()) {
            ScenarioWriter.numbers(json, "release [kg/s]", site.mercury().get());
        }
        if (site.tailings().isPresent()) {
            ScenarioWriter.numbers(
                    json, "tailings [kg/s]", site.tailings().get().mass());
            json.writeNumberField("content [kg/kg]", site.tailings().get().content());
        }
        if (site.effluent().isPresent()) {
            ScenarioWriter.numbers(
                    json, "effluent [m3/s]", site.effluent().get().flow());
            json.writeNumberField("concentration [kg/m3]", site.effluent().get().concentration());
        }
        if (site.cyanide().isPresent()) {
            ScenarioWriter.numbers(json, "cyanide [kg/s]", site.cyanide().get());
        }
        ScenarioWriter.number(json, "exchangeable-share [-]", site.exchangeableShare());
        for (Map.Entry<FurtherForm, Double> share : site.furtherShares().entrySet()) {
            json.writeNumberField("share-" + ScenarioWriter.word(share.getKey()) + " [-]", share.getValue());
        }
        ScenarioWriter.numbers(json, "class-shares [-]", site.classShares());
        ScenarioWriter.numbers(json, "water [m3/s]", site.water());
        json.writeStringField("outfall", ScenarioWriter.word(site.outfall()));
        if (site.riverName().isPresent()) {
            json.writeStringField("river", site.riverName().get());
        }
        json.writeStringField("note", site.note());
        json.writeEndObject();
    }

    private void place(Place place) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", place.name());
        json.writeArrayFieldStart("use");
        for (PlaceUse use : place.uses()) {
            json.writeString(ScenarioWriter.word(use));
        }
        json.writeEndArray();
        if (place.people().isPresent()) {
            json.writeNumberField("people", place.people().getAsInt());
        }
        json.writeStringField("people_source", place.peopleSource());
        ScenarioWriter.position(json, place.position());
        json.writeStringField("note", place.note());
        json.writeEndObject();
    }
}
