package halfwidth.proof;

import com.sun.source.util.JavacTask;
import java.net.URI;
import java.util.List;
import javax.tools.DiagnosticListener;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** The compiler's front half, which finds out what each name and expression is. */
final class Attribution {
    private static final JavaCompiler COMPILER = ToolProvider.getSystemJavaCompiler();
    private static final JavaFileManager FILES = COMPILER.getStandardFileManager(null, null, null);

    private Attribution() {}

    /** Prepares to read a source; what is wrong with it is not told, only left out. */
    static JavacTask task(String file, String source) {
        return task(file, source, problem -> {});
    }

    /** Prepares to read a source, and tells what is wrong with it. */
    static JavacTask task(String file, String source, DiagnosticListener<JavaFileObject> problems) {
        JavaFileObject text =
                new SimpleJavaFileObject(
                        URI.create("string:///" + file), JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                        return source;
                    }
                };
        return (JavacTask)
                COMPILER.getTask(
                        null,
                        FILES,
                        problems,
                        List.of("-proc:none", "-classpath", System.getProperty("java.class.path")),
                        null,
                        List.of(text));
    }
}
