// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import org.silverwake.cli.run.Outcome;

/**
 * One of the scenarios that are compared.
 *
 * @param name its title, with the name of its file where titles are the same
 * @param outcome what its run found
 */
public record NamedOutcome(String name, Outcome outcome) {}
