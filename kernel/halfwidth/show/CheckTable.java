package halfwidth.show;

import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import java.util.List;

/** The checks of one block: what must hold, by which source, and whether it does. */
record CheckTable(Sheet sheet, Html html) {

    void write(Part.Checks part) {
        List<Ran> checks = StepList.within(sheet.run().checks(), part.line(), part.code());
        Margin.open(html, "div", "block", part.line());
        if (checks.isEmpty()) {
            html.element("p", "Checked with the worked example's values only:", "class", "small");
            html.open("pre").element("code", part.code()).close();
        } else {
            table(checks);
        }
        html.close().line();
    }

    private void table(List<Ran> checks) {
        long held = checks.stream().filter(CheckTable::holds).count();
        html.open("table", "class", "checks");
        html.element("caption", "Checks: %s of %s hold".formatted(held, checks.size()));
        html.open("thead").open("tr");
        for (String head : List.of("Line", "What must hold", "Source", "Verdict")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
        checks.forEach(this::row);
        html.close().close();
    }

    private static boolean holds(Ran check) {
        return check.outcome() instanceof Outcome.Done;
    }

    private void row(Ran check) {
        int line = check.step().line();
        html.open("tr", "id", "check-" + line);
        html.element("th", Integer.toString(line), "scope", "row");
        html.open("td").element("code", check.step().code().strip()).close();
        html.element("td", check.step().note(), "class", "small").open("td");
        if (holds(check)) {
            html.element("span", "holds", "class", "verdict met");
        } else if (check.outcome() instanceof Outcome.Failed failed) {
            html.element("span", "does not hold", "class", "verdict not-met");
            html.element("span", failed.reason(), "class", "why");
            html.element("span", failed.detail(), "class", "why");
        } else {
            html.element("span", "not run", "class", "verdict not-judged");
        }
        html.close().close().line();
    }
}
