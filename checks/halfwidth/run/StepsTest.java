package halfwidth.run;

import static halfwidth.run.Bench.at;
import static halfwidth.run.Bench.failureAt;
import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static halfwidth.run.Bench.values;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What becomes of a page's steps, among them the failures that JShell by itself keeps silent. */
class StepsTest {
    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = new Bench(Budget.USUAL);
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    @Test
    void everyStatementOfABlockRuns() {
        Run run = bench.run("double a = 1; double b = 2;\ndouble c = a + b;");
        assertEquals(
                List.of("a", "b", "c"), run.steps().stream().map(r -> r.step().name()).toList());
        assertEquals(3, realAt(run, 11));
    }

    @Test
    void trailingCommentNamesUnitAndNote() {
        Run run = bench.run("double a = 1; // in: the whole cut\n// on its own\nint n = 2;// m");
        Step first = run.steps().get(0).step();
        assertEquals("in", first.unit());
        assertEquals("the whole cut", first.note());
        Step second = run.steps().get(1).step();
        assertEquals("m", second.unit());
        assertEquals(12, second.line(), "a leading comment does not move the step's line");
        assertTrue(second.code().startsWith("// on its own"));
    }

    @Test
    void commentBehindAStatementWithoutNumberIsANote() {
        Run run = bench.run("String feed = \"CSB // not a comment\"; // which feed to cut");
        assertEquals("", run.steps().get(0).step().unit());
        assertEquals("which feed to cut", run.steps().get(0).step().note());
    }

    @Test
    void stepWithoutItsInputWaitsForItByName() {
        Script script =
                page(
                        List.of("spacing", "offset"),
                        "double a = 2 * spacing;\ndouble b = a + offset;\ndouble c = 7;");
        Run run = bench.run(script, values("spacing", 3.0));
        assertEquals(6, realAt(run, 10));
        assertEquals(new Outcome.Waiting(List.of("offset")), at(run, 11));
        assertEquals(7, realAt(run, 12));
        Run nothing = bench.run(script, values());
        assertEquals(new Outcome.Waiting(List.of("spacing")), at(nothing, 10));
        assertEquals(new Outcome.Waiting(List.of("spacing", "offset")), at(nothing, 11));
    }

    @Test
    void waitingReachesThroughMethodsAndTypes() {
        Script script =
                page(
                        List.of("spacing"),
                        """
                        double twice() { return 2 * spacing; }
                        class Span { double four() { return 2 * twice(); } }
                        double a = new Span().four();
                        double b = 5;
                        """);
        Run run = bench.run(script, values());
        assertEquals(new Outcome.Waiting(List.of("spacing")), at(run, 12));
        assertEquals(5, realAt(run, 13));
        assertEquals(12, realAt(bench.run(script, values("spacing", 3.0)), 12));
    }

    @Test
    void whatAWaitingStepWouldHaveChangedWaitsToo() {
        Script script =
                page(
                        List.of("offset"),
                        """
                        List<Double> cuts = new ArrayList<>();
                        double total = 0;
                        cuts.add(offset);
                        total += offset;
                        int count = cuts.size();
                        double mean = total / 2;
                        """);
        Run run = bench.run(script, values());
        assertEquals(new Outcome.Waiting(List.of("offset")), at(run, 14));
        assertEquals(new Outcome.Waiting(List.of("offset")), at(run, 15));
    }

    @Test
    void initializerThatThrowsLeavesNoValueBehind() {
        Run run =
                bench.run(
                        "double a = Double.parseDouble(\"x\");\ndouble b = a + 1;\ndouble c = 3;");
        assertEquals(10, failureAt(run, 10).line());
        assertEquals(new Outcome.Held(List.of(10)), at(run, 11));
        assertEquals(3, realAt(run, 12));
    }

    @Test
    void failureNamesTheLineWithinItsStatement() {
        Run run =
                bench.run(
                        """
                        int zero = 0;

                        double a =
                            5 +
                            Integer.parseInt("one");
                        int half(int n) {
                            return n
                                / zero;
                        }
                        int b = half(4);
                        """);
        Outcome.Failed failed = failureAt(run, 12);
        assertEquals(14, failed.line());
        assertTrue(failed.reason().contains("one"), failed.reason());
        int line = failureAt(run, 19).line();
        assertTrue(line == 16 || line == 17, "the method's line, not " + line);
    }

    @Test
    void stepThatIsNotJavaFailsAloneWithTheCompilersWords() {
        Run run = bench.run("double a = 1;\ndouble b = a +* 2;\ndouble c = a + 1;\ndouble d = b;");
        assertEquals(11, failureAt(run, 11).line());
        assertTrue(failureAt(run, 11).detail().contains("illegal start of expression"));
        assertEquals(2, realAt(run, 12));
        assertEquals(new Outcome.Held(List.of(11)), at(run, 13));
    }

    @Test
    void unfinishedBlockFailsWhereItStarts() {
        Run run = bench.run("double a = 1;\nif (a > 0) {\n  a = 2;\n");
        assertEquals(1, realAt(run, 10));
        assertInstanceOf(Outcome.Failed.class, at(run, 11));
    }

    @Test
    void secondDeclarationOfANameIsRefused() {
        Run run =
                bench.run("double base = 1;\ndouble derived = base;\ndouble base = 2;\nbase + 1;");
        assertTrue(failureAt(run, 12).reason().contains("line 10"), failureAt(run, 12).reason());
        assertEquals(1, realAt(run, 10), "the first declaration still gives what it says");
        assertEquals(1, realAt(run, 11));
        assertEquals(new Outcome.Held(List.of(12)), at(run, 13));
    }

    @Test
    void secondDeclarationOfATypeIsRefused() {
        Run run =
                bench.run(
                        "record P(double x) {}\nP p = new P(1);\nrecord P(double x, double y) {}");
        assertTrue(
                failureAt(run, 12).reason().contains("second time"), failureAt(run, 12).reason());
    }

    @Test
    void inputCannotBeDeclaredAgain() {
        Run run =
                bench.run(page(List.of("spacing"), "double spacing = 2;"), values("spacing", 1.0));
        assertTrue(failureAt(run, 10).reason().contains("line 1"), failureAt(run, 10).reason());
    }

    @Test
    void methodWithAnUnknownNameFailsWhereItIsDeclared() {
        Run run = bench.run("double f() { return nowhere(); }\ndouble a = 1;");
        assertTrue(failureAt(run, 10).detail().contains("nowhere"), failureAt(run, 10).detail());
        assertEquals(1, realAt(run, 11));
    }

    @Test
    void severalVariablesInOneStatementAreRefused() {
        Run run = bench.run("double a = 1, b = 2;");
        assertTrue(failureAt(run, 10).advice().contains("own statement"));
    }

    @Test
    void numberThatIsNoneFails() {
        Run run =
                bench.run(
                        "double a = 0.0 / 0;\ndouble b = 1 / 0.0;\ndouble c = a;\nfloat d = 0f/0;");
        assertTrue(failureAt(run, 10).reason().contains("not a number"));
        assertTrue(failureAt(run, 11).reason().contains("infinite"));
        assertEquals(new Outcome.Held(List.of(10)), at(run, 12));
        assertInstanceOf(Outcome.Failed.class, at(run, 13));
    }

    @Test
    void libraryRefusalIsTheReason() {
        Run run = bench.run("var line = new halfwidth.localizer.line.Line(1.4, 110e6);");
        assertTrue(failureAt(run, 10).reason().contains("velocity factor 1.4"));
    }

    @Test
    void importsMethodsAndTypesStandAsSteps() {
        Run run =
                bench.run(
                        """
                        import java.util.stream.*;
                        record Cut(double length) {}
                        enum Side { LEFT, RIGHT }
                        double sum(Cut... cuts) { return Stream.of(cuts).mapToDouble(Cut::length).sum(); }
                        double total = sum(new Cut(1), new Cut(2.5));
                        String side = Side.RIGHT.name();
                        """);
        assertEquals(3.5, realAt(run, 14));
        assertEquals(new Outcome.Done(new Shown.Words("RIGHT"), ""), at(run, 15));
    }

    @Test
    void printedTextBelongsToItsStep() {
        Run run = bench.run("System.out.print(\"β = \" + 4.04);\ndouble a = 1;");
        assertEquals(new Outcome.Done(new Shown.Nothing(), "β = 4.04"), at(run, 10));
        assertEquals(new Outcome.Done(new Shown.Real(1), ""), at(run, 11));
    }

    @Test
    void plotIsDrawnAlsoWhereAStepMayHaveNone() {
        Script script =
                page(
                        List.of(),
                        """
                        double[] xs = {0, 1};
                        Plot plot = Plot.of("Sweep").points("Reading", xs, xs);
                        Optional<Plot> perhaps = Optional.of(plot);
                        """);
        try (OpenPage open = bench.open(script)) {
            Run run = open.run(values());
            for (int line : new int[] {11, 12}) {
                Shown.Picture picture = (Shown.Picture) ((Outcome.Done) at(run, line)).value();
                assertEquals("Sweep", picture.title());
            }
            for (int index : new int[] {1, 2}) {
                byte[] png = open.draw(index, 400, 300, 1);
                assertEquals(
                        "PNG", new String(png, 1, 3, java.nio.charset.StandardCharsets.US_ASCII));
            }
            assertThrows(PageLost.class, () -> open.draw(0, 400, 300, 1));
        }
    }

    @Test
    void aStepIsRefusedWhoseResultIsShownInAnotherUnit() {
        Script script =
                new Script(
                        List.of(
                                new Script.Code(
                                        10,
                                        "double cut = 3; // mm\ndouble power = 2; // W\n",
                                        false)),
                        List.of("cut", "power"),
                        Map.of("cut", List.of("in"), "power", List.of("V·A")));

        Run run = bench.run(script, Bench.values());

        assertEquals(
                "The step states the unit mm, and the results show cut in in.",
                Bench.failureAt(run, 10).reason());
        assertEquals(2, Bench.realAt(run, 11));
    }

    @Test
    void readingsArriveAsATableWithItsBlanksMissing() {
        Script script =
                new Script(
                        List.of(
                                new Script.Variable(1, "sweep", "tech.tablesaw.api.Table"),
                                new Script.Code(
                                        10,
                                        """
                                        int rows = sweep.rowCount();
                                        int missing = sweep.doubleColumn("ddm").countMissing();
                                        Table shown = sweep;
                                        """,
                                        false)),
                        List.of());
        Values.Columns columns =
                new Values.Columns(
                        List.of(
                                new Values.ColumnValues(
                                        "ddm", Double.class, Arrays.asList(0.155, null, 0.0)),
                                new Values.ColumnValues(
                                        "mark", String.class, Arrays.asList("A", "B", null))));
        Run run = bench.run(script, new Values(Map.of("sweep", columns), true));
        assertEquals(new Outcome.Done(new Shown.Whole(3), ""), at(run, 10));
        assertEquals(new Outcome.Done(new Shown.Whole(1), ""), at(run, 11));
        Shown.Grid grid = (Shown.Grid) ((Outcome.Done) at(run, 12)).value();
        assertEquals(List.of("ddm", "mark"), grid.columns());
        assertEquals(
                List.of(
                        Arrays.asList(0.155, "A"),
                        Arrays.asList(null, "B"),
                        Arrays.asList(0.0, null)),
                grid.rows());
    }

    @Test
    void recordSaysWhatIsInItAndAnArrayWhatIsMissing() {
        Run run =
                bench.run(
                        "record Mark(double at, double[] read) {}\n"
                                + "double[] read = {1, Double.NaN, 3, 4.5};\n"
                                + "Mark mark = new Mark(2, read);\n"
                                + "List<Mark> marks = List.of(mark, mark);\n"
                                + "record Walk(List<Mark> marks, Optional<Mark> lost) {}\n"
                                + "Walk walk = new Walk(marks, Optional.empty());");
        assertEquals(
                List.of(List.of(1.0), Arrays.asList((Object) null), List.of(3.0), List.of(4.5)),
                grid(run, 11).rows());
        assertEquals(List.of(List.of(2.0, "1, … 4.5 (4 items)")), grid(run, 12).rows());
        String told = "(at 2, read 1, … 4.5 (4 items))";
        assertEquals(List.of(Arrays.asList(told + ", " + told, null)), grid(run, 15).rows());
    }

    private static Shown.Grid grid(Run run, int line) {
        return (Shown.Grid) ((Outcome.Done) at(run, line)).value();
    }

    @Test
    void valueWithoutWordsIsShownByItsKind() {
        Run run = bench.run("Random random = new Random(1);");
        assertEquals(new Outcome.Done(new Shown.Words("Random"), ""), at(run, 10));
    }

    @Test
    void checkHoldsFailsOrLacksASource() {
        Script script =
                new Script(
                        List.of(
                                new Script.Code(10, "double quarter = 0.4947;", false),
                                new Script.Code(
                                        20,
                                        """
                                        double expected = 299792458.0 * 0.66 / 100e6 / 4;
                                        agrees(quarter, expected, 5e-5); // SI, c exact
                                        agrees(quarter, 0.5, 5e-5); // SI, c exact
                                        quarter > 0;
                                        """,
                                        true)),
                        List.of());
        Run run = bench.run(script, values());
        List<Outcome> checks = run.checks().stream().map(Run.Ran::outcome).toList();
        assertInstanceOf(Outcome.Done.class, checks.get(1));
        assertEquals("SI, c exact", run.checks().get(1).step().note());
        assertTrue(((Outcome.Failed) checks.get(2)).reason().contains("expected 0.500000"));
        assertTrue(((Outcome.Failed) checks.get(3)).reason().contains("names no source"));
    }

    @Test
    void checksRunOnTheWorkedExampleOnly() {
        Script script =
                new Script(List.of(new Script.Code(20, "1 > 2; // by hand", true)), List.of());
        assertEquals(1, bench.run(script, values()).checks().size());
        assertEquals(List.of(), bench.run(script, new Values(Map.of(), false)).checks());
    }

    @Test
    void whatACheckPrintsIsNotTheNextStepsOwn() {
        Script script =
                new Script(
                        List.of(
                                new Script.Code(10, "System.out.print(\"seen\");", true),
                                new Script.Code(20, "double a = 1;", false)),
                        List.of());
        assertEquals(new Outcome.Done(new Shown.Real(1), ""), at(bench.run(script, values()), 20));
    }

    @Test
    void checkThatFailsTakesNothingFromTheResults() {
        Script script =
                new Script(
                        List.of(
                                new Script.Code(10, "List<Double> cuts = List.of(1.0);", false),
                                new Script.Code(20, "agrees(cuts.get(3), 1, 1); // by hand", true)),
                        List.of("cuts"));
        Run run = bench.run(script, values());
        assertInstanceOf(Outcome.Failed.class, run.checks().get(0).outcome());
        assertTrue(run.finals().containsKey("cuts"), run.toString());
    }

    @Test
    void finalValuesAreThoseAtTheEnd() {
        Script script =
                new Script(
                        List.of(
                                new Script.Variable(1, "offset", "java.lang.Double"),
                                new Script.Code(
                                        10,
                                        "double cut = 1;\ncut = 2;\ndouble later = offset;",
                                        false)),
                        List.of("cut", "later", "nowhere"));
        assertEquals(Map.of("cut", new Shown.Real(2)), bench.run(script, values()).finals());
    }
}
