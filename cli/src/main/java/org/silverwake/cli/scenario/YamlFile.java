// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a YAML 1.2 file. */
final class YamlFile {
    private YamlFile() {}

    /** What it holds; empty with a noted problem where the file cannot be read as YAML. */
    static Optional<Written> read(Path file, Problems problems) {
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
            Optional<ScenarioNode> root = node.map(n -> new YamlNodes(label).node(n));
            if (root.isEmpty() || !(root.get() instanceof ScenarioNode.Branch)) {
                problems.add(label, "holds no keys; start from docs/reference/scenario.md");
                return Optional.empty();
            }
            return root.map(r -> new Written(label + ":1", r, Map.of()));
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
