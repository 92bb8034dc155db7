// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Scalar settings: their paths, ranges, defaults and sources. Read {@link org.silverwake.model.input.SettingList} first.
 * Values are SI. Knows nothing of files.
 */
package org.silverwake.model.input;
