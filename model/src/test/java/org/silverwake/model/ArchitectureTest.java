// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The arrows and habits of the model, as docs/architecture.md states them. */
class ArchitectureTest {
    private static final String ROOT = "org.silverwake.model";

    private static final JavaClasses MODEL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    private static final List<String> GROUND = List.of("quantity", "numerics");
    private static final List<String> WATER = with(GROUND, "network", "input", "table");
    private static final List<String> SOLIDS = with(WATER, "water");
    private static final List<String> MERCURY = with(SOLIDS, "solids");
    private static final List<String> TRANSPORT = with(MERCURY, "mercury", "release", "balance");

    /** What each package of the model may use, besides itself: the table of docs/architecture.md. */
    private static final Map<String, List<String>> ARROWS = Map.ofEntries(
            Map.entry("quantity", List.of("numerics")),
            Map.entry("numerics", List.of()),
            Map.entry("input", GROUND),
            Map.entry("table", GROUND),
            Map.entry("network", GROUND),
            Map.entry("balance", GROUND),
            Map.entry("water", WATER),
            Map.entry("solids", SOLIDS),
            Map.entry("mercury", MERCURY),
            Map.entry("release", MERCURY),
            Map.entry("transport", TRANSPORT),
            Map.entry("screening", with(TRANSPORT, "transport")),
            Map.entry("fish", with(TRANSPORT, "transport", "screening")),
            Map.entry("sample", with(TRANSPORT, "transport", "screening")),
            Map.entry("planning", GROUND));

    /** Calls whose answer depends on the clock, the machine, its language, or chance. */
    private static final List<String> RESTLESS = List.of(
            "java.lang.System.currentTimeMillis()",
            "java.lang.System.nanoTime()",
            "java.lang.System.getenv",
            "java.lang.System.getProperty",
            "java.lang.System.getProperties",
            "java.lang.System.lineSeparator",
            "java.lang.Math.random()",
            "java.lang.String.format(java.lang.String,",
            "java.lang.String.formatted",
            "java.lang.String.toLowerCase()",
            "java.lang.String.toUpperCase()",
            "java.util.Locale.getDefault",
            "java.util.TimeZone.getDefault",
            "java.util.Random.<init>()",
            "java.util.SplittableRandom.<init>()",
            "java.util.UUID.randomUUID()",
            "java.util.concurrent.ThreadLocalRandom.current()",
            "java.time.ZoneId.systemDefault()",
            "java.time.Clock.system",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalTime.now",
            "java.time.LocalDateTime.now",
            "java.time.OffsetDateTime.now",
            "java.time.ZonedDateTime.now",
            "java.time.Year.now",
            "java.time.YearMonth.now");

    /** Functions of java.lang.Math that may differ in the last place between machines; StrictMath has them all. */
    private static final Set<String> INEXACT = Set.of(
            "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
            "log10", "log1p", "pow", "cbrt", "hypot");

    private static List<String> with(List<String> some, String... more) {
        List<String> all = new ArrayList<>(some);
        all.addAll(Arrays.asList(more));
        return List.copyOf(all);
    }

    @Test
    void modelKnowsJavaAndCommonsMathAlone() {
        classes()
                .that()
                .resideOutsideOfPackages(ROOT + ".table..", ROOT + ".planning..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "", "java.lang..", "java.util..", "java.time..", "org.apache.commons.math3..", ROOT + ".."))
                .check(MODEL);
        classes()
                .that()
                .resideInAPackage(ROOT + ".planning..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "",
                        "java.lang..",
                        "java.util..",
                        "java.time..",
                        "org.apache.commons.math3..",
                        "org.ojalgo..",
                        ROOT + ".."))
                .check(MODEL);
        classes()
                .that()
                .resideInAPackage(ROOT + ".table..")
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "",
                        "java.lang..",
                        "java.util..",
                        "java.time..",
                        "java.io..",
                        "java.nio.charset..",
                        "org.apache.commons.math3..",
                        ROOT + ".."))
                .check(MODEL);
    }

    @Test
    void modelDoesNotLog() {
        noClasses()
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.util.logging..", "java.util.prefs.."))
                .check(MODEL);
    }

    @Test
    void everyPackageHasItsRowInTheTable() {
        Set<String> packages = MODEL.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> !name.equals(ROOT))
                .map(name -> name.substring(ROOT.length() + 1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(packages).containsExactlyInAnyOrderElementsOf(ARROWS.keySet());
    }

    static Set<String> packages() {
        return new TreeSet<>(ARROWS.keySet());
    }

    @ParameterizedTest
    @MethodSource("packages")
    void arrowsRunOneWay(String name) {
        String own = ROOT + "." + name + "..";
        String[] allowed =
                ARROWS.get(name).stream().map(p -> ROOT + "." + p + "..").toArray(String[]::new);
        classes()
                .that()
                .resideInAPackage(own)
                .should()
                .onlyDependOnClassesThat(not(resideInAPackage(ROOT + ".."))
                        .or(resideInAPackage(own))
                        .or(resideInAnyPackage(allowed)))
                .check(MODEL);
    }

    @Test
    void typesAreRecordsFinalClassesEnumsOrInterfaces() {
        classes()
                .that(are("written by hand", c -> !c.isAnonymousClass() && !c.isInterface() && !c.isEnum()))
                .should(beFinal())
                .check(MODEL);
    }

    @Test
    void nothingIsProtectedAndNothingIsFloat() {
        noMethods().should().beProtected().check(MODEL);
        noFields().should().beProtected().check(MODEL);
        noFields().should().haveRawType(float.class).check(MODEL);
        noFields().should().haveRawType(float[].class).check(MODEL);
        noMethods()
                .that(member("take or return float", ArchitectureTest::usesFloat))
                .should(exist())
                .allowEmptyShould(true)
                .check(MODEL);
    }

    private static boolean usesFloat(JavaMember member) {
        JavaCodeUnit method = (JavaCodeUnit) member;
        List<JavaClass> types = new ArrayList<>(method.getRawParameterTypes());
        types.add(method.getRawReturnType());
        return types.stream().anyMatch(t -> t.isEquivalentTo(float.class) || t.isEquivalentTo(float[].class));
    }

    @Test
    void accessorsAreNouns() {
        noMethods().should().haveNameMatching("get[A-Z].*").check(MODEL);
    }

    @Test
    void answersDependOnNothingButTheInput() {
        noClasses()
                .should()
                .accessTargetWhere(access(
                        "clock, machine, default language or unseeded chance",
                        access -> RESTLESS.stream()
                                .anyMatch(start ->
                                        access.getTarget().getFullName().startsWith(start))))
                .check(MODEL);
    }

    @Test
    void formulasUseStrictMath() {
        noClasses()
                .should()
                .accessTargetWhere(access(
                        "java.lang.Math where StrictMath is due",
                        access -> access.getTargetOwner().isEquivalentTo(Math.class)
                                && INEXACT.contains(access.getTarget().getName())))
                .check(MODEL);
    }

    private static DescribedPredicate<JavaAccess<?>> access(
            String text, java.util.function.Predicate<JavaAccess<?>> test) {
        return DescribedPredicate.describe(text, test);
    }

    private static DescribedPredicate<JavaClass> are(String text, java.util.function.Predicate<JavaClass> test) {
        return DescribedPredicate.describe(text, test);
    }

    private static DescribedPredicate<JavaMember> member(String text, java.util.function.Predicate<JavaMember> test) {
        return DescribedPredicate.describe(text, test);
    }

    private static <T extends JavaMember> ArchCondition<T> exist() {
        return new ArchCondition<>("exist") {
            @Override
            public void check(T item, ConditionEvents events) {
                events.add(SimpleConditionEvent.satisfied(item, item.getFullName()));
            }
        };
    }

    private static ArchCondition<JavaClass> beFinal() {
        return new ArchCondition<>("be final") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                boolean ok = item.getModifiers().contains(JavaModifier.FINAL);
                events.add(new SimpleConditionEvent(item, ok, item.getName() + (ok ? " is" : " is not") + " final"));
            }
        };
    }
}
