// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.Map;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioWriter;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.FormChecks;
import org.silverwake.model.transport.SteadyResult;

/** The record of a run: run.json, the same for the same inputs, and timing.json beside it. */
public final class RunRecord {
    private RunRecord() {}

    /** Writes run.json. */
    public static void write(Outcome outcome, String version, Path file) {
        try (JsonGenerator json = generator(file)) {
            json.writeStartObject();
            json.writeStringField("program", "Silverwake");
            json.writeStringField("version", version);
            json.writeStringField("date", outcome.scenario().project().date().toString());
            inputs(json, outcome.scenario());
            json.writeFieldName("scenario");
            ScenarioWriter.write(outcome.scenario(), json);
            network(json, outcome);
            numerics(json, outcome);
            massBalance(json, outcome);
            formChecks(json, outcome);
            new CyanideReport(outcome).record(json);
            SampleLayer.record(outcome, json);
            FishTable.record(outcome, json);
            json.writeArrayFieldStart("warnings");
            for (String warning : outcome.warnings()) {
                json.writeString(warning);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes timing.json: wall time by step and the machine; never the same twice, hence apart. */
    public static void timing(Map<String, Long> milliseconds, Path file) {
        try (JsonGenerator json = generator(file)) {
            json.writeStartObject();
            json.writeObjectFieldStart("wallMilliseconds");
            for (Map.Entry<String, Long> step : milliseconds.entrySet()) {
                json.writeNumberField(step.getKey(), step.getValue());
            }
            json.writeEndObject();
            json.writeStringField(
                    "java", System.getProperty("java.vm.name") + " " + System.getProperty("java.version"));
            json.writeStringField("system", System.getProperty("os.name") + " " + System.getProperty("os.arch"));
            json.writeNumberField("processors", Runtime.getRuntime().availableProcessors());
            json.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonGenerator generator(Path file) throws IOException {
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed("\n"));
        printer.indentObjectsWith(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed("\n"));
        return new JsonFactory()
                .createGenerator(Files.newBufferedWriter(file, StandardCharsets.UTF_8))
                .setPrettyPrinter(printer);
    }

    /** Writes the files that were read, each with its hash. */
    public static void inputs(JsonGenerator json, ScenarioInput scenario) throws IOException {
        json.writeArrayFieldStart("inputs");
        for (ScenarioInput.SourceFile source : scenario.sourceFiles()) {
            Path file = scenario.folder().resolve(source.file());
            json.writeStartObject();
            json.writeStringField("role", source.role());
            json.writeStringField("file", source.file().toString().replace('\\', '/'));
            json.writeStringField("sha256", sha256(file));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void network(JsonGenerator json, Outcome outcome) throws IOException {
        json.writeObjectFieldStart("network");
        json.writeNumberField("reaches", outcome.basin().network().size());
        json.writeNumberField("cells", outcome.result().cells().count());
        json.writeNumberField("loops", outcome.basin().network().loopCount());
        json.writeStringField("coordinateSystem", outcome.basin().layer().crs().name());
        json.writeStringField("drainageArea", outcome.water().areaMethod());
        Map<Defect.Kind, Integer> counts = new EnumMap<>(Defect.Kind.class);
        for (Defect defect : outcome.basin().map().defects()) {
            counts.merge(defect.kind(), 1, Integer::sum);
        }
        json.writeObjectFieldStart("defects");
        for (Map.Entry<Defect.Kind, Integer> count : counts.entrySet()) {
            json.writeNumberField(Words.defect(count.getKey()), count.getValue());
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void numerics(JsonGenerator json, Outcome outcome) throws IOException {
        json.writeObjectFieldStart("numerics");
        json.writeNumberField(
                "largestChangeOnHalvingCells", outcome.changeOnHalving().loads());
        if (outcome.changeOnHalving().beds().isPresent()) {
            json.writeNumberField(
                    "largestChangeOfBedsOnHalvingCells",
                    outcome.changeOnHalving().beds().getAsDouble());
        }
        if (outcome.years().isPresent()) {
            YearsRun years = outcome.years().get();
            json.writeObjectFieldStart("years");
            json.writeNumberField("worstClosure", years.result().worstClosure());
            if (years.otherTogether().isPresent()) {
                json.writeNumberField(
                        "largestChangeOfBedsWithStatesTakenTogether",
                        years.otherTogether().getAsDouble());
            }
            json.writeEndObject();
        }
        json.writeObjectFieldStart("dispersionNumber");
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            json.writeNumberField(
                    outcome.scenario().states().get(s).name(), outcome.result().dispersionNumber(s));
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    /** Where the checks after the sweep found something, by flow state; nothing where Hg(0) is not carried. */
    private static void formChecks(JsonGenerator json, Outcome outcome) throws IOException {
        FormChecks checks = new FormChecks(outcome.result());
        if (!checks.apply()) {
            return;
        }
        json.writeObjectFieldStart("formChecks");
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            json.writeObjectFieldStart(outcome.scenario().states().get(s).name());
            if (checks.hasDissolvingDroplets()) {
                reaches(json, "elementalAboveTenthOfSolubility", checks.nearlySaturated(s), outcome);
            }
            reaches(json, "evasionDepthHeldInRange", checks.heldDepth(s), outcome);
            reaches(json, "evasionVelocityOutOfRange", checks.strangeVelocity(s), outcome);
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private static void reaches(JsonGenerator json, String name, BitSet reaches, Outcome outcome) throws IOException {
        json.writeArrayFieldStart(name);
        for (int r : reaches.stream().toArray()) {
            json.writeString(outcome.basin().reach(r).id());
        }
        json.writeEndArray();
    }

    private static void massBalance(JsonGenerator json, Outcome outcome) throws IOException {
        SteadyResult result = outcome.result();
        json.writeArrayFieldStart("massBalance");
        for (int s = 0; s < result.input().stateCount(); s++) {
            for (Bound bound : result.bounds()) {
                for (int v = 0; v < result.variants(); v++) {
                    Balance balance = result.solution(bound, s).balance(v);
                    json.writeStartObject();
                    json.writeStringField(
                            "flowState", outcome.scenario().states().get(s).name());
                    json.writeStringField("bound", Words.bound(bound));
                    if (result.variants() > 1) {
                        json.writeStringField("unknownSplitTakenAs", Words.variant(result.input(), v));
                    }
                    json.writeObjectFieldStart("kilogramsPerSecond");
                    for (Balance.Process process : Balance.Process.values()) {
                        json.writeNumberField(Words.process(process), balance.sum(process));
                    }
                    json.writeEndObject();
                    json.writeNumberField("closure", balance.closure());
                    json.writeEndObject();
                }
            }
        }
        json.writeEndArray();
    }
}
