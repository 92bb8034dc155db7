// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Turns the nodes of a YAML file into ours, which know their line. */
record YamlNodes(String label) {
    ScenarioNode node(Node yaml) {
        if (yaml instanceof MappingNode mapping) {
            List<ScenarioNode.Entry> entries = new ArrayList<>();
            for (NodeTuple tuple : mapping.getValue()) {
                String key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "?";
                entries.add(new ScenarioNode.Entry(key, where(tuple.getKeyNode()), node(tuple.getValueNode())));
            }
            return new ScenarioNode.Branch(entries);
        }
        if (yaml instanceof SequenceNode sequence) {
            List<ScenarioNode.Item> items = new ArrayList<>();
            for (Node item : sequence.getValue()) {
                items.add(new ScenarioNode.Item(where(item), node(item)));
            }
            return new ScenarioNode.Items(items);
        }
        return new ScenarioNode.Single(yaml instanceof ScalarNode scalar ? scalar.getValue() : "");
    }

    private String where(Node yaml) {
        return label + ":" + yaml.getStartMark().map(mark -> mark.getLine() + 1).orElse(1);
    }
}
