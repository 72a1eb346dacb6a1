package org.copperbook.product.tests;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The classes of the product depend on each other in one direction only. A rule that finds no class fails too. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DependencyArrowsTest {

    private JavaClasses product;

    @BeforeAll
    void readAllClasses() {
        product = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(Arrays.stream(ProductBundle.values()).map(ProductBundle::symbolicName).toList());
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "HELP")
    void usesOnlyWhatStandsBelowIt(ProductBundle bundle) {
        noClasses().that().resideInAPackage(bundle.packages())
                .should().dependOnClassesThat().resideInAnyPackage(bundle.forbidden().stream()
                        .map(ProductBundle::packages).toArray(String[]::new))
                .because(bundle + " may use what stands below it and nothing else").check(product);
    }

    /** Help is text; the day it gets a class, that class belongs under the rule above. */
    @Test
    void helpHasNoClasses() {
        assertEquals(List.of(), product.stream()
                .filter(type -> type.getPackageName().startsWith(ProductBundle.HELP.symbolicName()))
                .map(type -> type.getName()).toList());
    }

    @ParameterizedTest
    @MethodSource("org.copperbook.product.tests.ProductBundle#withoutWindow")
    void knowsNoWindow(ProductBundle bundle) {
        noClasses().that().resideInAPackage(bundle.packages())
                .should().dependOnClassesThat().resideInAnyPackage("org.eclipse.swt..", "org.eclipse.jface..",
                        "org.eclipse.ui..", "org.eclipse.e4.ui..", "javax.swing..")
                .because("everything below the desk also runs without a display")
                .allowEmptyShould(bundle == ProductBundle.HELP).check(product);
    }

    @Test
    void calculationsArePureFunctionsOfTheJavaLanguage() {
        var language = resideInAnyPackage(ProductBundle.CALC.packages(), "java.lang..", "java.util",
                "java.util.function..", "java.util.stream..", "java.util.regex..", "java.math..", "java.text..",
                "java.time..", "java.nio.charset..");
        // Tables of wire sizes lie in the bundle itself; these read a stream but cannot open a file.
        var ownTables = belongToAnyOf(InputStream.class, InputStreamReader.class, Reader.class, BufferedReader.class,
                IOException.class, UncheckedIOException.class);
        classes().that().resideInAPackage(ProductBundle.CALC.packages())
                .should().onlyDependOnClassesThat(language.or(ownTables))
                .because("a calculation reads no file, clock, network or database and knows no JSON").check(product);
    }

    @Test
    void recordsAndChecksTouchNoFileNetworkOrDatabase() {
        noClasses().that().resideInAPackage(ProductBundle.JOBS.packages())
                .should().dependOnClassesThat().resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..",
                        "javax.sql..", "org.osgi..", "org.eclipse..")
                .because("records and checks are values; keeping them is the store's work").check(product);
    }

    @Test
    void onlyTheStoreSpeaksToADatabase() {
        noClasses().that().resideOutsideOfPackage(ProductBundle.STORE.packages())
                .should().dependOnClassesThat().resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..",
                        "org.postgresql..")
                .because("one bundle decides how jobs are kept").check(product);
    }

    @Test
    void onlySheetsSpeaksToTheWorkbookLibrary() {
        noClasses().that().resideOutsideOfPackage(ProductBundle.SHEETS.packages())
                .should().dependOnClassesThat().resideInAnyPackage("org.apache.poi..")
                .because("one bundle decides how workbooks are written").check(product);
    }

    @Test
    void bundlesFormNoCircle() {
        slices().matching("org.copperbook.(*)..").should().beFreeOfCycles().check(product);
    }
}
