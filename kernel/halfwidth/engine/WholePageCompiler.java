package halfwidth.engine;

import halfwidth.run.Prelude;
import halfwidth.source.StatementForm;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;

/**
 * Compiles all statements of a page in one go, as one class that JShell evaluates: a compilation
 * costs about as much for a hundred statements as for one. It does so only where that comes to the
 * same as one statement after the other; where in doubt, it gives up, and says nothing of why.
 */
final class WholePageCompiler {
    private static final int MOST_TRIES = 4;

    /**
     * The statements as compiled.
     *
     * @param statements in their order
     * @param wrapper what JShell put around the class
     */
    record Compiled(List<CompiledStatement> statements, StepClass source, SnippetWrapper wrapper) {}

    private final JShell shell;
    private final List<Statement> statements;
    private final List<String> fields;
    private final List<List<String>> noting;
    private final List<StatementForm> forms;

    private WholePageCompiler(
            JShell shell,
            List<Statement> statements,
            List<String> fields,
            List<List<String>> noting,
            List<StatementForm> forms) {
        this.shell = shell;
        this.statements = statements;
        this.fields = fields;
        this.noting = noting;
        this.forms = forms;
    }

    /**
     * Compiles statements whose inputs JShell knows already.
     *
     * @param inputs the page's inputs, as declarations, by name
     * @param noting the texts of each statement with notes of what it uses, to be tried in turn
     * @return empty where it must be done one by one
     */
    static Optional<Compiled> compile(
            JShell shell,
            List<Statement> statements,
            Map<String, String> inputs,
            List<List<String>> noting) {
        List<Optional<StatementForm>> found =
                StatementForm.of(statements.stream().map(Statement::text).toList());
        if (found.isEmpty() || !found.stream().allMatch(WholePageCompiler::plain)) {
            return Optional.empty();
        }
        WholePageCompiler page =
                new WholePageCompiler(
                        shell,
                        statements,
                        List.copyOf(inputs.values()),
                        noting,
                        found.stream().map(Optional::get).toList());
        return page.inOrder(inputs.keySet()) ? page.compiled() : Optional.empty();
    }

    private static boolean plain(Optional<StatementForm> form) {
        return form.isPresent() && form.get().plain();
    }

    /**
     * Whether every name is declared once, and before it is used: in a class, a name is known from
     * its first line to its last.
     */
    private boolean inOrder(Set<String> inputs) {
        Set<String> variables = new HashSet<>(inputs);
        Set<String> methods = new HashSet<>(Prelude.METHODS);
        Set<String> needed = new HashSet<>();
        Set<String> called = new HashSet<>();
        for (int i = 0; i < forms.size(); i++) {
            StatementForm form = forms.get(i);
            needed.addAll(form.needs().names());
            called.addAll(form.needs().calls());
            boolean late =
                    switch (form.kind()) {
                        case IMPORT ->
                                form.name().equals("*")
                                        ? !needed.isEmpty() || !called.isEmpty()
                                        : needed.contains(form.name())
                                                || called.contains(form.name());
                        case MEMBER ->
                                form.declaresType()
                                        ? needed.contains(form.name())
                                                || !variables.add(form.name())
                                        : called.contains(form.name()) || !methods.add(form.name());
                        case VARIABLE ->
                                needed.contains(form.name()) || !variables.add(form.name());
                        default -> false;
                    };
            if (late || ProgramNames.problem(statements.get(i)).isPresent()) {
                return false;
            }
        }
        return true;
    }

    private Optional<Compiled> compiled() {
        List<String> lines = new ArrayList<>(Prelude.IMPORTS);
        for (int i = 0; i < forms.size(); i++) {
            if (forms.get(i).kind() == StatementForm.Kind.IMPORT) {
                SnippetEvent event = shell.eval(statements.get(i).text()).get(0);
                if (event.status() != Snippet.Status.VALID
                        || event.previousStatus() != Snippet.Status.NONEXISTENT) {
                    return Optional.empty();
                }
                lines.add(statements.get(i).text());
            }
        }
        Map<Integer, String> types =
                InferredTypes.of(
                        lines, fields, statements.stream().map(Statement::text).toList(), forms);
        for (int i = 0; i < forms.size(); i++) {
            if (forms.get(i).findsType() && !types.containsKey(i)) {
                return Optional.empty();
            }
        }
        return evaluated(types).map(done -> compiled(types, done));
    }

    /** A class and the snippet that JShell made of it. */
    private record Evaluated(StepClass source, Snippet snippet) {}

    /**
     * Evaluates the class, with fewer notes in those statements that the compiler refuses as they
     * are.
     */
    private Optional<Evaluated> evaluated(Map<Integer, String> types) {
        int[] notes = new int[forms.size()];
        for (int i = 0; i < MOST_TRIES; i++) {
            List<String> texts = new ArrayList<>();
            for (int j = 0; j < notes.length; j++) {
                texts.add(text(j, notes[j]));
            }
            List<Optional<StatementForm>> asNoted = StatementForm.of(texts);
            if (!asNoted.stream().allMatch(WholePageCompiler::plain)) {
                return Optional.empty();
            }
            StepClass source =
                    new StepClass(texts, asNoted.stream().map(Optional::get).toList(), types);
            List<SnippetEvent> events = shell.eval(source.source());
            SnippetEvent event = events.get(0);
            if (event.status() == Snippet.Status.VALID && events.size() == 1) {
                return Optional.of(new Evaluated(source, event.snippet()));
            }
            boolean[] fewer = {false};
            shell.diagnostics(event.snippet())
                    .filter(diagnostic -> diagnostic.isError())
                    .mapToInt(diagnostic -> source.statementAt((int) diagnostic.getPosition()))
                    .distinct()
                    .filter(index -> notes[index] < noting.get(index).size())
                    .forEach(
                            index -> {
                                notes[index]++;
                                fewer[0] = true;
                            });
            if (event.status() != Snippet.Status.REJECTED || !fewer[0]) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private String text(int index, int fewer) {
        List<String> texts = noting.get(index);
        return fewer < texts.size() ? texts.get(fewer) : statements.get(index).text();
    }

    private Compiled compiled(Map<Integer, String> types, Evaluated evaluated) {
        SnippetWrapper wrapper = shell.sourceCodeAnalysis().wrapper(evaluated.snippet());
        String className = wrapper.fullClassName() + "$" + StepClass.NAME;
        List<CompiledStatement> compiled = new ArrayList<>();
        for (int i = 0; i < forms.size(); i++) {
            compiled.add(compiled(i, className, types));
        }
        return new Compiled(compiled, evaluated.source(), wrapper);
    }

    private CompiledStatement compiled(int index, String className, Map<Integer, String> types) {
        StatementForm form = forms.get(index);
        Optional<EntryPoints.EntryPoint> entry =
                Optional.of(new EntryPoints.EntryPoint(className, StepClass.method(index)));
        return switch (form.kind()) {
            case IMPORT -> new CompiledStatement(Optional.empty(), "", "", "", false);
            case MEMBER ->
                    new CompiledStatement(
                            Optional.empty(), className, form.name(), "", form.declaresType());
            case STATEMENT -> new CompiledStatement(entry, className, "", "", false);
            default ->
                    new CompiledStatement(
                            entry,
                            className,
                            form.name(),
                            form.findsType() ? written(types.get(index)) : form.type(),
                            false);
        };
    }

    private static String written(String type) {
        return type.equals("void") ? "" : type;
    }
}
