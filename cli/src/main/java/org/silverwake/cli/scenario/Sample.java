// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

/**
 * A field sample as the laboratory reported it.
 *
 * @param where file and line, or sheet and cell
 * @param name its code
 */
public record Sample(String where, String name) {}
