// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/** Scenarios side by side: what changes, reach by reach, place by place and in kilograms. Read {@link org.silverwake.cli.compare.Comparison} first. */
package org.silverwake.cli.compare;
