// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/** Pure computation: water, solids, mercury and screening on a river network. Knows nothing of files, maps or coordinates. */
package org.silverwake.model;
