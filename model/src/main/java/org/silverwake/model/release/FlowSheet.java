// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;

/** A flow sheet that grows until it is determined. */
final class FlowSheet {
    private final List<Stream> streams = new ArrayList<>();
    private final List<Node> nodes = new ArrayList<>();

    void stream(String name, Optional<Noted> measured) {
        streams.add(new Stream(name, measured));
    }

    void node(Node node) {
        nodes.add(node);
    }

    void dropLast() {
        nodes.remove(nodes.size() - 1);
    }

    Reconciliation solve() {
        return Reconciliation.of(streams, nodes);
    }
}
