package halfwidth.show;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

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
        boolean judged = Answer.anyLimits(answers);
        html.open("table").open("thead").open("tr");
        for (String head :
                judged
                        ? List.of("Result", "Value", "Limit", "Verdict")
                        : List.of("Result", "Value")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
        String group = "";
        for (Answer answer : answers) {
            if (!answer.result().group().equals(group)) {
                group = answer.result().group();
                heading(group, judged);
            }
            row(answer, judged);
        }
        html.close().close();
        if (answers.stream().anyMatch(answer -> answer.uncertainty().isPresent())) {
            html.element("p", "± is one standard uncertainty.", "class", "small");
        }
    }

    private void heading(String group, boolean judged) {
        html.open("tr", "class", "group");
        html.element("th", group, "scope", "rowgroup", "colspan", judged ? "4" : "2");
        html.close().line();
    }

    private void row(Answer answer, boolean judged) {
        html.open("tr").open("th", "scope", "row").text(answer.result().label());
        html.open("span", "class", "name").name(answer.result().name()).close().close();
        if (answer.isText() && !answer.limits().declared()) {
            text(answer, judged);
        } else {
            value(answer, judged);
            if (judged) {
                limits(answer);
                verdict(answer);
            }
        }
        html.close().line();
    }

    /** A text takes the whole row. */
    private void text(Answer answer, boolean judged) {
        html.open("td", "class", "text", "colspan", judged ? "3" : "1");
        html.element("strong", answer.shownValue()).close();
    }

    private void limits(Answer answer) {
        html.open("td").text(Values.withUnit(answer.shownLimits(), answer.result().unit()));
        if (!answer.result().source().isBlank()) {
            html.element("span", answer.result().source(), "class", "source");
        }
        html.close();
    }

    private void value(Answer answer, boolean judged) {
        html.open("td", "class", "value");
        if (answer.value().isEmpty()) {
            html.element("span", "–", "title", "no value");
        } else {
            html.element("strong", Values.withUnit(answer.shownValue(), answer.shownUnit()));
        }
        String uncertainty = answer.shownUncertainty();
        if (!uncertainty.isEmpty()) {
            html.open("span", "class", "uncertainty").text("± " + uncertainty).close();
        }
        if (!judged) {
            why(answer);
        }
        html.close();
    }

    private void verdict(Answer answer) {
        String kind = answer.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
        html.open("td").element("span", answer.verdict().words(), "class", "verdict " + kind);
        why(answer);
        html.close();
    }

    private void why(Answer answer) {
        List<String> awaited =
                answer.value().isPresent()
                        ? List.of()
                        : Absence.awaited(answer.result().name(), sheet.run());
        List<String> leftBlank =
                answer.value().isPresent()
                        ? List.of()
                        : Absence.leftBlank(answer.result().name(), sheet.run());
        String why =
                !awaited.isEmpty()
                        ? labels("waiting for: ", awaited, "")
                        : !leftBlank.isEmpty()
                                ? labels(Absence.OPTIONAL + " (", leftBlank, ")")
                                : answer.ruling().why();
        if (!why.isEmpty()) {
            html.element("span", why, "class", "why");
        }
    }

    private String labels(String before, List<String> names, String after) {
        return names.stream().map(sheet::label).collect(Collectors.joining(", ", before, after));
    }
}
