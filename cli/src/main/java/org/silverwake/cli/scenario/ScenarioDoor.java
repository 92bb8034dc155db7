// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.Optional;

/** A way by which a scenario comes in: a text file, or a workbook. What it means is the same by every door. */
@FunctionalInterface
public interface ScenarioDoor {
    /** What was written in the file; empty with a noted problem where the file cannot be read as such. */
    Optional<Written> open(Path file, Problems problems);
}
