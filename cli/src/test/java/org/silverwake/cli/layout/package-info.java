// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Reads written SVG files back, as a stranger would, and judges how maps and sheets are laid out: what lies on what, and where the
 * parts of a page stand. Points of the page, y down. Start with {@link org.silverwake.cli.layout.SvgPage}.
 */
package org.silverwake.cli.layout;
