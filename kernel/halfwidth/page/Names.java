package halfwidth.page;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.lang.model.SourceVersion;

/** Names that must be Java variables and differ in more than upper and lower case. */
final class Names {
    private final Problems problems;
    private final Map<String, Integer> lines = new HashMap<>();

    Names(Problems problems) {
        this.problems = problems;
    }

    void claim(int line, String name) {
        if (!isVariable(name)) {
            problems.add(line, "name " + quoted(name) + " is no Java variable; expected as in cut");
            return;
        }
        Integer earlier = lines.putIfAbsent(name.toLowerCase(Locale.ROOT), line);
        if (earlier != null) {
            problems.add(
                    line,
                    String.format(
                            "name %s is taken by line %d; expected a name that differs in more"
                                    + " than upper and lower case",
                            name, earlier));
        }
    }

    static boolean isVariable(String name) {
        return SourceVersion.isIdentifier(name) && !SourceVersion.isKeyword(name);
    }

    static String quoted(String text) {
        return text.isEmpty() ? "(empty)" : text;
    }
}
