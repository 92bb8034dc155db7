// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * What every site, group or practice does to a run, so that a page can move releases without a run of its own. Start at
 * {@link org.silverwake.cli.whatif.Linear}, which takes a run apart, and {@link org.silverwake.cli.whatif.Levers}, what a person
 * can move. Values [kg/m3, kg/kg] are linear in releases at the run's own solids and water: spot by spot along each reach, in
 * each bound and variant, since a reach's value is the largest of its spots. A public page has groups of at least three sites
 * alone, summed here. Knows nothing of how pages are written: that is {@code cli.reportdata}, which asks this package.
 */
package org.silverwake.cli.whatif;
