// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/** The program: commands, scenario files, charts, tables and the record of a run. */
package org.silverwake.cli;
