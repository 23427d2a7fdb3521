package halfwidth;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** What the code must keep of its structure: data flows one way, and each library has one door. */
@AnalyzeClasses(packages = "halfwidth", importOptions = ImportOption.DoNotIncludeTests.class)
class StructureTest {
    @ArchTest
    static void thereAreClassesToLookAt(JavaClasses classes) {
        assertTrue(classes.size() > 200, classes.size() + " classes");
    }

    @ArchTest
    static final ArchRule DATA_FLOWS_ONE_WAY =
            layeredArchitecture()
                    .consideringOnlyDependenciesInLayers()
                    .layer("physics")
                    .definedBy("halfwidth.localizer..")
                    .layer("vocabulary")
                    .definedBy("halfwidth.vocabulary..")
                    .layer("value")
                    .definedBy("halfwidth.value..")
                    .layer("spreadsheet")
                    .definedBy("halfwidth.spreadsheet..")
                    .layer("proof")
                    .definedBy("halfwidth.proof..")
                    .layer("formula")
                    .definedBy("halfwidth.formula..")
                    .layer("source")
                    .definedBy("halfwidth.source..")
                    .layer("page")
                    .definedBy("halfwidth.page..")
                    .layer("run")
                    .definedBy("halfwidth.run..")
                    .layer("engine")
                    .definedBy("halfwidth.engine..")
                    .layer("bounds")
                    .definedBy("halfwidth.bounds..")
                    .layer("plot")
                    .definedBy("halfwidth.plot..")
                    .layer("show")
                    .definedBy("halfwidth.show..")
                    .layer("job")
                    .definedBy("halfwidth.job..")
                    .layer("approval")
                    .definedBy("halfwidth.approval..")
                    .layer("key")
                    .definedBy("halfwidth.key..")
                    .layer("record")
                    .definedBy("halfwidth.record..")
                    .layer("web")
                    .definedBy("halfwidth.web..")
                    .layer("adapt")
                    .definedBy("halfwidth.adapt..")
                    .layer("method")
                    .definedBy("halfwidth.method..")
                    .layer("search")
                    .definedBy("halfwidth.search..")
                    .layer("json")
                    .definedBy("halfwidth.json..")
                    .layer("command")
                    .definedBy("halfwidth.command..", "halfwidth")
                    .whereLayer("command")
                    .mayNotBeAccessedByAnyLayer()
                    .whereLayer("adapt")
                    .mayOnlyBeAccessedByLayers("web", "command")
                    .whereLayer("method")
                    .mayOnlyBeAccessedByLayers("show", "web", "command")
                    .whereLayer("search")
                    .mayOnlyBeAccessedByLayers("web", "command")
                    .whereLayer("engine")
                    .mayNotBeAccessedByAnyLayer()
                    .whereLayer("json")
                    .mayOnlyBeAccessedByLayers("command")
                    .whereLayer("record")
                    .mayOnlyBeAccessedByLayers("web", "json", "command")
                    .whereLayer("show")
                    .mayOnlyBeAccessedByLayers("record", "adapt", "web", "json", "command")
                    .whereLayer("key")
                    .mayOnlyBeAccessedByLayers("job", "record")
                    .whereLayer("approval")
                    .mayOnlyBeAccessedByLayers("job", "record", "adapt", "web", "json", "command")
                    .whereLayer("job")
                    .mayOnlyBeAccessedByLayers("record", "web", "json", "command")
                    .whereLayer("run")
                    .mayOnlyBeAccessedByLayers(
                            "engine", "proof", "show", "record", "adapt", "method", "web", "json",
                            "command")
                    .whereLayer("proof")
                    .mayOnlyBeAccessedByLayers("engine")
                    .whereLayer("formula")
                    .mayOnlyBeAccessedByLayers("run", "engine", "show")
                    .whereLayer("source")
                    .mayOnlyBeAccessedByLayers("formula", "proof", "engine", "method")
                    .whereLayer("spreadsheet")
                    .mayOnlyBeAccessedByLayers("page", "show", "job", "web", "command")
                    .whereLayer("page")
                    .mayOnlyBeAccessedByLayers(
                            "run", "show", "job", "record", "adapt", "method", "search", "web",
                            "json", "command")
                    .whereLayer("web")
                    .mayOnlyBeAccessedByLayers("command")
                    .whereLayer("bounds")
                    .mayOnlyBeAccessedByLayers("engine")
                    .whereLayer("plot")
                    .mayOnlyBeAccessedByLayers("engine");

    @ArchTest
    static final ArchRule PHYSICS_KNOWS_NO_NOTEBOOK =
            noClasses()
                    .that()
                    .resideInAPackage("halfwidth.localizer..")
                    .should()
                    .dependOnClassesThat(
                            resideInAPackage("halfwidth..")
                                    .and(not(resideInAPackage("halfwidth.localizer.."))));

    @ArchTest
    static final ArchRule APPROVAL_IS_RULES_ALONE =
            noClasses()
                    .that()
                    .resideInAPackage("halfwidth.approval..")
                    .should()
                    .dependOnClassesThat(
                            resideInAPackage("halfwidth..")
                                    .and(not(resideInAPackage("halfwidth.approval.."))));

    @ArchTest
    static final ArchRule NO_CYCLES = slices().matching("halfwidth.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule PLOTS_HAVE_ONE_DOOR = onlyIn("org.knowm.xchart..", "halfwidth.plot..");

    @ArchTest
    static final ArchRule DIFFERENCES_HAVE_ONE_DOOR =
            onlyIn("com.github.difflib..", "halfwidth.adapt..");

    @ArchTest
    static final ArchRule UNITS_HAVE_ONE_DOOR = onlyIn("javax.measure..", "halfwidth.value..");

    @ArchTest
    static final ArchRule CLASS_FILES_HAVE_ONE_DOOR =
            onlyIn("org.objectweb.asm..", "halfwidth.bounds..");

    @ArchTest
    static final ArchRule WORKBOOKS_HAVE_ONE_DOOR =
            onlyIn("org.dhatim..", "halfwidth.spreadsheet..");

    @ArchTest
    static final ArchRule JSON_HAS_ONE_DOOR = onlyIn("com.fasterxml.jackson..", "halfwidth.json..");

    @ArchTest
    static final ArchRule JSHELL_HAS_ONE_DOOR = onlyIn("jdk.jshell..", "halfwidth.engine..");

    @ArchTest
    static final ArchRule MATHEMATICS_THAT_TABLESAW_BRINGS_ALONG_IS_NOT_USED =
            noClasses()
                    .should()
                    .dependOnClassesThat()
                    .resideInAPackage("org.apache.commons.math3..");

    @ArchTest
    static final ArchRule ONLY_THE_PROGRAM_AND_ITS_WORKER_TOUCH_STANDARD_STREAMS =
            classes()
                    .that()
                    .doNotHaveFullyQualifiedName("halfwidth.Main")
                    .and()
                    .doNotHaveFullyQualifiedName("halfwidth.engine.WorkerMain")
                    .should(
                            com.tngtech.archunit.lang.conditions.ArchConditions.not(
                                    ACCESS_STANDARD_STREAMS));

    private static ArchRule onlyIn(String library, String door) {
        return noClasses()
                .that()
                .resideOutsideOfPackage(door)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library);
    }
}
