// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Makes the demo of the invented Lantern River, scenarios/lantern, from a fixed seed. Read
 * {@link org.silverwake.cli.demo.LanternGenerator} first. Places are kilometers east and north of 20 W 30 S on a plane
 * ({@link org.silverwake.cli.demo.Plane}); heights are meters. Knows nothing of the model.
 */
package org.silverwake.cli.demo;
