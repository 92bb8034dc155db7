// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Printed sheets for a wall: what they say, in the language of the work and for its audience. {@link org.silverwake.geo.map.WallPainter} lays them out and
 * draws them. Nothing of single sites reaches a public sheet.
 */
package org.silverwake.cli.sheet;
