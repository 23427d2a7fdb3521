package halfwidth.method;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.List;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticListener;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Java source that is in memory, for the JDK's own parser. */
final class JavaText extends SimpleJavaFileObject {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
    private static final JavaFileManager FILES = COMPILER.getStandardFileManager(null, null, null);

    private final String text;

    JavaText(String text) {
        super(URI.create("string:///Page.java"), JavaFileObject.Kind.SOURCE);
        this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        return text;
    }

    /** A task that looks up names even where the source has errors. */
    static JavacTask task(String text) {
        return task(text, problem -> {});
    }

    private static JavacTask task(String text, DiagnosticListener<JavaFileObject> problems) {
        // With -parameters the names of parameters are read from class files, too.
        List<String> options = List.of("-proc:none", "-parameters", "-XDshould-stop.ifError=FLOW");
        return (JavacTask)
                COMPILER.getTask(null, FILES, problems, options, null, List.of(new JavaText(text)));
    }

    /** Parses a whole source file. */
    static CompilationUnitTree parse(JavacTask task) {
        try {
            return task.parse().iterator().next();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a whole source file is grammatical. */
    static boolean parses(String text) {
        boolean[] sound = {true};
        parse(task(text, p -> sound[0] &= p.getKind() != Diagnostic.Kind.ERROR));
        return sound[0];
    }

    /** The members of a class with this body; none if it is not grammatical. */
    static List<? extends Tree> members(String body) {
        String text = "class Page$ {" + body + "\n}";
        if (!parses(text)) {
            return List.of();
        }
        List<? extends Tree> types = parse(task(text)).getTypeDecls();
        return types.size() == 1 ? ((ClassTree) types.get(0)).getMembers() : List.of();
    }
}
