// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;

/**
 * Reaches as a user's own style shows them.
 *
 * @param style the style
 * @param columns names of what it may ask for
 * @param rows values of each reach by its index in the river map; null where missing
 * @param note says in the legend whose colors these are
 */
public record OwnLook(OwnStyle style, List<String> columns, List<List<Object>> rows, String note) {}
