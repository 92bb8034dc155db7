// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Real networks end to end. Scenarios lie in the test resources with {@code @OPEN@} for the folder of open data, which is
 * read in place; read {@link org.silverwake.cli.realnetwork.RealScenario} first. Units SI; each layer keeps its own CRS.
 */
package org.silverwake.cli.realnetwork;
