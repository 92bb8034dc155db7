// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Tables as comma-separated text: those that lie in the model's resources, and text that somebody else has read. Read
 * {@link org.silverwake.model.table.CsvTable} first. Values stay text; units are the reader's business. The only package
 * of the model that may use {@code java.io}.
 */
package org.silverwake.model.table;
