// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.scenario.Sheets;
import org.silverwake.cli.text.Texts;

/** The words of the report page in every language there is, as JSON: {0} and so on are filled in by the page. */
final class ReportWords {
    /** What the page says, by how keys begin. */
    private static final List<String> SAID = List.of(
            "language.name",
            "caution.",
            "answer.",
            "shade.",
            "medium.",
            "made.",
            "draft",
            "not-for-posting",
            "sheet.area",
            "page.");

    private static final Object[] SLOTS = {"{0}", "{1}", "{2}", "{3}", "{4}"};

    private ReportWords() {}

    /** All of them, and what the office wrote for readers, without "&lt;". */
    static String json(Sheets sheets) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            json.writeStartObject();
            texts("always", Cautions.always(), json);
            texts("whatToDo", sheets.whatToDo(), json);
            texts("whomToAsk", sheets.whomToAsk(), json);
            json.writeStringField("useUntil", sheets.useUntil().toString());
            json.writeObjectFieldStart("languages");
            for (String language : Texts.LANGUAGES) {
                write(Texts.of(language), json);
            }
            json.writeEndObject();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return PageData.inScript(text.toString());
    }

    private static void texts(String key, List<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static void write(Texts texts, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(texts.language());
        json.writeBooleanField("reviewed", texts.reviewedBy().isPresent());
        json.writeObjectFieldStart("words");
        for (String key : texts.keys()) {
            if (SAID.stream().anyMatch(key::startsWith)) {
                json.writeStringField(key, texts.text(key, SLOTS));
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }
}
