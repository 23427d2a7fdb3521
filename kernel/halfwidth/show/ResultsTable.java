package halfwidth.show;

import java.util.List;
import java.util.Locale;

/** The answers with their limits and verdicts, and what stands in the way of the rest. */
record ResultsTable(Sheet sheet, Html html) {

    void write() {
        List<Answer> answers = sheet.answers();
        if (!answers.isEmpty()) {
            html.open("section", "class", "results", "aria-labelledby", "results");
            html.element("h2", "Results", "id", "results");
            table(answers);
            html.close().line();
        }
        new Shortfall(sheet, html).write();
    }

    private void table(List<Answer> answers) {
        html.open("table").open("thead").open("tr");
        for (String head : List.of("Result", "Value", "Limit", "Verdict")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
        answers.forEach(this::row);
        html.close().close();
        if (answers.stream().anyMatch(answer -> answer.uncertainty().isPresent())) {
            html.element("p", "± is one standard uncertainty.", "class", "small");
        }
    }

    private void row(Answer answer) {
        html.open("tr").open("th", "scope", "row").text(answer.result().label());
        html.element("span", answer.result().name(), "class", "name").close();
        value(answer);
        html.open("td").text(limits(answer));
        if (!answer.result().source().isBlank()) {
            html.element("span", answer.result().source(), "class", "source");
        }
        html.close();
        verdict(answer);
        html.close().line();
    }

    private void value(Answer answer) {
        html.open("td", "class", "value");
        if (answer.value().isEmpty()) {
            html.element("span", "–", "title", "no value");
        } else {
            html.element("strong", Values.withUnit(answer.shownValue(), answer.result().unit()));
        }
        String uncertainty = answer.shownUncertainty();
        if (!uncertainty.isEmpty()) {
            html.open("span", "class", "uncertainty").text("± " + uncertainty).close();
        }
        html.close();
    }

    private static String limits(Answer answer) {
        return Values.withUnit(answer.shownLimits(), answer.result().unit());
    }

    private void verdict(Answer answer) {
        String kind = answer.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
        html.open("td").element("span", answer.verdict().words(), "class", "verdict " + kind);
        String why = answer.ruling().why();
        if (!why.isEmpty()) {
            html.element("span", why, "class", "why");
        }
        html.close();
    }
}
