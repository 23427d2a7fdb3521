package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.run.Step;
import halfwidth.value.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;

/**
 * Decides whether a statement, as JShell evaluated it, may be a step. JShell accepts much that a
 * page must not do: use names that nothing declares yet, or replace what another step declared.
 */
final class Acceptance {
    private final JShell shell;
    private final Map<String, Integer> declaredAt = new HashMap<>();

    Acceptance(JShell shell) {
        this.shell = shell;
    }

    /** Notes which line declares a name, for what is said of a second one. */
    void declared(String name, int line) {
        declaredAt.putIfAbsent(name, line);
    }

    /** Says why a statement is not accepted; empty if it is. */
    Optional<Outcome.Failed> problem(Statement statement, List<SnippetEvent> events) {
        List<SnippetEvent> own =
                events.stream().filter(event -> event.causeSnippet() == null).toList();
        SnippetEvent event = own.get(0);
        if (event.status() == Snippet.Status.REJECTED) {
            return Optional.of(rejected(statement, event));
        }
        if (own.size() > 1) {
            return Optional.of(
                    statement.failed(
                            "This line declares several variables at once.",
                            "",
                            "Give each its own statement, so that each has its own step."));
        }
        if (event.status() != Snippet.Status.VALID) {
            return Optional.of(
                    statement.failed(
                            "This step uses a name that no step above it declares.",
                            unresolved(event.snippet()),
                            "Check the spelling, or move the step below the one it needs."));
        }
        return replaces(event, events)
                ? Optional.of(secondDeclaration(statement, event.snippet()))
                : Optional.empty();
    }

    private static boolean replaces(SnippetEvent event, List<SnippetEvent> events) {
        return event.previousStatus() != Snippet.Status.NONEXISTENT
                || events.stream().anyMatch(e -> e.status() == Snippet.Status.OVERWRITTEN);
    }

    private Outcome.Failed secondDeclaration(Statement statement, Snippet snippet) {
        String name = Compiler.name(snippet);
        return statement.failed(
                "%s is declared a second time; line %s declares it first."
                        .formatted(name, declaredAt.get(name)),
                "",
                "Use another name: a step must not replace what another one shows.");
    }

    private String unresolved(Snippet snippet) {
        return snippet instanceof DeclarationSnippet declaration
                ? shell.unresolvedDependencies(declaration).collect(Collectors.joining(", "))
                : "";
    }

    private Outcome.Failed rejected(Statement statement, SnippetEvent event) {
        int offset =
                shell.diagnostics(event.snippet())
                        .filter(Diag::isError)
                        .map(Diag::getPosition)
                        .filter(position -> position >= 0)
                        .findFirst()
                        .orElse((long) statement.text().length())
                        .intValue();
        return new Outcome.Failed(
                statement.lineAt(offset),
                "This step cannot be read as Java.",
                diagnosis(event),
                "Compare the step with the shipped page, or correct the line.");
    }

    /** The compiler's own words. */
    String diagnosis(SnippetEvent event) {
        return shell.diagnostics(event.snippet())
                .filter(Diag::isError)
                .map(diag -> diag.getMessage(Locale.ROOT).strip().replaceAll("\\s*\\R\\s*", "; "))
                .collect(Collectors.joining("; "));
    }

    /** Says that the comment behind a number names no known unit; empty if it does. */
    static Optional<Outcome.Failed> unknownUnit(Statement statement, Step step) {
        if (step.unit().isEmpty() || Unit.find(step.unit()).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(
                statement.failed(
                        "The comment behind this step names no unit that is known: "
                                + step.unit()
                                + ".",
                        "",
                        "Write the unit first and any remark after a colon, as in"
                                + " // in: the whole cut"));
    }
}
