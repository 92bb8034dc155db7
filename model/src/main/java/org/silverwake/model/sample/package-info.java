// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Field samples beside the model's estimate. Read {@link org.silverwake.model.sample.Finding} first, then
 * {@link org.silverwake.model.sample.Agreement}.
 *
 * <p>Values are kg of mercury per m3 of water, or kg per kg of solids or tissue. A value below a limit stays below that limit
 * all the way: nothing puts a number in its place but {@link org.silverwake.model.sample.Substitution}, which shows what
 * three such numbers would make of a mean. Nothing here fits the model or calls it validated.
 */
package org.silverwake.model.sample;
