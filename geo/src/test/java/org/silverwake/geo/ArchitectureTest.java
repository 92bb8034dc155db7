// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** What geo may know, as docs/architecture.md states it. The rules for all modules are in cli's ArchitectureTest. */
class ArchitectureTest {
    private static final String ROOT = "org.silverwake.geo";

    private static final JavaClasses GEO = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    @Test
    void geoKnowsNothingOfCommands() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.silverwake.cli..", "picocli..", "org.snakeyaml..", "de.siegmar..", "org.jfree..")
                .check(GEO);
    }

    /** Networks are geometry here and numbers in the model: what the model computes with is none of geo's business. */
    @Test
    void geoOfTheModelKnowsNetworksAlone() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "org.silverwake.model.transport..",
                        "org.silverwake.model.mercury..",
                        "org.silverwake.model.release..",
                        "org.silverwake.model.solids..",
                        "org.silverwake.model.water..",
                        "org.silverwake.model.balance..")
                .check(GEO);
    }

    @Test
    void packagesDoNotRunInCircles() {
        slices().matching(ROOT + ".(*)..").should().beFreeOfCycles().check(GEO);
    }
}
