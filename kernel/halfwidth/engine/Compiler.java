package halfwidth.engine;

import halfwidth.bounds.Bounds;
import halfwidth.run.Outcome;
import halfwidth.run.Prelude;
import halfwidth.run.Script;
import halfwidth.run.Step;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.ExpressionSnippet;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/**
 * Compiles one page, statement by statement, in a JShell of its own. Nothing runs while it does.
 */
final class Compiler implements AutoCloseable {
    /**
     * A statement as evaluated: with its compiled form, or with why it has none.
     *
     * @param snippet that it became; empty where it stands in a class with others
     */
    private record Evaluated(
            Statement statement,
            Optional<Snippet> snippet,
            Optional<CompiledStatement> compiled,
            Optional<Outcome.Failed> problem) {}

    /** All statements of a page as evaluated, and where their code stands. */
    private record Page(List<Evaluated> statements, Places places) {}

    private EntryPoints entryPoints;
    private JShell shell;
    private Acceptance acceptance;

    Compiler() {
        begin();
    }

    /** Begins with nothing declared but what every page can use. */
    private void begin() {
        entryPoints = new EntryPoints();
        shell =
                JShell.builder()
                        .executionEngine(EntryPoints.providing(entryPoints), Map.of())
                        .compilerOptions(options())
                        .build();
        acceptance = new Acceptance(shell);
        shell.addToClasspath(System.getProperty("java.class.path"));
        for (String line : Prelude.IMPORTS) {
            SnippetEvent event = shell.eval(line).get(0);
            if (event.status() != Snippet.Status.VALID) {
                throw new IllegalStateException(
                        line + " was refused: " + acceptance.diagnosis(event));
            }
        }
    }

    /**
     * No annotation processor runs, and a Java newer than the bounds can read compiles for the
     * newest that they can.
     */
    private static String[] options() {
        return Runtime.version().feature() <= Bounds.NEWEST_JAVA
                ? new String[] {"-proc:none"}
                : new String[] {"-proc:none", "--release", String.valueOf(Bounds.NEWEST_JAVA)};
    }

    /** Compiles every piece of the script, in order. */
    Program compile(Script script) {
        Formulas formulas = new Formulas(statements(script));
        Page page =
                atOnce(script, formulas)
                        .orElseGet(
                                () -> {
                                    shell.close();
                                    begin();
                                    return oneByOne(script, formulas);
                                });
        UnitsOfPage units = UnitsOfPage.of(script, lines(page.statements()));
        return new Program(
                units.lines(),
                entryPoints.classes(),
                script.wanted(),
                page.places(),
                new Workings(formulas.byIndex(units.lines()), formulas.rows(), units.proofs()));
    }

    /** Compiles the statements of a page as one class; empty where each needs to stand alone. */
    private Optional<Page> atOnce(Script script, Formulas formulas) {
        Map<String, Evaluated> inputs = new LinkedHashMap<>();
        Map<String, String> fields = new LinkedHashMap<>();
        Map<String, List<Script.Variable>> byType = new LinkedHashMap<>();
        List<Statement> statements = new ArrayList<>();
        for (Script.Piece piece : script.pieces()) {
            if (piece instanceof Script.Variable input) {
                if (!statements.isEmpty()) {
                    return Optional.empty();
                }
                byType.computeIfAbsent(input.type(), type -> new ArrayList<>()).add(input);
                fields.put(input.name(), sourceType(input.type()) + " " + input.name() + ";");
            } else if (piece instanceof Script.Code code) {
                statements.addAll(formulas.statements(code));
            }
        }
        for (List<Script.Variable> group : byType.values()) {
            declare(group).forEach(one -> inputs.put(one.statement().text(), one));
        }
        Set<String> declarations =
                inputs.values().stream()
                        .map(one -> one.compiled().orElseThrow().className())
                        .collect(Collectors.toSet());
        return WholePageCompiler.compile(
                        shell,
                        statements,
                        fields,
                        statements.stream().map(formulas::noting).toList())
                // Which statement leaves the bounds is told only where each stands alone.
                .filter(all -> Bounds.refused(entryPoints.classes(), declarations).isEmpty())
                .map(all -> page(fields.keySet(), inputs, statements, all));
    }

    private Page page(
            Set<String> order,
            Map<String, Evaluated> inputs,
            List<Statement> statements,
            WholePageCompiler.Compiled all) {
        List<Evaluated> evaluated = new ArrayList<>();
        order.forEach(name -> evaluated.add(inputs.get(name)));
        for (int i = 0; i < statements.size(); i++) {
            evaluated.add(
                    new Evaluated(
                            statements.get(i),
                            Optional.empty(),
                            Optional.of(all.statements().get(i)),
                            Optional.empty()));
        }
        Places places =
                Places.of(
                        Map.of(
                                all.wrapper(),
                                place ->
                                        statements.get(all.source().statementAt(place)).firstLine()
                                                + all.source().lineAt(place)));
        return new Page(evaluated, places);
    }

    private Page oneByOne(Script script, Formulas formulas) {
        List<Evaluated> evaluated = new ArrayList<>();
        List<Script.Variable> group = new ArrayList<>();
        for (Script.Piece piece : script.pieces()) {
            if (piece instanceof Script.Variable variable) {
                if (!group.isEmpty() && !group.get(0).type().equals(variable.type())) {
                    evaluated.addAll(declare(group));
                    group.clear();
                }
                group.add(variable);
            } else if (piece instanceof Script.Code code) {
                evaluated.addAll(declare(group));
                group.clear();
                formulas.statements(code)
                        .forEach(one -> evaluated.add(evaluate(one, formulas.noting(one))));
            }
        }
        evaluated.addAll(declare(group));
        return new Page(evaluated, places(evaluated));
    }

    /**
     * Declares inputs of one type in one go: a compilation costs about as much for ten as for one.
     */
    private List<Evaluated> declare(List<Script.Variable> variables) {
        if (variables.isEmpty()) {
            return List.of();
        }
        String type = variables.get(0).type();
        String declarators =
                variables.stream()
                        .map(variable -> variable.name() + " = " + given(variable))
                        .collect(Collectors.joining(", "));
        Iterator<SnippetEvent> events =
                shell.eval(sourceType(type) + " " + declarators + ";").iterator();
        Iterator<EntryPoints.EntryPoint> entries = entryPoints.taken().iterator();
        List<Evaluated> declared = new ArrayList<>();
        for (Script.Variable variable : variables) {
            SnippetEvent event = events.next();
            if (event.status() != Snippet.Status.VALID) {
                throw new IllegalStateException(
                        variable + " was refused: " + acceptance.diagnosis(event));
            }
            Statement statement =
                    new Statement(
                            variable.line(), variable.line(), variable.name(), "", false, true);
            declared.add(accepted(statement, event.snippet(), Optional.of(entries.next())));
        }
        return declared;
    }

    private static String sourceType(String type) {
        return switch (type) {
            case "java.lang.Double" -> "double";
            case "java.lang.Integer" -> "int";
            default -> type;
        };
    }

    private static String given(Script.Variable variable) {
        return variable.type().equals(Script.TABLE)
                ? "halfwidth.engine.Given.table(\"%s\")".formatted(variable.name())
                : "halfwidth.engine.Given.value(\"%s\", %s.class)"
                        .formatted(variable.name(), variable.type());
    }

    private Map<Script.Code, List<Statement>> statements(Script script) {
        StatementReader reader = new StatementReader(shell.sourceCodeAnalysis());
        Map<Script.Code, List<Statement>> statements = new LinkedHashMap<>();
        for (Script.Piece piece : script.pieces()) {
            if (piece instanceof Script.Code code) {
                statements.put(code, reader.read(code));
            }
        }
        return statements;
    }

    /**
     * Evaluates a statement.
     *
     * @param noting its text with notes of what it uses, to be tried in turn; where the compiler
     *     accepts none, the statement is evaluated as it stands, and what is wrong is said of it
     */
    private Evaluated evaluate(Statement statement, List<String> noting) {
        Optional<Outcome.Failed> named = ProgramNames.problem(statement);
        if (named.isPresent()) {
            return refused(statement, named);
        }
        for (String text : noting) {
            List<SnippetEvent> events = shell.eval(text);
            if (acceptance.problem(statement, events).isEmpty()) {
                return accepted(
                        statement,
                        events.get(0).snippet(),
                        entryPoints.taken().stream().findFirst());
            }
            entryPoints.taken();
            events.stream()
                    .filter(event -> event.causeSnippet() == null)
                    .filter(event -> event.status().isActive())
                    .forEach(event -> shell.drop(event.snippet()));
        }
        return evaluate(statement);
    }

    private Evaluated evaluate(Statement statement) {
        List<SnippetEvent> events = shell.eval(statement.text());
        List<EntryPoints.EntryPoint> entries = entryPoints.taken();
        Optional<Outcome.Failed> problem = acceptance.problem(statement, events);
        return problem.isPresent()
                ? refused(statement, problem)
                : accepted(statement, events.get(0).snippet(), entries.stream().findFirst());
    }

    private static Evaluated refused(Statement statement, Optional<Outcome.Failed> why) {
        return new Evaluated(statement, Optional.empty(), Optional.empty(), why);
    }

    private Evaluated accepted(
            Statement statement, Snippet snippet, Optional<EntryPoints.EntryPoint> entry) {
        if (snippet instanceof DeclarationSnippet && snippet.kind() != Snippet.Kind.IMPORT) {
            acceptance.declared(name(snippet), statement.line());
        }
        CompiledStatement compiled =
                new CompiledStatement(
                        entry,
                        className(snippet),
                        name(snippet),
                        type(snippet),
                        snippet instanceof TypeDeclSnippet);
        return new Evaluated(
                statement, Optional.of(snippet), Optional.of(compiled), Optional.empty());
    }

    private static List<Program.Line> lines(List<Evaluated> evaluated) {
        Iterator<NameScanner.Names> names =
                NameScanner.namesOfEach(
                                evaluated.stream()
                                        .filter(one -> one.compiled().isPresent())
                                        .map(Compiler::source)
                                        .toList())
                        .iterator();
        List<Program.Line> lines = new ArrayList<>();
        for (Evaluated one : evaluated) {
            Step step = one.statement().step(lines.size(), one.compiled());
            boolean valid = one.compiled().isPresent();
            lines.add(
                    new Program.Line(
                            one.statement(),
                            step,
                            one.compiled(),
                            valid
                                    ? names.next()
                                    : NameScanner.names(
                                            new NameScanner.Source(one.statement().text(), false)),
                            one.problem().or(() -> Acceptance.unknownUnit(one.statement(), step))));
        }
        return lines;
    }

    private static NameScanner.Source source(Evaluated evaluated) {
        CompiledStatement compiled = evaluated.compiled().orElseThrow();
        boolean silent = compiled.className().isEmpty() || evaluated.statement().hidden();
        return new NameScanner.Source(
                silent ? "" : evaluated.statement().text(), compiled.entryPoint().isEmpty());
    }

    private Places places(List<Evaluated> evaluated) {
        Map<SnippetWrapper, IntUnaryOperator> wrappers = new LinkedHashMap<>();
        for (Evaluated one : evaluated) {
            if (one.snippet().isPresent() && !one.statement().hidden()) {
                Snippet snippet = one.snippet().get();
                wrappers.put(
                        shell.sourceCodeAnalysis().wrapper(snippet),
                        one.statement().reading(snippet.source())::lineAt);
            }
        }
        return Places.of(wrappers);
    }

    /** The name a snippet declares or assigns; "" if none. */
    static String name(Snippet snippet) {
        String name = "";
        if (snippet instanceof DeclarationSnippet declaration) {
            name = declaration.name();
        } else if (snippet instanceof ExpressionSnippet expression) {
            name = expression.name();
        }
        return name == null || name.startsWith("$") ? "" : name;
    }

    private String className(Snippet snippet) {
        return snippet.kind() == Snippet.Kind.IMPORT
                ? ""
                : shell.sourceCodeAnalysis().wrapper(snippet).fullClassName();
    }

    private static String type(Snippet snippet) {
        if (snippet instanceof VarSnippet variable) {
            return variable.typeName();
        }
        return snippet instanceof ExpressionSnippet expression ? expression.typeName() : "";
    }

    @Override
    public void close() {
        shell.close();
    }
}
