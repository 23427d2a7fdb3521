package halfwidth.method;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Step;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class MethodSourcesTest {
    private static final String PAGE =
            """
            # Page

            ```csv inputs
            name,unit,kind,example,label
            frequency,Hz,number,110.3 MHz,Frequency
            ```

            ```csv readings phasing
            SBO cut [m],offset [°]
            0,1
            ```

            ```java
            int unused = 0;
            ```

            ```csv results
            name,unit,decimals,label
            unused,1,0,Nothing
            ```
            """;

    private final List<Step> steps = new ArrayList<>();

    private Step step(String code) {
        Step step = new Step(steps.size() + 3, 1, code, "", "", "");
        steps.add(step);
        return step;
    }

    private List<MethodSource> calledBy(Step step) {
        Page page = Pages.parse("stage/page", Path.of("page.md"), PAGE);
        return MethodSources.of(page, steps).calledBy(step);
    }

    private List<String> signatures(Step step) {
        return calledBy(step).stream().map(MethodSource::signature).toList();
    }

    @Test
    void aStaticMethodIsFoundByItsImport() {
        step("import halfwidth.localizer.line.*;");
        Step cut = step("String rule = CutLength.ofInches(2.5).inInches()");
        assertEquals(List.of("ofInches(double)", "inInches()"), signatures(cut));
        MethodSource found = calledBy(cut).get(0);
        assertEquals("halfwidth.localizer.line.CutLength", found.type());
        assertEquals("halfwidth/localizer/line/CutLength.java", found.file());
        assertTrue(found.source().startsWith("public static CutLength ofInches("), found.source());
    }

    @Test
    void aVariableOfAnEarlierStepTellsTheType() {
        step("import halfwidth.localizer.uncertainty.Estimate;");
        step("Estimate length = new Estimate(3, 0.1);");
        Step use = step("double u = 2 * length.standardUncertainty(); // m");
        assertEquals(List.of("standardUncertainty()"), signatures(use));
        MethodSource accessor = calledBy(use).get(0);
        assertTrue(accessor.source().contains("record Estimate("), accessor.source());
        assertTrue(accessor.documentation().contains("standardUncertainty: "));
    }

    @Test
    void theTypeIsFoundWhereNoneIsWritten() {
        step("import halfwidth.localizer.line.CutLength;");
        step("var cut = CutLength.ofInches(1);");
        Step chained =
                step("List<String> all = List.of(cut).stream().map(c -> c.inInches()).toList();");
        assertEquals(List.of("inInches()"), signatures(chained));
        Step byName = step("var more = List.of(cut).stream().map(CutLength::inInches).toList();");
        assertEquals(List.of("inInches()"), signatures(byName));
    }

    @Test
    void aMethodOfThePageSeesThePagesVariables() {
        step("import halfwidth.localizer.line.CutLength;");
        step("CutLength cut = CutLength.ofInches(1);");
        Step method = step("String twice() {\n    return cut.inInches() + cut.inInches();\n}");
        assertEquals(List.of("inInches()"), signatures(method));
    }

    @Test
    void aCheckIsAnExpressionAlone() {
        step("import halfwidth.localizer.line.CutLength;");
        Step check = step("CutLength.ofInches(0.5).inInches().equals(\"1/2\");");
        Step bare = step("CutLength.ofInches(0.5) == null");
        assertEquals(List.of("ofInches(double)", "inInches()"), signatures(check));
        assertEquals(List.of("ofInches(double)"), signatures(bare));
    }

    @Test
    void anArgumentThatFitsNoneGivesEveryMethodOfTheName() {
        step("import halfwidth.localizer.line.CutLength;");
        Step wrong = step("var cut = CutLength.ofInches(\"two\");");
        assertEquals(List.of("ofInches(double)"), signatures(wrong));
    }

    @Test
    void methodsOfOtherLibrariesAreNotShown() {
        Step table = step("double[] x = phasing.doubleColumn(\"offset\").asDoubleArray();");
        assertEquals(List.of(), signatures(table));
    }

    @Test
    void aStepThatCannotBeParsedHasNoneAndSpoilsNoOther() {
        step("import halfwidth.localizer.line.CutLength;");
        Step broken = step("String wrong = CutLength.ofInches(1;");
        Step sound = step("String right = CutLength.ofInches(1).inInches();");
        assertEquals(List.of(), signatures(broken));
        assertEquals(List.of("ofInches(double)", "inInches()"), signatures(sound));
    }

    @Test
    void theParametersHaveTheNamesThatTheSourceGivesThem() {
        step("import halfwidth.localizer.*;");
        Step call = step("double x = Require.above(\"width\", 4, 0, \"deg\")");
        assertEquals(
                List.of("name", "value", "bound", "unit"),
                calledBy(call).get(0).parameters().stream()
                        .map(MethodSource.Parameter::name)
                        .toList());
    }
}
