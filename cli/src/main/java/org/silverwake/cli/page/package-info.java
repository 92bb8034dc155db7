// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The check page: one HTML file that works without a network, on which a person sees what was read and corrects it. Start
 * at {@link org.silverwake.cli.page.CheckPage}. What the page does is written in JavaScript, its words in one file of
 * words, both beside this package's classes as resources; data goes in as JSON. Positions are WGS 84 degrees, longitude
 * first; lengths are in meters. Nothing here computes.
 */
package org.silverwake.cli.page;
