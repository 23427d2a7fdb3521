package halfwidth.adapt;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The text of a page as its file has it: every line keeps the end that it has, so that what is not
 * edited stays the same to the byte.
 */
public final class PageText {
    private static final Pattern LINE =
            Pattern.compile("([^\\r\\n]*)(\\r\\n|\\r|\\n)|([^\\r\\n]+)\\z");
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private final String mark;
    private final List<Line> lines;

    private record Line(String content, String end) {}

    private PageText(String mark, List<Line> lines) {
        this.mark = mark;
        this.lines = List.copyOf(lines);
    }

    /** Takes a file's text, with any line ends, mixed ones too. */
    public static PageText of(String text) {
        String mark = text.startsWith(BYTE_ORDER_MARK) ? BYTE_ORDER_MARK : "";
        List<Line> lines = new ArrayList<>();
        Matcher line = LINE.matcher(text).region(mark.length(), text.length());
        while (line.find()) {
            boolean ended = line.group(3) == null;
            lines.add(ended ? new Line(line.group(1), line.group(2)) : new Line(line.group(3), ""));
        }
        return new PageText(mark, lines);
    }

    /** How many lines it has. */
    public int count() {
        return lines.size();
    }

    /** One line without its end, 1-based. */
    String line(int number) {
        return lines.get(number - 1).content();
    }

    /** The lines of a place, a line feed between each. */
    public String at(Place place) {
        return part(place.first() - 1, place.last()).stream()
                .map(Line::content)
                .collect(Collectors.joining("\n"));
    }

    /** All lines, a line feed between each. */
    String whole() {
        return lines.stream().map(Line::content).collect(Collectors.joining("\n"));
    }

    /**
     * This text with other lines in a place. As many new lines as there were old ones keep the old
     * ones' ends.
     */
    PageText with(Place place, String typed) {
        List<Line> old = part(place.first() - 1, place.last());
        List<String> contents = contents(typed);
        List<Line> now = new ArrayList<>();
        for (int i = 0; i < contents.size(); i++) {
            boolean last = i == contents.size() - 1;
            String end = i < old.size() - 1 ? old.get(i).end() : usualEnd();
            now.add(new Line(contents.get(i), last ? old.get(old.size() - 1).end() : end));
        }
        return spliced(place.first() - 1, place.last(), now);
    }

    /** This text with more lines after one of its lines. */
    PageText after(int line, String typed) {
        Line before = lines.get(line - 1);
        List<Line> now = new ArrayList<>();
        now.add(before.end().isEmpty() ? new Line(before.content(), usualEnd()) : before);
        contents(typed).forEach(content -> now.add(new Line(content, usualEnd())));
        if (before.end().isEmpty()) {
            now.set(now.size() - 1, new Line(now.get(now.size() - 1).content(), ""));
        }
        return spliced(line - 1, line, now);
    }

    /** This text without some lines. */
    PageText without(Place place) {
        part(place.first() - 1, place.last());
        return spliced(place.first() - 1, place.last(), List.of());
    }

    /** What was typed, line by line; nothing typed is one empty line. */
    static List<String> contents(String typed) {
        return List.of(typed.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1));
    }

    private String usualEnd() {
        return lines.stream().map(Line::end).filter(end -> !end.isEmpty()).findFirst().orElse("\n");
    }

    private List<Line> part(int from, int to) {
        if (to > lines.size()) {
            throw new IllegalArgumentException(
                    "line %s is beyond the page's %s lines".formatted(to, lines.size()));
        }
        return lines.subList(from, to);
    }

    private PageText spliced(int from, int to, List<Line> now) {
        List<Line> all = new ArrayList<>(lines.subList(0, from));
        all.addAll(now);
        all.addAll(lines.subList(to, lines.size()));
        return new PageText(mark, all);
    }

    /** The version of a file that holds this text. */
    public Version version() {
        return Version.of(toString().getBytes(StandardCharsets.UTF_8));
    }

    /** The text, as it goes to a file. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(mark);
        lines.forEach(line -> text.append(line.content()).append(line.end()));
        return text.toString();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PageText text && text.mark.equals(mark) && text.lines.equals(lines);
    }

    @Override
    public int hashCode() {
        return lines.hashCode();
    }
}
