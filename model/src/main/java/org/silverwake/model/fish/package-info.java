// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * From dissolved methylmercury to fish and to portions. Read {@link org.silverwake.model.fish.FishRun} first.
 *
 * <p>Contents are kg of mercury per kg of wet tissue, water values kg per m3 of filtered water. All mercury in fish is taken to
 * be methylmercury. Nothing here is one number: an estimate is low, middle and high. Nothing here says that a fish may be
 * eaten.
 */
package org.silverwake.model.fish;
