package halfwidth.engine;

import java.io.Serializable;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
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

    static Places of(Map<SnippetWrapper, Statement> accepted) {
        Map<String, int[]> lines = new HashMap<>();
        accepted.forEach(
                (wrapper, statement) ->
                        lines.put(wrapper.fullClassName(), pageLines(wrapper, statement)));
        return new Places(lines);
    }

    private static int[] pageLines(SnippetWrapper wrapper, Statement statement) {
        String source = wrapper.wrapped();
        int[] lines = new int[(int) source.lines().count()];
        int start = 0;
        for (int i = 0; i < lines.length; i++) {
            lines[i] = statement.lineAt(wrapper.wrappedToSourcePosition(start));
            start = source.indexOf('\n', start) + 1;
        }
        return lines;
    }

    /** The page's line that a stack frame stands for; empty if it is not of page code. */
    OptionalInt pageLine(StackTraceElement frame) {
        Matcher name = SNIPPET_CLASS.matcher(frame.getClassName());
        int[] lines = name.lookingAt() ? pageLines.get(name.group()) : null;
        int line = frame.getLineNumber();
        return lines == null || line < 1 || line > lines.length
                ? OptionalInt.empty()
                : OptionalInt.of(lines[line - 1]);
    }
}
