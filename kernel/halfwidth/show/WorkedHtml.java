package halfwidth.show;

import halfwidth.formula.MathFormula;
import halfwidth.formula.Term;
import halfwidth.run.Proof;
import halfwidth.run.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * A worked step as a piece of HTML, its formulas in MathML: what it computes in an element {@code
 * form}, what came of it in an element {@code value}.
 */
public final class WorkedHtml {
    private static final String EQUALS = "<mo form=\"infix\">=</mo>";

    private final Html html;

    WorkedHtml(Html html) {
        this.html = html;
    }

    /** The piece by itself, which may stand in any block of a page of ours. */
    public static String of(WorkedStep worked) {
        Html html = new Html();
        new WorkedHtml(html).write(worked);
        return html.toString();
    }

    void write(WorkedStep worked) {
        html.open("div", "class", "worked").open("div", "class", "form");
        worked.formula().ifPresentOrElse(term -> formula(worked, term), () -> code(worked));
        worked.branches().forEach(this::branch);
        worked.methods().forEach(this::method);
        if (!worked.step().note().isBlank()) {
            html.element("p", worked.step().note(), "class", "source");
        }
        if (worked.formula().isPresent()) {
            java(worked.step());
        }
        html.close().open("p", "class", "value").text("= ");
        html.element("strong", worked.result());
        proof(worked.worked().proof());
        html.close().close().line();
    }

    private void formula(WorkedStep worked, Term term) {
        String name = MathFormula.name(worked.step().name());
        if (term instanceof Term.Literal) {
            html.open("p", "class", "equation");
            math(List.of(name)); // the result says the rest
            html.close();
        } else {
            equation(name, term);
        }
        worked.numbers().ifPresent(numbers -> equation("", numbers));
    }

    private void code(WorkedStep worked) {
        html.element("p", "Too complex to be shown as a formula:", "class", "small");
        code(worked.step());
    }

    private void java(Step step) {
        html.open("details", "class", "java").element("summary", "Java");
        code(step);
        html.close();
    }

    private void code(Step step) {
        html.open("pre").element("code", step.code().strip()).close();
    }

    private void branch(NumbersPut.Branch branch) {
        html.open("p", "class", "small");
        math(MathFormula.pieces(branch.condition()));
        html.text(branch.held() ? " holds: " : " does not hold: ");
        math(MathFormula.pieces(branch.numbers()));
        html.close();
    }

    private void equation(String left, Term term) {
        html.open("p", "class", "equation");
        math(left + EQUALS, term);
        html.close();
    }

    /** The library methods that a step calls, each with a link to its source. */
    void calls(List<LibraryCall> calls) {
        if (calls.isEmpty()) {
            return;
        }
        html.open("p", "class", "small").text("calls");
        String before = " ";
        for (LibraryCall call : calls) {
            String type = call.method().type();
            html.text(before);
            html.element(
                    "a",
                    type.substring(type.lastIndexOf('.') + 1) + "." + call.method().signature(),
                    "href",
                    "#" + call.method().anchor());
            if (!call.arguments().isEmpty()) {
                html.text(" with " + String.join(", ", call.arguments()));
            }
            before = "; ";
        }
        html.close();
    }

    /** What is computed row by row, with the rows that are shown. */
    void rows(WorkedRows rows) {
        html.open("div", "class", "rows");
        html.element("p", rows.heading() + ":", "class", "small");
        for (WorkedRows.Computed part : rows.formulas()) {
            html.open("p", "class", "equation");
            if (!part.complete()) {
                html.text("Too complex to be shown as a formula; its Java: ");
            }
            math(left(part.name()), part.formula());
            html.close();
        }
        rows.shown().forEach(this::row);
        html.close().line();
    }

    private static String left(String name) {
        return name.isEmpty() ? "" : MathFormula.name(name) + EQUALS;
    }

    private void row(WorkedRows.OneRow row) {
        html.open("p", "class", "row").element("span", row.label() + ":", "class", "small");
        for (WorkedRows.Came came : row.numbers()) {
            html.text(" ").open("span", "class", "came");
            came.numbers()
                    .ifPresentOrElse(
                            numbers -> math(left(came.name()), numbers),
                            () -> math(List.of(left(came.name()))));
            html.text(came.numbers().isPresent() ? " = " : " ").element("strong", came.result());
            html.close();
        }
        html.close();
        row.branches().forEach(this::branch);
        row.methods().forEach(this::method);
    }

    private void math(String left, Term term) {
        List<String> pieces = new ArrayList<>(MathFormula.pieces(term));
        pieces.set(0, left + pieces.get(0));
        math(pieces);
    }

    /** Pieces of one equation; a line may break between them. */
    private void math(List<String> pieces) {
        for (String piece : pieces) {
            if (piece.isEmpty()) {
                continue;
            }
            html.trusted("<math><mrow>" + Html.readable(piece) + "</mrow></math><wbr />");
        }
    }

    private void method(NumbersPut.Defined method) {
        html.open("p", "class", "small").text("where ");
        List<String> pieces = new ArrayList<>(MathFormula.pieces(method.head()));
        List<Term> forms = new ArrayList<>(List.of(method.formula()));
        method.numbers().ifPresent(forms::add);
        for (Term form : forms) {
            List<String> more = MathFormula.pieces(form);
            pieces.add(EQUALS + more.get(0));
            pieces.addAll(more.subList(1, more.size()));
        }
        math(pieces);
        html.close();
    }

    private void proof(Proof proof) {
        html.text(" ");
        html.element(
                "span",
                proof.proved() ? "unit follows" : "unit not proved: " + proof.why(),
                "class",
                proof.proved() ? "proof" : "proof absent");
    }
}
