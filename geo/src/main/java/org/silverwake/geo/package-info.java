// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/** Open GIS layers in, network assembly, maps and layers out. */
package org.silverwake.geo;
