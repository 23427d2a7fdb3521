package halfwidth.method;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import halfwidth.page.Page;
import halfwidth.run.Prelude;
import halfwidth.run.Script;
import halfwidth.run.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A page written as one Java class, which a compiler can look up names in. Variables are fields, so
 * that the page's methods see them, and then once more locals of one long method in the order of
 * the page, where {@code var} is allowed.
 */
final class PageClass {
    private final StringBuilder text = new StringBuilder();
    private final NavigableMap<Integer, Integer> starts = new TreeMap<>();

    private PageClass() {}

    /** Writes a page; a step that cannot be parsed is left out. */
    static PageClass of(Page page, List<Step> steps) {
        List<Piece> pieces = steps.stream().flatMap(step -> piece(step).stream()).toList();
        PageClass written = new PageClass();
        Prelude.IMPORTS.forEach(written::line);
        pieces.stream().filter(p -> p.kind() == Kind.IMPORT).forEach(written::step);
        written.line("class Page$ {");
        for (Script.Piece piece : Script.of(page).pieces()) {
            if (piece instanceof Script.Variable input) {
                written.line(input.type() + " " + input.name() + ";");
            }
        }
        pieces.stream()
                .filter(piece -> !piece.field().isEmpty())
                .forEach(piece -> written.line(piece.field()));
        pieces.stream().filter(p -> p.kind() == Kind.MEMBER).forEach(written::step);
        written.line("void run$() throws Throwable {");
        pieces.stream().filter(p -> p.kind() == Kind.STATEMENT).forEach(written::step);
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

    private void step(Piece piece) {
        starts.put(text.length(), piece.index());
        line(piece.code());
        starts.put(text.length(), -1);
    }

    private void line(String code) {
        text.append(code).append('\n');
    }

    private enum Kind {
        IMPORT,
        MEMBER,
        STATEMENT
    }

    /**
     * A step to be written.
     *
     * @param field the declaration of its variable without a value; "" if it declares none
     */
    private record Piece(int index, Kind kind, String code, String field) {}

    private static Optional<Piece> piece(Step step) {
        String code = step.code();
        if (JavaText.parses(code + "\nclass Page$ {}") && code.contains("import")) {
            return Optional.of(new Piece(step.index(), Kind.IMPORT, code, ""));
        }
        List<? extends Tree> members = JavaText.members(code);
        if (members.stream().anyMatch(m -> m instanceof MethodTree || m instanceof ClassTree)) {
            return Optional.of(new Piece(step.index(), Kind.MEMBER, code, ""));
        }
        String statement = code + "\n;";
        if (JavaText.parses("class Page$ { void run$() {\n" + statement + "}}")) {
            return Optional.of(
                    new Piece(step.index(), Kind.STATEMENT, statement, fields(statement)));
        }
        String expression = "Object step$" + step.index() + " = " + code + "\n;";
        return JavaText.parses("class Page$ {" + expression + "}")
                ? Optional.of(new Piece(step.index(), Kind.STATEMENT, expression, ""))
                : Optional.empty();
    }

    /** Declarations of the variables that a statement declares with a type. */
    private static String fields(String statement) {
        List<String> fields = new ArrayList<>();
        for (Tree member : JavaText.members(statement)) {
            if (member instanceof VariableTree variable
                    && variable.getType() != null
                    && !variable.getType().toString().equals("var")) {
                fields.add(variable.getType() + " " + variable.getName() + ";");
            }
        }
        return String.join(" ", fields);
    }
}
