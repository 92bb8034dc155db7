// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a YAML 1.2 file into a {@link ScenarioValue} whose keys are checked. */
final class YamlFile {
    private YamlFile() {}

    /** The file's root; empty with a noted problem where the file cannot be read as YAML. */
    static Optional<ScenarioValue> read(Path file, Problems problems) {
        String label = file.getFileName().toString();
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            LoadSettings settings = LoadSettings.builder()
                    .setLabel(label)
                    .setUseMarks(true)
                    .setAllowDuplicateKeys(true) // all of them are reported by checkKeys, not the first alone
                    .build();
            Optional<Node> node =
                    new Compose(settings).composeString(text.startsWith("\ufeff") ? text.substring(1) : text);
            Optional<ScenarioValue> root =
                    node.map(n -> ScenarioValue.root(label + ":1", new YamlNodes(label).node(n), problems));
            if (root.isEmpty() || !root.get().isMap()) {
                problems.add(label, "holds no keys; start from docs/reference/scenario.md");
                return Optional.empty();
            }
            root.get().checkKeys();
            return root;
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(Mark::getLine).orElse(0) + 1;
            problems.add(
                    label + ":" + line, "is not YAML here (" + e.getProblem() + "); mend the line or the one above it");
        } catch (YamlEngineException e) {
            problems.add(label, "is not YAML (" + e.getMessage() + ")");
        } catch (IOException e) {
            problems.add(label, "cannot be read as UTF-8 text; save it in that encoding");
        }
        return Optional.empty();
    }
}
