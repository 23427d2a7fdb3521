package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Result;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Reruns every cell of every shipped page on its worked example, and its checks. */
class NotebooksTest {
    private static final Pages PAGES = new Pages(Path.of("notebooks"));
    private static final Set<String> REAL = Set.of("double", "Estimate", "OptionalDouble");

    @TestFactory
    Stream<DynamicNode> everyPageRunsOnItsWorkedExample() {
        assertFalse(PAGES.names().isEmpty(), "there are pages to check");
        Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
        return PAGES.names().stream()
                .map(name -> (DynamicNode) dynamicContainer(name, tests(name, workshop)))
                .onClose(workshop::close);
    }

    private static Stream<DynamicTest> tests(String name, Workshop workshop) {
        Page page = PAGES.find(name);
        Run run;
        try (OpenPage open = workshop.open(Script.of(page))) {
            run = open.run(Values.of(Filled.example(page)));
        }
        List<DynamicTest> tests = new ArrayList<>();
        for (Run.Ran ran : run.steps()) {
            tests.add(
                    dynamicTest(
                            "step at line " + ran.step().line(),
                            () -> {
                                done(page, ran);
                                namesItsUnit(page, ran);
                            }));
        }
        for (Run.Ran ran : run.checks()) {
            tests.add(dynamicTest("check at line " + ran.step().line(), () -> done(page, ran)));
        }
        tests.add(dynamicTest("has checks", () -> assertFalse(run.checks().isEmpty())));
        for (Result result : page.results()) {
            tests.add(
                    dynamicTest(
                            "result " + result.name(),
                            () -> {
                                if (!run.finals().containsKey(result.name())) {
                                    fail(page.file() + ":" + result.line() + ": no value");
                                }
                            }));
        }
        return tests.stream();
    }

    private static void done(Page page, Run.Ran ran) {
        if (!(ran.outcome() instanceof Outcome.Done)) {
            fail(place(page, ran) + "\n" + ran.outcome());
        }
    }

    private static void namesItsUnit(Page page, Run.Ran ran) {
        boolean number = REAL.stream().anyMatch(type -> ran.step().code().startsWith(type + " "));
        if (number && !ran.step().name().isEmpty() && ran.step().unit().isEmpty()) {
            fail(place(page, ran) + "\nnames no unit");
        }
    }

    private static String place(Page page, Run.Ran ran) {
        return page.file() + ":" + ran.step().line() + ": " + ran.step().code();
    }
}
