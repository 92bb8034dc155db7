// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.table.CsvTable;
import org.silverwake.model.table.TableException;

/** The guideline library with the user's own table added. */
public final class GuidelineFiles {
    private GuidelineFiles() {}

    /** The library. */
    public static GuidelineLibrary library(Optional<Path> own) {
        GuidelineLibrary builtIn = GuidelineLibrary.builtIn();
        if (own.isEmpty()) {
            return builtIn;
        }
        String name = String.valueOf(own.get().getFileName());
        try {
            return builtIn.with(CsvTable.parse(name, Files.readString(own.get(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new ScenarioException(List.of(name + ": cannot be read (" + e.getMessage() + ")"));
        } catch (TableException e) {
            throw new ScenarioException(List.of(e.getMessage()));
        }
    }
}
