// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The data of the report page: what a run found, and what every site, group or practice does to it, so that the page can move
 * releases without a run of its own. Start at {@link org.silverwake.cli.whatif.ReportData}; what it writes is told in
 * docs/reference/report-data.md. Values are linear in releases at the run's own solids and water: spot by spot along each
 * reach, in each bound and variant, since a reach's value is the largest of its spots. A public page has groups of at least
 * three sites alone, summed before anything is written.
 */
package org.silverwake.cli.whatif;
