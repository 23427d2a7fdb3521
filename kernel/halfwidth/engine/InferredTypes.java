package halfwidth.engine;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import halfwidth.run.Prelude;
import halfwidth.source.JavaText;
import halfwidth.source.StatementForm;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/**
 * Finds the types that a page's statements leave to the compiler: of variables declared with {@code
 * var}, and of expressions. The statements are looked up as one method, whose locals are the page's
 * variables; they are fields, too, since the page's own methods see them.
 */
final class InferredTypes extends TreePathScanner<Void, Void> {
    private static final String CLASS = "Page$";
    private static final Set<TypeKind> UNKNOWN =
            EnumSet.of(TypeKind.NONE, TypeKind.NULL, TypeKind.ERROR);
    private static final Pattern IMPORT = Pattern.compile("import ([\\w.]+)\\.[\\w*]+;");

    /** What a type is written without, since every page imports from there. */
    private static final Pattern PACKAGE =
            Pattern.compile(
                    Stream.concat(
                                    Stream.of("java.lang"),
                                    Prelude.IMPORTS.stream().flatMap(InferredTypes::imported))
                            .map(Pattern::quote)
                            .collect(Collectors.joining("|", "\\b(?:", ")\\.(?=[A-Z])")));

    /** As of an anonymous class, a captured wildcard or an intersection. */
    private static final Pattern UNSPEAKABLE = Pattern.compile("[^\\w$.<>,\\[\\] ?]|capture");

    private final StringBuilder source = new StringBuilder();
    private final NavigableMap<Long, Integer> starts = new TreeMap<>();
    private final Map<Integer, String> types = new HashMap<>();
    private Trees trees;
    private SourcePositions positions;

    private InferredTypes() {}

    private static Stream<String> imported(String line) {
        return IMPORT.matcher(line).results().map(found -> found.group(1));
    }

    /**
     * Returns the types by the statements' indices, as they can be written in Java; none where that
     * cannot be. {@code void} stands for an expression without a value.
     *
     * @param fields the page's inputs as declarations
     */
    static Map<Integer, String> of(
            List<String> imports,
            List<String> fields,
            List<String> texts,
            List<StatementForm> forms) {
        InferredTypes inferred = new InferredTypes();
        inferred.write(imports, fields, texts, forms);
        JavacTask task = JavaText.lookUp(CLASS + ".java", inferred.source.toString());
        try {
            Iterable<? extends CompilationUnitTree> units = task.parse();
            task.analyze();
            inferred.trees = Trees.instance(task);
            inferred.positions = inferred.trees.getSourcePositions();
            units.forEach(unit -> inferred.scan(unit, null));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return inferred.types;
    }

    private void write(
            List<String> imports,
            List<String> fields,
            List<String> texts,
            List<StatementForm> forms) {
        imports.forEach(this::line);
        line("class " + CLASS + " {");
        fields.forEach(field -> line("static " + field));
        for (int i = 0; i < forms.size(); i++) {
            StatementForm form = forms.get(i);
            if (form.kind() == StatementForm.Kind.MEMBER) {
                line("static\n" + texts.get(i));
            } else if (form.kind() == StatementForm.Kind.VARIABLE && !form.type().equals("var")) {
                line("static " + form.type() + " " + form.name() + ";");
            }
        }
        line("static void run$() throws Throwable {");
        for (int i = 0; i < forms.size(); i++) {
            StatementForm form = forms.get(i);
            String text = texts.get(i);
            switch (form.kind()) {
                case VARIABLE, EXPRESSION, STATEMENT -> statement(i, "", text);
                case VALUE ->
                        statement(i, "var value$" + i + " =\n", text.substring(0, form.end()));
                default -> {}
            }
        }
        line("}}");
    }

    private void statement(int index, String before, String text) {
        starts.put((long) source.length(), index);
        line(before + text + "\n;");
    }

    private void line(String text) {
        source.append(text).append('\n');
    }

    @Override
    public Void visitVariable(VariableTree tree, Void none) {
        index(tree).ifPresent(index -> note(index, trees.getTypeMirror(getCurrentPath())));
        return super.visitVariable(tree, none);
    }

    @Override
    public Void visitExpressionStatement(ExpressionStatementTree tree, Void none) {
        index(tree)
                .ifPresent(
                        index ->
                                note(
                                        index,
                                        trees.getTypeMirror(
                                                new TreePath(
                                                        getCurrentPath(), tree.getExpression()))));
        return super.visitExpressionStatement(tree, none);
    }

    private Optional<Integer> index(Tree tree) {
        long start = positions.getStartPosition(getCurrentPath().getCompilationUnit(), tree);
        return Optional.ofNullable(starts.floorEntry(start)).map(Map.Entry::getValue);
    }

    private void note(int index, TypeMirror type) {
        if (type == null || UNKNOWN.contains(type.getKind())) {
            return;
        }
        String written = PACKAGE.matcher(type.toString().replace(CLASS + ".", "")).replaceAll("");
        if (!UNSPEAKABLE.matcher(written).find()) {
            types.putIfAbsent(index, written);
        }
    }
}
