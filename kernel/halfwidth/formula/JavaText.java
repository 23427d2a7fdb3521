package halfwidth.formula;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.tools.Diagnostic;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Java source in memory, for the compiler's parser. */
final class JavaText extends SimpleJavaFileObject {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
    private static final JavaFileManager FILES = COMPILER.getStandardFileManager(null, null, null);

    /**
     * A source as parsed.
     *
     * @param valid whether the parser had nothing against it
     */
    record Parsed(CompilationUnitTree tree, SourcePositions positions, boolean valid) {}

    private final String text;

    private JavaText(int number, String text) {
        super(URI.create("string:///Text" + number + ".java"), Kind.SOURCE);
        this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return text;
    }

    /** Parses each text by itself, all in one go: most of the time goes into setting up. */
    static List<Parsed> parse(List<String> texts) {
        if (texts.isEmpty()) {
            return List.of();
        }
        List<JavaFileObject> files = new ArrayList<>();
        for (String text : texts) {
            files.add(new JavaText(files.size(), text));
        }
        Set<Object> refused = new HashSet<>();
        JavacTask task =
                (JavacTask)
                        COMPILER.getTask(
                                null,
                                FILES,
                                found -> {
                                    if (found.getKind() == Diagnostic.Kind.ERROR) {
                                        refused.add(found.getSource().toUri());
                                    }
                                },
                                List.of("-proc:none"),
                                null,
                                files);
        SourcePositions positions = Trees.instance(task).getSourcePositions();
        List<CompilationUnitTree> trees = new ArrayList<>();
        try {
            task.parse().forEach(trees::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return trees.stream()
                .map(
                        tree ->
                                new Parsed(
                                        tree,
                                        positions,
                                        !refused.contains(tree.getSourceFile().toUri())))
                .toList();
    }
}
