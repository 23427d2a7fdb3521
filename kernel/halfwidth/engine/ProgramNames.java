package halfwidth.engine;

import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.util.TreeScanner;
import halfwidth.run.Outcome;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the name of {@link Noted} in a step as it is written. Compiled, a step's own use of it
 * could not be told from the notes that the compiler of pages puts there.
 */
final class ProgramNames extends TreeScanner<Void, Void> {
    private static final String NAME = Noted.class.getSimpleName();
    private static final Pattern ESCAPE = Pattern.compile("\\\\u+([0-9a-fA-F]{4})");

    private boolean found;

    private ProgramNames() {}

    /** Says that a statement names it; empty if it does not. */
    static Optional<Outcome.Failed> problem(Statement statement) {
        String text =
                ESCAPE.matcher(statement.text())
                        .replaceAll(
                                code ->
                                        Matcher.quoteReplacement(
                                                String.valueOf(
                                                        (char)
                                                                Integer.parseInt(
                                                                        code.group(1), 16))));
        return text.contains(NAME) && names(text)
                ? Optional.of(
                        statement.failed(
                                "Not allowed on a page: " + Noted.class.getName() + ".",
                                "",
                                "The program itself notes the numbers that a formula shows."))
                : Optional.empty();
    }

    private static boolean names(String text) {
        if (text.strip().startsWith("import")) {
            return true;
        }
        ProgramNames names = new ProgramNames();
        for (boolean member : new boolean[] {false, true}) {
            names.scan(NameScanner.parse(new NameScanner.Source(text, member)), null);
        }
        return names.found;
    }

    @Override
    public Void visitIdentifier(IdentifierTree identifier, Void nothing) {
        found |= identifier.getName().contentEquals(NAME);
        return super.visitIdentifier(identifier, nothing);
    }

    @Override
    public Void visitMemberSelect(MemberSelectTree select, Void nothing) {
        found |= select.getIdentifier().contentEquals(NAME);
        return super.visitMemberSelect(select, nothing);
    }
}
