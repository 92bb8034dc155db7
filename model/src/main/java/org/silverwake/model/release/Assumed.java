// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

/**
 * A number that the notes do not give, and where it comes from; or one that they give with a stated uncertainty.
 *
 * @param what what it is, in a reader's words
 * @param value its middle and range [{@code unit}]
 * @param unit as people write it, "-" where there is none
 * @param source where it comes from, with "(from memory)" or "(common practice, no source)" where so
 */
public record Assumed(String what, Spread value, String unit, String source) {}
