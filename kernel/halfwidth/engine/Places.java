package halfwidth.engine;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis.SnippetWrapper;

/**
 * Where the code of compiled classes stands on the page.
 *
 * @param pageLines by class name, the page's line for each line of the source that JShell made
 */
record Places(Map<String, int[]> pageLines) implements Serializable {
    private static final Pattern SNIPPET_CLASS = Pattern.compile("REPL\\.\\$JShell\\$[0-9A-Z]+");

    /**
     * @param accepted the page's line for each place in a snippet's source
     */
    static Places of(Map<SnippetWrapper, IntUnaryOperator> accepted) {
        Map<String, int[]> lines = new HashMap<>();
        accepted.forEach(
                (wrapper, line) -> lines.put(wrapper.fullClassName(), pageLines(wrapper, line)));
        return new Places(lines);
    }

    private static int[] pageLines(SnippetWrapper wrapper, IntUnaryOperator line) {
        String source = wrapper.wrapped();
        int[] lines = new int[(int) source.lines().count()];
        int start = 0;
        for (int i = 0; i < lines.length; i++) {
            lines[i] = line.applyAsInt(wrapper.wrappedToSourcePosition(start));
            start = source.indexOf('\n', start) + 1;
        }
        return lines;
    }

    /** The page's line that a stack frame stands for; empty if it is not of page code. */
    OptionalInt pageLine(StackTraceElement frame) {
        return pageLine(frame.getClassName(), frame.getLineNumber());
    }

    /** The page's line for a line of a class's source; empty if it is not of page code. */
    OptionalInt pageLine(String className, int line) {
        int[] lines = snippet(className).map(pageLines::get).orElse(null);
        return lines == null || line < 1 || line > lines.length
                ? OptionalInt.empty()
                : OptionalInt.of(lines[line - 1]);
    }

    /** The class of the statement within which a class stands; empty if it is of no page. */
    static Optional<String> snippet(String className) {
        Matcher name = SNIPPET_CLASS.matcher(className);
        return name.lookingAt() ? Optional.of(name.group()) : Optional.empty();
    }
}
