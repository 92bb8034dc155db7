// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Charts. Read {@link org.silverwake.cli.chart.ProfileChart} first; {@code Theme} holds the look of all, {@code Axes} their axes,
 * {@code StackPlot} amounts that add up, {@code EndLabels} the names at the right. Each is drawn once, by
 * {@link org.silverwake.geo.map.Picture}, as PNG, SVG or PDF. Everything that comes in is in the unit it is shown
 * in; sizes on paper are points of 1/72 inch. No green anywhere, and no mark that could be read as a tick.
 */
package org.silverwake.cli.chart;
