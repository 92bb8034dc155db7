// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.FlowState;
import org.silverwake.cli.scenario.ScenarioInput.Mercury.Basis;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;
import org.silverwake.model.input.Settings;
import org.silverwake.model.water.ReachKind;

/** Scalar settings, wherever they stand in the file, and the partition coefficient in its two spellings. */
final class SettingsSection {
    private static final String LOG_KD = "mercury.log10-kd";
    private static final String LOG_DOC = "mercury.doc-log10-k";

    /** Numbers up to here under kd are taken for logarithms [L/kg]. */
    private static final double LARGEST_LOGARITHM = 10;

    private static final double LITERS_PER_CUBIC_METER = 1000;

    private SettingsSection() {}

    static Settings read(ScenarioValue root) {
        Map<String, Double> given = new HashMap<>();
        for (Setting setting : SettingList.all()) {
            ScenarioValue value = root.atPath(setting.path());
            if (setting.path().startsWith("mercury.") && setting.path().contains("log10") && isKdItself(value)) {
                value.problem(
                        "looks like the partition coefficient itself; give its base-10 logarithm as a bare number, "
                                + Key.of(setting).get(0).range());
            } else if (setting.varies() && value.isMap()) {
                value.at("value").quantity().ifPresent(v -> given.put(setting.path(), v));
                varied(setting, value, root.at("flow-states").names(), given);
            } else {
                value.quantity().ifPresent(v -> given.put(setting.path(), v));
            }
        }
        readKd(root).ifPresent(log -> given.put(LOG_KD, log));
        return Settings.of(given);
    }

    /** Numbers of a setting by flow state and by kind of reach, into {@code given} by their paths. */
    private static void varied(Setting setting, ScenarioValue map, Set<String> states, Map<String, Double> given) {
        ScenarioValue byState = map.at(Setting.BY_STATE);
        for (String name : byState.names()) {
            if (!states.contains(name)) {
                byState.at(name).problem("is no flow state; give one of " + String.join(", ", states));
            }
            byState.at(name).quantity().ifPresent(v -> given.put(setting.inState(name), v));
        }
        ScenarioValue byKind = map.at(Setting.BY_KIND);
        for (String name : byKind.names()) {
            ReachKind.find(name)
                    .ifPresentOrElse(
                            kind -> byKind.at(name)
                                    .quantity()
                                    .ifPresent(v -> given.put(setting.inKind(kind.word()), v)),
                            () -> unknownKind(byKind.at(name)));
        }
    }

    private static void unknownKind(ScenarioValue value) {
        value.quantity();
        value.problem("is no kind of reach; give one of "
                + String.join(
                        ", ",
                        Arrays.stream(ReachKind.values()).map(ReachKind::word).toList()));
    }

    /** The basis of Kd, with what it needs and what it forbids. */
    static Basis basis(ScenarioValue section, List<FlowState> states) {
        boolean free = section.at("basis").choice().orElse("filtered").equals("free");
        ScenarioValue doc = section.at("doc-log10-k");
        if (free && !doc.isPresent()) {
            section.at("basis")
                    .problem(
                            "free needs mercury.doc-log10-k, the binding to dissolved organic carbon; give it, or basis:"
                                    + " filtered");
        }
        if (!free && doc.isPresent()) {
            doc.problem("acts only with basis: free, since a Kd of basis filtered already holds what dissolved organic"
                    + " carbon binds; leave it out, or give a Kd of basis free and say basis: free");
        }
        for (FlowState state : states) {
            if (free && state.dissolvedOrganicCarbon().isEmpty()) {
                section.at("basis")
                        .problem("free needs dissolved-organic-carbon in flow state " + state.name()
                                + "; give it in mg/L");
            }
        }
        return free ? Basis.FREE : Basis.FILTERED;
    }

    private static Optional<Double> readKd(ScenarioValue root) {
        ScenarioValue kd = root.atPath("mercury.kd");
        Optional<String> text = kd.text();
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (root.atPath(LOG_KD).isPresent()) {
            kd.problem("stands beside mercury.log10-kd; keep one of them");
            return Optional.empty();
        }
        String number = text.get().replaceAll("\\s*[A-Za-z].*", "");
        if (isSmall(number)) {
            kd.problem(text.get() + " looks like a logarithm; write mercury.log10-kd: " + number
                    + ", or give Kd itself such as 200000 L/kg");
            return Optional.empty();
        }
        return kd.quantity().stream()
                .boxed()
                .map(si -> StrictMath.log10(si * LITERS_PER_CUBIC_METER))
                .findFirst();
    }

    private static boolean isSmall(String number) {
        return number.matches("-?\\d*\\.?\\d+") && Double.parseDouble(number) < LARGEST_LOGARITHM;
    }

    private static boolean isKdItself(ScenarioValue value) {
        return value.isScalar()
                && value.text()
                        .map(t -> t.matches("\\d[\\d.]*(e\\d+)?(\\s*L/kg)?")
                                && Double.parseDouble(t.replaceAll("\\s*L/kg", "")) >= 2 * LARGEST_LOGARITHM)
                        .orElse(false);
    }
}
