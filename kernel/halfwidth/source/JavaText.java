package halfwidth.source;

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
import javax.tools.DiagnosticListener;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Java source in memory. */
public final class JavaText extends SimpleJavaFileObject {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
    private static final JavaFileManager FILES = COMPILER.getStandardFileManager(null, null, null);

    /**
     * A source as parsed.
     *
     * @param valid whether the parser had nothing against it
     */
    public record Parsed(CompilationUnitTree tree, SourcePositions positions, boolean valid) {}

    private final String text;

    private JavaText(String name, String text) {
        super(URI.create("string:///" + name), Kind.SOURCE);
        this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return text;
    }

    /** Parses each text by itself, all in one go: most of the time goes into setting up. */
    public static List<Parsed> parse(List<String> texts) {
        if (texts.isEmpty()) {
            return List.of();
        }
        List<JavaText> files = new ArrayList<>();
        for (String text : texts) {
            files.add(new JavaText("Text" + files.size() + ".java", text));
        }
        Set<Object> refused = new HashSet<>();
        JavacTask task =
                task(
                        files,
                        // Of more errors than that, a valid text could not be told.
                        List.of("-proc:none", "-Xmaxerrs", "1000000"),
                        found -> {
                            if (found.getKind() == Diagnostic.Kind.ERROR) {
                                refused.add(found.getSource().toUri());
                            }
                        });
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

    /** Parses one text. */
    public static Parsed parse(String text) {
        return parse(List.of(text)).get(0);
    }

    /**
     * Prepares to look up the names of a source against the class path of this JVM, as far as that
     * goes where it has errors, of which nothing is told.
     *
     * @param name of the file, as in {@code Page.java}
     */
    public static JavacTask lookUp(String name, String text) {
        return lookUp(name, text, problem -> {});
    }

    /** The same, telling what is wrong with it. */
    public static JavacTask lookUp(
            String name, String text, DiagnosticListener<JavaFileObject> problems) {
        return task(
                List.of(new JavaText(name, text)),
                List.of(
                        "-proc:none",
                        // The names of parameters are read from class files, too.
                        "-parameters",
                        "-XDshould-stop.ifError=FLOW",
                        "-classpath",
                        System.getProperty("java.class.path")),
                problems);
    }

    private static JavacTask task(
            List<JavaText> files,
            List<String> options,
            DiagnosticListener<JavaFileObject> problems) {
        return (JavacTask) COMPILER.getTask(null, FILES, problems, options, null, files);
    }
}
