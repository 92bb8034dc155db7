// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Names beside points and along lines, none over another. Pure geometry in page units, y down; knows nothing of maps or fonts.
 * Read {@link org.silverwake.geo.label.LabelPlacer} first.
 */
package org.silverwake.geo.label;
