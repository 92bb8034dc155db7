// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * What laboratories write, understood strictly: read {@link org.silverwake.cli.laboratory.RowReader} first. Text comes in cell
 * by cell; a {@link org.silverwake.cli.laboratory.LabRow} goes out that is understood, left out or refused, with the reason.
 * Nothing is guessed. SI. Knows no files and no scenario.
 */
package org.silverwake.cli.laboratory;
