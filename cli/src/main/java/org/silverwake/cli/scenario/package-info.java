// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The door from scenario files into one {@link org.silverwake.cli.scenario.ScenarioInput}. Every problem is collected with
 * file and line and reported together. Values leave in SI.
 */
package org.silverwake.cli.scenario;
