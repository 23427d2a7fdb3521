package halfwidth.engine;

import halfwidth.source.StatementForm;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * A page's statements as one Java class, so that one compilation does for all: each variable is a
 * field, each statement a method that runs it, as JShell would make of them one by one.
 */
final class StepClass {
    static final String NAME = "PageSteps";

    /**
     * A stretch of the class.
     *
     * @param line how many lines below a statement's first one it begins
     * @param text whether it is that statement's text, or what follows it
     */
    private record Stretch(int statement, int line, boolean text) {}

    private final StringBuilder source = new StringBuilder();
    private final NavigableMap<Integer, Stretch> stretches = new TreeMap<>();

    /**
     * Writes the class.
     *
     * @param texts the statements; an import is left out
     * @param types of those that leave theirs to the compiler, by index
     */
    StepClass(List<String> texts, List<StatementForm> forms, Map<Integer, String> types) {
        source.append("class " + NAME + " {\n");
        for (int i = 0; i < forms.size(); i++) {
            write(i, texts.get(i), forms.get(i), types.getOrDefault(i, ""));
        }
        source.append("}");
    }

    /** The method that runs a statement. */
    static String method(int statement) {
        return "do_it$" + statement;
    }

    String source() {
        return source.toString();
    }

    private void write(int index, String text, StatementForm form, String found) {
        // What fails in an expression may be told at the line where its method begins.
        stretches.put(source.length(), new Stretch(index, lines(text, 0, form.start()), false));
        switch (form.kind()) {
            case MEMBER -> {
                source.append("static\n");
                copy(index, text, 0, text.length());
            }
            case VARIABLE -> variable(index, text, form, found);
            case EXPRESSION, VALUE -> {
                begin(index, found.equals("void") ? "void" : "Object");
                source.append(found.equals("void") ? "" : "return (\n");
                copy(index, text, form.start(), form.end());
                source.append(found.equals("void") ? ";}" : ");}");
            }
            case STATEMENT -> {
                begin(index, "void");
                copy(index, text, 0, text.length());
                source.append("}");
            }
            case IMPORT -> {}
        }
        source.append('\n');
    }

    private void variable(int index, String text, StatementForm form, String found) {
        String type = form.type().equals("var") ? found : form.type();
        source.append("static %s %s;\n".formatted(type, form.name()));
        begin(index, "Object");
        if (form.end() > form.start()) {
            source.append(type + " value$ =\n");
            copy(index, text, form.start(), form.end());
            source.append("; return %s = value$;}".formatted(form.name()));
        } else {
            // The value that a field has before anything is done with it.
            source.append(
                    "%s[] value$ = new %s[1]; return %s = value$[0];}"
                            .formatted(type, raw(type), form.name()));
        }
    }

    private static String raw(String type) {
        return type.replaceAll("<.*>", "");
    }

    private void begin(int index, String type) {
        source.append("static %s %s() throws Throwable {\n".formatted(type, method(index)));
    }

    private void copy(int index, String text, int start, int end) {
        stretches.put(source.length(), new Stretch(index, lines(text, 0, start), true));
        source.append(text, start, end);
        stretches.put(source.length(), new Stretch(index, lines(text, 0, end), false));
        source.append('\n');
    }

    /** The statement that a place in the class is of, or the nearest before it. */
    int statementAt(int place) {
        Map.Entry<Integer, Stretch> stretch = stretches.floorEntry(place);
        return stretch == null ? 0 : stretch.getValue().statement();
    }

    /** How many lines below a statement's first one a place in the class stands. */
    int lineAt(int place) {
        Map.Entry<Integer, Stretch> stretch = stretches.floorEntry(place);
        if (stretch == null) {
            return 0;
        }
        int within = stretch.getValue().text() ? lines(source, stretch.getKey(), place) : 0;
        return stretch.getValue().line() + within;
    }

    private static int lines(CharSequence text, int start, int end) {
        return (int) text.subSequence(start, end).chars().filter(c -> c == '\n').count();
    }
}
