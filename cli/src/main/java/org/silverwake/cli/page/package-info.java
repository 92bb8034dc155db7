// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Pages: one HTML file each that works without a network. On the check page a person sees what was read and corrects it; the
 * report page tells what a run found and lets people try less. Start at {@link org.silverwake.cli.page.CheckPage} and
 * {@link org.silverwake.cli.page.ReportPage}. What pages do is written in JavaScript, beside this package's classes as
 * resources; data goes in as JSON. Positions are WGS 84 degrees, longitude first; lengths are in meters. Nothing in these
 * classes computes; the report's script adds up what {@code cli.reportdata} wrote.
 */
package org.silverwake.cli.page;
