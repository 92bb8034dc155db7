// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The door from scenario files into one {@link org.silverwake.cli.scenario.ScenarioInput}. Read
 * {@link org.silverwake.cli.scenario.ScenarioReader} first. Every problem is collected with file and line and reported
 * together. Values leave in SI; positions are degrees, longitude first, or in the river layer's system. What a key or a
 * column takes is said once, in KeyList and in the tables' own lists, and makes checks, messages and the reference page.
 */
package org.silverwake.cli.scenario;
