// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * From concentrations to decisions: guideline values, what each is compared with, and the four answers. Read
 * {@link org.silverwake.model.screening.Screening} first.
 *
 * <p>Concentrations are kg of mercury per m3 of water, contents kg per kg of dry solids (fish: wet tissue). Reaches and
 * flow states are dense indices. Nothing here says that water is fit for use: the mildest answer is "below by this
 * estimate".
 */
package org.silverwake.model.screening;
