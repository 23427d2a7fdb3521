package halfwidth.show;

import halfwidth.formula.MathFormula;
import halfwidth.formula.Term;
import halfwidth.run.Proof;
import java.util.List;

/** A worked step as a piece of HTML, its formulas in MathML. */
public final class WorkedHtml {
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
        html.open("div", "class", "worked");
        worked.formula()
                .ifPresentOrElse(
                        term -> equation(MathFormula.name(worked.step().name()), term),
                        () -> code(worked));
        worked.numbers().ifPresent(term -> equation("", term));
        html.open("p", "class", "value").text("= ");
        html.element("strong", worked.result()).close();
        for (WorkedStep.Branch branch : worked.branches()) {
            html.open("p", "class", "small");
            math(MathFormula.of(branch.condition()));
            html.text(branch.held() ? " holds: " : " does not hold: ");
            math(MathFormula.of(branch.numbers()));
            html.close();
        }
        worked.methods().forEach(this::method);
        proof(worked.worked().proof());
        html.close().line();
    }

    private void code(WorkedStep worked) {
        html.element("p", "Too complex to be shown as a formula:", "class", "small");
        html.open("pre").element("code", worked.step().code().strip()).close();
    }

    private void equation(String left, Term term) {
        html.open("p", "class", "equation");
        math(left + "<mo>=</mo>" + MathFormula.of(term));
        html.close();
    }

    private void math(String inner) {
        html.trusted("<math><mrow>" + Html.readable(inner) + "</mrow></math>");
    }

    private void method(WorkedStep.Defined method) {
        html.open("p", "class", "small").text("where ");
        StringBuilder equation = new StringBuilder(MathFormula.of(method.head()));
        List<Term> forms =
                method.numbers()
                        .map(numbers -> List.of(method.formula(), numbers))
                        .orElse(List.of(method.formula()));
        forms.forEach(form -> equation.append("<mo>=</mo>").append(MathFormula.of(form)));
        math(equation.toString());
        html.close();
    }

    private void proof(Proof proof) {
        html.element(
                "p",
                proof.proved() ? "The unit follows." : "Unit not proved: " + proof.why() + ".",
                "class",
                proof.proved() ? "small" : "small absent");
    }
}
