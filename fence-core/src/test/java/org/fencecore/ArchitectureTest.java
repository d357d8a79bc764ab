package org.fencecore;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.fencecore.units.Length;
import org.fencecore.worksheet.Worksheet;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** The boundaries that make each package a module, checked on the compiled classes of fence-units and fence-core. */
@AnalyzeClasses(
        packages = "org.fencecore",
        importOptions = {ImportOption.DoNotIncludeTests.class, ImportOption.DoNotIncludePackageInfos.class})
class ArchitectureTest {

    private static final String UNITS = "org.fencecore.units";
    private static final String INTERNAL = "org.fencecore.internal";
    private static final String EXACT = "org.fencecore.geometry.exact";

    /** Each row may use the rows above it; packages in one row do not know each other. */
    private static final List<List<String>> ROWS = List.of(
            List.of(UNITS),
            List.of("org.fencecore.units.tape", EXACT),
            List.of("org.fencecore.geometry", "org.fencecore.worksheet"),
            List.of("org.fencecore.geometry.ground", INTERNAL, "org.fencecore.wood", "org.fencecore.drawing"),
            List.of(
                    "org.fencecore.slope",
                    "org.fencecore.layout",
                    "org.fencecore.gate",
                    "org.fencecore.footing",
                    "org.fencecore.survey",
                    "org.fencecore.rules",
                    "org.fencecore.obstacles",
                    "org.fencecore.terrain",
                    "org.fencecore.wind",
                    "org.fencecore.strength",
                    "org.fencecore.cutting",
                    "org.fencecore.drawing.sheet"),
            List.of("org.fencecore.rail", "org.fencecore.boarding", "org.fencecore.gate.hang"),
            List.of("org.fencecore.site", "org.fencecore.style"),
            List.of("org.fencecore"),
            List.of("org.fencecore.takeoff", "org.fencecore.drawing.view", "org.fencecore.stakeout"),
            List.of("org.fencecore.estimate"),
            List.of("org.fencecore.packet"),
            List.of("org.fencecore.json"));

    /** Numbers without a unit. Counts are int, and money is BigDecimal beside its currency. */
    private static final DescribedPredicate<JavaClass> BARE_NUMBER = describe(
            "a number without a unit",
            type -> type.isEquivalentTo(double.class)
                    || type.isEquivalentTo(float.class)
                    || type.isEquivalentTo(Double.class)
                    || type.isEquivalentTo(Float.class)
                    || type.isEquivalentTo(Number.class)
                    || type.isEquivalentTo(Quantity.class)
                    || (type.getPackageName().startsWith("java.util")
                            && type.getSimpleName().contains("Double")));

    /** Types a user of the library need not add anything for. */
    private static final DescribedPredicate<JavaClass> FOREIGN = describe(
            "a type of a third party or of the library's insides",
            type -> !(type.isPrimitive()
                    || type.getPackageName().startsWith("java.")
                    || (type.getPackageName().startsWith("org.fencecore")
                            && !type.getPackageName().startsWith(INTERNAL))));

    @ArchTest
    static void bothModulesAreRead(JavaClasses classes) {
        assertThat(classes.contain(Length.class)).isTrue();
        assertThat(classes.contain(Worksheet.class)).isTrue();
    }

    @ArchTest
    static final ArchRule everyClassLivesInAPackageOfTheTable = classes()
            .should()
            .resideInAnyPackage(ROWS.stream().flatMap(List::stream).toArray(String[]::new));

    @ArchTest
    static void aRowUsesOnlyTheRowsAboveIt(JavaClasses classes) {
        List<String> above = new ArrayList<>();
        for (List<String> row : ROWS) {
            for (String name : row) {
                List<String> allowed =
                        Stream.concat(above.stream(), Stream.of(name)).toList();
                noClasses()
                        .that()
                        .resideInAPackage(name)
                        .should()
                        .dependOnClassesThat(describe(
                                "live in org.fencecore outside " + allowed,
                                used -> used.getPackageName().startsWith("org.fencecore")
                                        && !allowed.contains(used.getPackageName())))
                        .check(classes);
            }
            above.addAll(row);
        }
    }

    /** Hanging a gate is part of the gate, which does not know its siblings. */
    @ArchTest
    static final ArchRule hangingKnowsTheGateAlone = noClasses()
            .that()
            .resideInAPackage("org.fencecore.gate.hang")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "org.fencecore.slope..",
                    "org.fencecore.layout..",
                    "org.fencecore.footing..",
                    "org.fencecore.survey..",
                    "org.fencecore.rules..",
                    "org.fencecore.obstacles..");

    @ArchTest
    static final ArchRule packagesHaveNoCycles =
            slices().assignedFrom(new EachPackage()).should().beFreeOfCycles();

    /** It is not exported, and nothing but the module path would see to that. */
    @ArchTest
    static final ArchRule onlyGeometryUsesItsArithmetic = noClasses()
            .that()
            .resideOutsideOfPackage("org.fencecore.geometry..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage(EXACT);

    @ArchTest
    static final ArchRule onlyInternalUsesTheNumericLibraries = noClasses()
            .that()
            .resideOutsideOfPackage(INTERNAL)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.commons.math3..", "org.locationtech.jts..");

    @ArchTest
    static final ArchRule onlyUnitsUsesIndriya = noClasses()
            .that()
            .resideOutsideOfPackage(UNITS)
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("tech.units..", "tech.uom..");

    /** So everything else works without Jackson, which is an optional dependency. */
    @ArchTest
    static final ArchRule onlyJsonUsesJackson = noClasses()
            .that()
            .resideOutsideOfPackage("org.fencecore.json")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.fasterxml..");

    @ArchTest
    static final ArchRule noBareNumberCrossesAPackage =
            classes().that(areExportedOutsideUnits()).should(notShow(BARE_NUMBER));

    @ArchTest
    static final ArchRule noForeignTypeCrossesAPackage =
            classes().that(areExportedOutsideUnits()).should(notShow(FOREIGN));

    @Test
    void rulesOnSignaturesFindTheOffender() {
        JavaClasses offender = new ClassFileImporter().importClasses(Offender.class);
        assertThatThrownBy(() -> noBareNumberCrossesAPackage.check(offender))
                .hasMessageContaining("weight(double)")
                .hasMessageContaining("widths()")
                .hasMessageContaining("HALF")
                .hasMessageNotContaining("count(int)")
                .hasMessageNotContaining("hidden()");
        assertThatThrownBy(() -> noForeignTypeCrossesAPackage.check(offender))
                .hasMessageContaining("slice(")
                .hasMessageNotContaining("count(int)");
    }

    @ArchTest
    static void everyPackageIsNullMarked(JavaClasses classes) throws ClassNotFoundException {
        for (String name :
                Set.copyOf(classes.stream().map(JavaClass::getPackageName).toList())) {
            assertThat(Class.forName(name + ".package-info").isAnnotationPresent(NullMarked.class))
                    .as("%s has a package-info with @NullMarked", name)
                    .isTrue();
        }
    }

    private static DescribedPredicate<JavaClass> areExportedOutsideUnits() {
        return describe(
                "are exported outside " + UNITS,
                type -> isVisible(type)
                        && !type.getPackageName().equals(UNITS)
                        && !type.getPackageName().equals(INTERNAL));
    }

    private static boolean isVisible(JavaClass type) {
        Optional<JavaClass> outer = type.getEnclosingClass();
        return isVisible(type.getModifiers()) && (outer.isEmpty() || isVisible(outer.get()));
    }

    private static boolean isVisible(Set<JavaModifier> modifiers) {
        return modifiers.contains(JavaModifier.PUBLIC) || modifiers.contains(JavaModifier.PROTECTED);
    }

    /** Looks at the members a class declares and those it inherits from classes of the library outside units. */
    private static ArchCondition<JavaClass> notShow(DescribedPredicate<JavaClass> banned) {
        return new ArchCondition<>("not take, return or hold out " + banned.getDescription()) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                Stream.of(type.getAllFields(), type.getConstructors(), type.getAllMethods())
                        .flatMap(Set::stream)
                        .filter(ArchitectureTest::isOurs)
                        .filter(member -> isVisible(member.getModifiers()))
                        .filter(member -> shownTypes(member).anyMatch(banned))
                        .forEach(member -> events.add(SimpleConditionEvent.violated(
                                member, member.getFullName() + " shows " + banned.getDescription())));
            }
        };
    }

    private static boolean isOurs(JavaMember member) {
        String owner = member.getOwner().getPackageName();
        return owner.startsWith("org.fencecore") && !owner.equals(UNITS);
    }

    private static Stream<JavaClass> shownTypes(JavaMember member) {
        Stream<JavaType> types = member instanceof JavaCodeUnit unit
                ? Stream.concat(unit.getParameterTypes().stream(), Stream.of(unit.getReturnType()))
                : Stream.of(((JavaField) member).getType());
        return types.flatMap(type -> type.getAllInvolvedRawTypes().stream()).map(JavaClass::getBaseComponentType);
    }

    private static final class EachPackage implements SliceAssignment {
        @Override
        public SliceIdentifier getIdentifierOf(JavaClass type) {
            return SliceIdentifier.of(type.getPackageName());
        }

        @Override
        public String getDescription() {
            return "each package";
        }
    }
}
