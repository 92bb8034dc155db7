// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Units: text with a unit in, SI doubles out. Read {@link org.silverwake.model.quantity.Quantity} first. The only place
 * with unit factors. SI inside (m, s, kg, K; angles in degrees); a year is 365.25 d. Knows nothing of scenarios and files.
 */
package org.silverwake.model.quantity;
