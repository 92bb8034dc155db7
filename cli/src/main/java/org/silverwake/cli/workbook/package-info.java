// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The workbook: a scenario as sheets that a person fills in. {@link org.silverwake.cli.workbook.WorkbookPlan} says which
 * sheets there are, and is made from the keys and columns of {@code cli.scenario}; {@link
 * org.silverwake.cli.workbook.WorkbookWriter} writes it, {@link org.silverwake.cli.workbook.WorkbookReader} reads it back.
 * Numbers stand with the unit that the person chose; nothing is converted here. Sheets and columns are recognized by fixed
 * marks, never by words, so that a renamed sheet and another language read the same.
 */
package org.silverwake.cli.workbook;
