// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.Optional;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.geo.place.LocatedPoint.OnReach;

/**
 * A sample and where it lies on the river. Reaches are not cut there, so samples change no result.
 *
 * @param sample the sample
 * @param at its place; empty where it has none
 * @param unplaced why it has none, or ""
 */
public record LocatedSample(Sample sample, Optional<OnReach> at, String unplaced) {}
