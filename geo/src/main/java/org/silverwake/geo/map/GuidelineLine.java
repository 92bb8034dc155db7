// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

/**
 * A guideline as the legend names it.
 *
 * @param name its name
 * @param value its value with unit and fraction
 * @param source document and year
 * @param checkedInPrint whether the value was seen in print; if not, the map says so
 */
public record GuidelineLine(String name, String value, String source, boolean checkedInPrint) {}
