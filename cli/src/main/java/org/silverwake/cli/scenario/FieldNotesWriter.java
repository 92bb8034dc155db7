// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Map;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.model.release.Effect;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.Spread;

/** Field notes and practices in the record of a run, SI; nothing where there are none. */
final class FieldNotesWriter {
    private final JsonGenerator json;

    FieldNotesWriter(JsonGenerator json) {
        this.json = json;
    }

    void write(FieldNotesPlan plan) throws IOException {
        trial(plan.trial());
        if (plan.noted().isEmpty() && plan.practices().isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(PracticesSection.NOTES);
        json.writeStringField("level", plan.level().name().toLowerCase(java.util.Locale.ROOT));
        json.writeArrayFieldStart("rows");
        for (NotedSite noted : plan.noted()) {
            json.writeStartObject();
            json.writeStringField("site", noted.site());
            // records name their own parts
            json.writeStringField(
                    "notes",
                    noted.notes().isPresent()
                            ? noted.notes().get().toString()
                            : noted.eroded().orElseThrow().toString());
            ScenarioWriter.numbers(json, "work by flow state [-]", noted.year().work());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeObjectFieldStart(PracticesSection.PRACTICES);
        json.writeNumberField("year", plan.year());
        json.writeStringField("currency", plan.currency());
        if (plan.prices().isPresent()) {
            json.writeNumberField(
                    "mercury-price [money/kg]", plan.prices().get().mercury());
            json.writeNumberField("gold-price [money/kg]", plan.prices().get().gold());
        }
        texts("in-force", plan.inForce());
        json.writeArrayFieldStart("table");
        for (OfferedPractice offered : plan.practices()) {
            practice(offered);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void trial(Trial trial) throws IOException {
        if (trial.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(TrialSection.NAME);
        shares("practices", trial.practices());
        shares("sites", trial.sites());
        texts("closed", trial.closed());
        json.writeEndObject();
    }

    private void shares(String key, Map<String, Double> shares) throws IOException {
        json.writeObjectFieldStart(key);
        for (Map.Entry<String, Double> share : shares.entrySet()) {
            json.writeNumberField(share.getKey(), share.getValue());
        }
        json.writeEndObject();
    }

    private void practice(OfferedPractice offered) throws IOException {
        Practice practice = offered.practice();
        json.writeStartObject();
        json.writeStringField("name", practice.name());
        texts("sites", offered.sites());
        json.writeNumberField("start_year", practice.startYear());
        json.writeNumberField("shed_share [-]", practice.siteShare());
        texts("effects", practice.effects().stream().map(Effect::toString).toList());
        spread("cost_once [money]", practice.cost().once());
        spread("cost_per_year [money/yr]", practice.cost().perYear());
        json.writeNumberField("life [yr]", practice.cost().life());
        json.writeNumberField("gold_gain [-]", practice.goldGain());
        if (practice.bleed().isPresent()) {
            json.writeNumberField("drums_hold [kg]", practice.bleed().get().held());
            json.writeNumberField("drums_decay [s]", practice.bleed().get().decayTime());
        }
        json.writeEndObject();
    }

    private void spread(String key, Spread spread) throws IOException {
        json.writeArrayFieldStart(key);
        json.writeNumber(spread.low());
        json.writeNumber(spread.middle());
        json.writeNumber(spread.high());
        json.writeEndArray();
    }

    private void texts(String key, java.util.List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
