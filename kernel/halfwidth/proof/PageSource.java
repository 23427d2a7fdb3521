package halfwidth.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** A page's statements as one class, as the compiler wants them. */
final class PageSource {
    static final String CLASS = "Page$";
    private static final Pattern VAR = Pattern.compile("\\bvar\\b");

    private final StringBuilder text = new StringBuilder();
    private final List<Long> ends = new ArrayList<>();

    PageSource(List<String> imports, List<PageStatement> statements) {
        imports.forEach(line -> text.append(line).append('\n'));
        statements.stream()
                .filter(one -> one.kind() == PageStatement.Kind.IMPORT)
                .forEach(one -> text.append(one.text()).append('\n'));
        text.append("class ").append(CLASS).append(" {\n");
        for (PageStatement one : statements) {
            add(one);
            ends.add((long) text.length());
        }
        text.append("}\n");
    }

    private void add(PageStatement one) {
        switch (one.kind()) {
            case INPUT -> text.append("static %s %s;\n".formatted(one.type(), one.name()));
            case VARIABLE ->
                    text.append("static\n")
                            .append(VAR.matcher(one.text()).replaceFirst(quoted(one.type())))
                            .append(";\n");
            case MEMBER -> text.append("static\n").append(one.text()).append("\n");
            case OTHER -> text.append("static {\n").append(one.text()).append(";}\n");
            default -> {}
        }
    }

    private static String quoted(String type) {
        return java.util.regex.Matcher.quoteReplacement(type);
    }

    String text() {
        return text.toString();
    }

    /**
     * The index of the statement that stands at a place in the text; the number of them if none.
     */
    int statementAt(long position) {
        int index = 0;
        while (index < ends.size() && ends.get(index) <= position) {
            index++;
        }
        return index;
    }
}
