package halfwidth.engine;

import halfwidth.run.Script;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/** Splits a block of code into its top-level statements, as JShell reads them. */
final class StatementReader {
    /**
     * A statement put behind each block: JShell takes a comment into the statement before it only
     * where nothing follows.
     */
    private static final String END = "\nint end$ = 0;";

    private static final Pattern TRAILING_COMMENT = Pattern.compile("\\A[ \\t]*//([^\\r\\n]*)");
    private static final Pattern LEADING =
            Pattern.compile("\\A(?:\\s+|//[^\\n]*(?:\\n|\\z)|/\\*.*?\\*/)+", Pattern.DOTALL);

    private final SourceCodeAnalysis analysis;

    StatementReader(SourceCodeAnalysis analysis) {
        this.analysis = analysis;
    }

    List<Statement> read(Script.Code code) {
        List<Statement> statements = new ArrayList<>();
        String rest = code.text() + END;
        int line = code.line();
        while (!rest.strip().equals(END.strip())) {
            CompletionInfo next = analysis.analyzeCompletion(rest);
            String remaining = next.remaining() == null ? "" : next.remaining();
            int length = rest.length() - remaining.length();
            if (!remaining.endsWith(END.strip()) || length <= 0) {
                length = rest.length() - END.length(); // unfinished: the compiler will say why
            }
            String text = rest.substring(0, length);
            rest = rest.substring(length);
            if (LEADING.matcher(text).replaceFirst("").isEmpty()) {
                break; // only comments are left
            }
            Matcher trailing = TRAILING_COMMENT.matcher(rest);
            String comment = "";
            if (trailing.find()) {
                comment = trailing.group(1).strip();
                rest = rest.substring(trailing.end());
            }
            statements.add(statement(text, comment, line, code.checks()));
            line += lines(text);
        }
        return statements;
    }

    private static Statement statement(String text, String comment, int line, boolean check) {
        int blank = text.length() - text.stripLeading().length();
        int firstLine = line + lines(text.substring(0, blank));
        String kept = text.strip();
        Matcher leading = LEADING.matcher(kept);
        int code = leading.find() ? firstLine + lines(leading.group()) : firstLine;
        return new Statement(code, firstLine, kept, comment, check, false);
    }

    private static int lines(String text) {
        return (int) text.chars().filter(c -> c == '\n').count();
    }
}
