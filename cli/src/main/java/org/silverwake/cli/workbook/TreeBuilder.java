// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioNode;

/** Grows a tree of keys, in the order in which they come; a name that comes twice is there twice. */
final class TreeBuilder {
    private final List<Child> children = new ArrayList<>();

    /** A key with its place, and what is under it: a node, or a branch that is still growing. */
    private record Child(String key, String where, ScenarioNode leaf, TreeBuilder branch) {}

    /** The branch of that key, begun where there is none. */
    TreeBuilder branch(String key, String where) {
        return children.stream()
                .filter(c -> c.branch() != null && c.key().equals(key))
                .map(Child::branch)
                .findFirst()
                .orElseGet(() -> begin(key, where));
    }

    /** A new branch, even if there is one of that key. */
    TreeBuilder begin(String key, String where) {
        TreeBuilder branch = new TreeBuilder();
        children.add(new Child(key, where, new ScenarioNode.Blank(), branch));
        return branch;
    }

    /** The branch at a dotted path. */
    TreeBuilder at(String path, String where) {
        TreeBuilder branch = this;
        for (String key : path.isEmpty() ? new String[0] : path.split("\\.")) {
            branch = branch.branch(key, where);
        }
        return branch;
    }

    /** Puts a node at a dotted path. */
    void put(String path, String where, ScenarioNode node) {
        int dot = path.lastIndexOf('.');
        at(dot < 0 ? "" : path.substring(0, dot), where).leaf(path.substring(dot + 1), where, node);
    }

    void leaf(String key, String where, ScenarioNode node) {
        children.add(new Child(key, where, node, null));
    }

    ScenarioNode.Branch build() {
        return new ScenarioNode.Branch(children.stream()
                .map(c -> new ScenarioNode.Entry(
                        c.key(),
                        c.where(),
                        c.branch() == null ? c.leaf() : c.branch().build()))
                .toList());
    }
}
