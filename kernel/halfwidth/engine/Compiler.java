package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.run.Script;
import halfwidth.run.Step;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/** Compiles a page, statement by statement, in a JShell of its own. Nothing runs while it does. */
final class Compiler implements AutoCloseable {
    private final EntryPoints entryPoints = new EntryPoints();
    private final JShell shell;
    private static final Pattern SNIPPET_CLASS = Pattern.compile("REPL\\.\\$JShell\\$[0-9A-Z]+");

    /** Compiled class name to where its code stands on the page; filled when first needed. */
    private final Map<String, Place> places = new HashMap<>();

    private final Map<Snippet, Statement> accepted = new LinkedHashMap<>();

    private record Place(SnippetWrapper wrapper, Statement statement) {}

    Compiler() {
        shell =
                JShell.builder()
                        .executionEngine(EntryPoints.providing(entryPoints), Map.of())
                        .compilerOptions("-proc:none")
                        .build();
        shell.addToClasspath(System.getProperty("java.class.path"));
        for (String line : Prelude.IMPORTS) {
            SnippetEvent event = shell.eval(line).get(0);
            if (event.status() != Snippet.Status.VALID) {
                throw new IllegalStateException(line + " was refused: " + diagnosis(event));
            }
        }
    }

    /** Compiles every piece of the script, in order. */
    Program compile(Script script) {
        List<Statement> statements = new ArrayList<>();
        StatementReader reader = new StatementReader(shell.sourceCodeAnalysis());
        for (Script.Piece piece : script.pieces()) {
            if (piece instanceof Script.Variable variable) {
                statements.add(declaration(variable));
            } else if (piece instanceof Script.Code code) {
                statements.addAll(reader.read(code));
            }
        }
        List<Program.Line> lines = new ArrayList<>();
        Map<String, Integer> declared = new LinkedHashMap<>();
        for (Statement statement : statements) {
            lines.add(compile(lines.size(), statement, declared));
        }
        return new Program(lines, entryPoints, script.wanted(), this::pageLine);
    }

    private static Statement declaration(Script.Variable variable) {
        String name = variable.name();
        String type = variable.type();
        String text;
        if (type.equals(Script.TABLE)) {
            text = "Table %s = halfwidth.engine.Given.table(\"%s\");".formatted(name, name);
        } else {
            String declared =
                    switch (type) {
                        case "java.lang.Double" -> "double";
                        case "java.lang.Integer" -> "int";
                        default -> type;
                    };
            text =
                    "%s %s = halfwidth.engine.Given.value(\"%s\", %s.class);"
                            .formatted(declared, name, name, type);
        }
        return new Statement(variable.line(), variable.line(), text, "", false, true);
    }

    private Program.Line compile(int index, Statement statement, Map<String, Integer> declared) {
        List<SnippetEvent> events = shell.eval(statement.text());
        List<EntryPoints.EntryPoint> entries = entryPoints.taken();
        Optional<Outcome.Failed> problem = problem(statement, events, declared);
        if (problem.isPresent()) {
            NameScanner.Names names = NameScanner.names(statement.text(), false);
            Step step = statement.step(index, Optional.empty());
            return new Program.Line(statement, step, Optional.empty(), names, problem);
        }
        Snippet snippet = events.get(0).snippet();
        boolean member = snippet instanceof MethodSnippet || snippet instanceof TypeDeclSnippet;
        NameScanner.Names names =
                snippet.kind() == Snippet.Kind.IMPORT
                        ? NameScanner.Names.NONE
                        : NameScanner.names(statement.text(), member);
        CompiledStatement compiled =
                new CompiledStatement(
                        entries.isEmpty() ? Optional.empty() : Optional.of(entries.get(0)),
                        name(snippet),
                        type(snippet),
                        snippet instanceof TypeDeclSnippet,
                        names);
        accepted.put(snippet, statement);
        if (snippet instanceof DeclarationSnippet && snippet.kind() != Snippet.Kind.IMPORT) {
            declared.put(compiled.name(), statement.line());
        }
        Step step = statement.step(index, Optional.of(compiled));
        return new Program.Line(
                statement, step, Optional.of(compiled), names, unknownUnit(statement, step));
    }

    private Optional<Outcome.Failed> problem(
            Statement statement, List<SnippetEvent> events, Map<String, Integer> declared) {
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
            String missing =
                    event.snippet() instanceof DeclarationSnippet snippet
                            ? shell.unresolvedDependencies(snippet)
                                    .collect(Collectors.joining(", "))
                            : "";
            return Optional.of(
                    statement.failed(
                            "This step uses a name that no step above it declares.",
                            missing,
                            "Check the spelling, or move the step below the one it needs."));
        }
        boolean replaces =
                event.previousStatus() != Snippet.Status.NONEXISTENT
                        || events.stream().anyMatch(e -> e.status() == Snippet.Status.OVERWRITTEN);
        if (replaces) {
            String name = name(event.snippet());
            return Optional.of(
                    statement.failed(
                            name
                                    + " is declared a second time; line "
                                    + declared.get(name)
                                    + " declares it first.",
                            "",
                            "Use another name: a step must not replace what another one shows."));
        }
        return Optional.empty();
    }

    private static Optional<Outcome.Failed> unknownUnit(Statement statement, Step step) {
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

    private Outcome.Failed rejected(Statement statement, SnippetEvent event) {
        Optional<Diag> error = shell.diagnostics(event.snippet()).filter(Diag::isError).findFirst();
        int offset =
                error.map(Diag::getPosition)
                        .filter(position -> position >= 0)
                        .orElse((long) statement.text().length())
                        .intValue();
        return new Outcome.Failed(
                statement.lineAt(offset),
                "This step cannot be read as Java.",
                diagnosis(event),
                "Compare the step with the shipped page, or correct the line.");
    }

    private String diagnosis(SnippetEvent event) {
        return shell.diagnostics(event.snippet())
                .filter(Diag::isError)
                .map(diag -> diag.getMessage(Locale.ROOT).strip().replaceAll("\\s*\\R\\s*", "; "))
                .collect(Collectors.joining("; "));
    }

    private static String name(Snippet snippet) {
        String name = "";
        if (snippet instanceof DeclarationSnippet declaration) {
            name = declaration.name();
        } else if (snippet instanceof ExpressionSnippet expression) {
            name = expression.name();
        }
        return name == null || name.startsWith("$") ? "" : name;
    }

    private static String type(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return variable.typeName();
        }
        return snippet instanceof ExpressionSnippet expression ? expression.typeName() : "";
    }

    /** Finds the page's line that a frame of page code stands for; empty for any other frame. */
    private OptionalInt pageLine(StackTraceElement frame) {
        if (places.isEmpty()) {
            accepted.forEach(
                    (snippet, statement) -> {
                        SnippetWrapper wrapper = shell.sourceCodeAnalysis().wrapper(snippet);
                        places.put(wrapper.fullClassName(), new Place(wrapper, statement));
                    });
        }
        Matcher snippetClass = SNIPPET_CLASS.matcher(frame.getClassName());
        Place place = snippetClass.lookingAt() ? places.get(snippetClass.group()) : null;
        return place == null ? OptionalInt.empty() : OptionalInt.of(pageLine(place, frame));
    }

    private static int pageLine(Place place, StackTraceElement frame) {
        int start = 0;
        for (int line = 1; line < frame.getLineNumber(); line++) {
            start = place.wrapper().wrapped().indexOf('\n', start) + 1;
        }
        return place.statement().lineAt(place.wrapper().wrappedToSourcePosition(start));
    }

    @Override
    public void close() {
        shell.close();
    }
}
