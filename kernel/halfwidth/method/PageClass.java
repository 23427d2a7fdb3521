package halfwidth.method;

import halfwidth.page.Page;
import halfwidth.run.Prelude;
import halfwidth.run.Script;
import halfwidth.run.Step;
import halfwidth.source.StatementForm;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A page written as one Java class, which a compiler can look up names in. Variables are fields, so
 * that the page's methods see them, and then once more locals of one long method in the order of
 * the page, where {@code var} is allowed.
 */
final class PageClass {
    private static final Set<StatementForm.Kind> STATEMENTS =
            EnumSet.complementOf(EnumSet.of(StatementForm.Kind.IMPORT, StatementForm.Kind.MEMBER));

    private final StringBuilder text = new StringBuilder();
    private final NavigableMap<Integer, Integer> starts = new TreeMap<>();

    private PageClass() {}

    /** Writes a page; a step that cannot be parsed is left out. */
    static PageClass of(Page page, List<Step> steps) {
        List<Optional<StatementForm>> forms =
                StatementForm.of(steps.stream().map(Step::code).toList());
        PageClass written = new PageClass();
        Prelude.IMPORTS.forEach(written::line);
        written.each(steps, forms, Set.of(StatementForm.Kind.IMPORT));
        written.line("class Page$ {");
        for (Script.Piece piece : Script.of(page).pieces()) {
            if (piece instanceof Script.Variable input) {
                written.line(input.type() + " " + input.name() + ";");
            }
        }
        forms.stream()
                .flatMap(Optional::stream)
                .filter(form -> form.kind() == StatementForm.Kind.VARIABLE && !form.findsType())
                .forEach(form -> written.line(form.type() + " " + form.name() + ";"));
        written.each(steps, forms, Set.of(StatementForm.Kind.MEMBER));
        written.line("void run$() throws Throwable {");
        written.each(steps, forms, STATEMENTS);
        written.line("}}");
        return written;
    }

    String text() {
        return text.toString();
    }

    /** The index of the step that an offset into the text is part of; empty between the steps. */
    Optional<Integer> stepAt(long offset) {
        return Optional.ofNullable(starts.floorEntry((int) offset))
                .map(Map.Entry::getValue)
                .filter(index -> index >= 0);
    }

    private void each(
            List<Step> steps, List<Optional<StatementForm>> forms, Set<StatementForm.Kind> kinds) {
        for (int i = 0; i < steps.size(); i++) {
            Optional<StatementForm> form = forms.get(i).filter(one -> kinds.contains(one.kind()));
            if (form.isPresent()) {
                starts.put(text.length(), steps.get(i).index());
                line(code(steps.get(i).index(), steps.get(i), form.get()));
                starts.put(text.length(), -1);
            }
        }
    }

    private void line(String code) {
        text.append(code).append('\n');
    }

    private static String code(int index, Step step, StatementForm form) {
        return form.kind() == StatementForm.Kind.VALUE
                ? "Object step$" + index + " = " + step.code() + "\n;"
                : step.code() + "\n;";
    }
}
