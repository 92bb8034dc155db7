// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The data of the report page as one JSON text: what a run found, and what {@code cli.whatif} says that levers do to it. Start at
 * {@link org.silverwake.cli.reportdata.ReportData}; what it writes is told in docs/reference/report-data.md. Numbers are SI unless
 * their key names a unit. What a public page must not hold is left out here, not on the page.
 */
package org.silverwake.cli.reportdata;
