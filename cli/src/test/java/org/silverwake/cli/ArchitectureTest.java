// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rules that hold for all modules, and what cli may know, as docs/architecture.md states them. */
class ArchitectureTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.silverwake");

    private static final String[] MAP_LIBRARIES = {
        "org.locationtech..",
        "org.geotools..",
        "org.opengis..",
        "it.geosolutions..",
        "javax.media.jai..",
        "javax.measure..",
        "org.sqlite..",
        "org.wololo..",
        "net.sf.geographiclib.."
    };

    /** Where java.awt is at home: pictures are painted here. */
    private static final List<String> PAINTING = List.of(
            "org.silverwake.geo.map",
            "org.silverwake.geo.label",
            "org.silverwake.cli.chart",
            "org.silverwake.cli.report");

    /** Where images and shapes are read or written, without painting. */
    private static final List<String> RASTERS = List.of("org.silverwake.geo.write", "org.silverwake.geo.terrain");

    /** Where files are opened, besides cli. */
    private static final List<String> FILES = List.of(
            "org.silverwake.geo.layer",
            "org.silverwake.geo.terrain",
            "org.silverwake.geo.write",
            "org.silverwake.geo.map");

    @Test
    void cliUsesMapLibrariesThroughGeoAlone() {
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.cli..")
                .should()
                .dependOnClassesThat(resideInAnyPackage(MAP_LIBRARIES))
                .check(ALL);
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.cli..")
                .should()
                .callCodeUnitWhere(describe("the signature names a map library", ArchitectureTest::namesMapLibrary))
                .check(ALL);
    }

    private static boolean namesMapLibrary(JavaCall<?> call) {
        CodeUnitCallTarget target = call.getTarget();
        List<JavaClass> types = new ArrayList<>(target.getRawParameterTypes());
        types.add(target.getRawReturnType());
        return types.stream()
                .map(type -> type.getName().replaceFirst("^\\[+L", ""))
                .anyMatch(name -> Stream.of(MAP_LIBRARIES).anyMatch(p -> name.startsWith(p.replace("..", "."))));
    }

    @Test
    void modulesPointOneWay() {
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.geo..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.silverwake.cli..")
                .check(ALL);
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.model..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.silverwake.cli..", "org.silverwake.geo..")
                .check(ALL);
    }

    @Test
    void packagesDoNotRunInCircles() {
        slices().matching("org.silverwake.(*).(*)..").should().beFreeOfCycles().check(ALL);
    }

    /** The report page: what levers do is computed first, then written as data, then put into a page. */
    @Test
    void thePageIsFedOneWay() {
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.cli.whatif..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.silverwake.cli.reportdata..", "org.silverwake.cli.page..", "com.fasterxml..")
                .check(ALL);
        noClasses()
                .that()
                .resideInAPackage("org.silverwake.cli.reportdata..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("org.silverwake.cli.page..")
                .check(ALL);
    }

    @Test
    void nothingStaticChanges() {
        fields().that().areStatic().should().beFinal().check(ALL);
        noFields()
                .that(describe("are static and seen outside their class", ArchitectureTest::isShared))
                .should()
                .haveRawType(describe("array", JavaClass::isArray))
                .orShould()
                .haveRawType(describe("map", (JavaClass c) -> c.getName().matches("java\\.util\\..*Map")))
                .check(ALL);
    }

    private static boolean isShared(JavaField field) {
        return field.getModifiers().contains(JavaModifier.STATIC)
                && !field.getModifiers().contains(JavaModifier.PRIVATE)
                && !field.getModifiers().contains(JavaModifier.SYNTHETIC);
    }

    @Test
    void onlyMainEndsTheProgram() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("org.silverwake.cli.Main")
                .should()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .check(ALL);
    }

    @Test
    void nothingPrintsPastTheWriters() {
        GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS.check(ALL);
    }

    @Test
    void picturesArePaintedInTheirPackages() {
        noClasses()
                .that()
                .resideOutsideOfPackages(packages(
                        Stream.concat(PAINTING.stream(), RASTERS.stream()).toList()))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.imageio..")
                .check(ALL);
        noClasses()
                .that()
                .resideInAnyPackage(packages(RASTERS))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt", "java.awt.font..", "java.awt.print..")
                .allowEmptyShould(true)
                .check(ALL);
    }

    @Test
    void filesAreOpenedInTheirPackages() {
        noClasses()
                .that()
                .resideInAnyPackage("org.silverwake.geo..", "org.silverwake.model..")
                .and()
                .resideOutsideOfPackages(packages(FILES))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..")
                .check(ALL);
    }

    /** A rule about a package that is not there guards nothing; before the program has its Main some rooms are still empty. */
    @Test
    void packagesNamedHereExist() {
        assumeTrue(ALL.contain("org.silverwake.cli.Main"), "cli has no Main yet");
        List<String> missing = Stream.of(PAINTING, RASTERS, FILES)
                .flatMap(List::stream)
                .distinct()
                .filter(name -> ALL.stream().noneMatch(c -> c.getPackageName().equals(name)))
                .toList();
        assertThat(missing).isEmpty();
    }

    /** Tests compare doubles with a named tolerance and a reason, never with a bare one. */
    @Test
    void testsNameTheirTolerance() {
        List<Path> folders = Stream.of("model", "geo", "cli")
                .map(module -> Path.of("..", module, "target", "test-classes"))
                .filter(Files::isDirectory)
                .toList();
        JavaClasses tests = new ClassFileImporter().importPaths(folders);
        noClasses()
                .should()
                .callMethodWhere(describe("assertEquals(double, double, double)", ArchitectureTest::comparesBarely))
                .check(tests);
    }

    private static boolean comparesBarely(JavaCall<?> call) {
        return call.getTargetOwner().getName().equals("org.junit.jupiter.api.Assertions")
                && call.getName().equals("assertEquals")
                && call.getTarget().getRawParameterTypes().size() >= 3
                && call.getTarget().getRawParameterTypes().get(2).isPrimitive();
    }

    private static String[] packages(List<String> names) {
        return names.stream().map(name -> name + "..").toArray(String[]::new);
    }
}
