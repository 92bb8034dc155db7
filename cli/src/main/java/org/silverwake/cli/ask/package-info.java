// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * The asking mode: eight plain questions in a terminal, answered with a workbook that is filled in as far as the answers
 * go. Start reading at {@link org.silverwake.cli.ask.Asking}. Nothing here computes; every proposed value is named as
 * proposed.
 */
package org.silverwake.cli.ask;
