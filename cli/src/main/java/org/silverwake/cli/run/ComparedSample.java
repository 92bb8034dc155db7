// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import java.util.Optional;
import org.silverwake.model.sample.Agreement;
import org.silverwake.model.sample.ModelRange;

/**
 * A sample beside the model.
 *
 * @param located the sample and its place
 * @param states flow states it may belong to, by index
 * @param stateWords how these were found
 * @param model the model's range at its place over these states; empty where it is not compared
 * @param agreement how the two agree; empty likewise
 * @param notCompared why it is not compared, or ""
 */
public record ComparedSample(
        LocatedSample located,
        List<Integer> states,
        String stateWords,
        Optional<ModelRange> model,
        Optional<Agreement> agreement,
        String notCompared) {
    /** Copies the list. */
    public ComparedSample {
        states = List.copyOf(states);
    }
}
