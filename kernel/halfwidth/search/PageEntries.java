package halfwidth.search;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.search.Hit.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.TextContentRenderer;

/** What can be found on a page. */
final class PageEntries {
    private static final Parser PARSER =
            Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
    private static final TextContentRenderer TEXT = TextContentRenderer.builder().build();

    private final Page page;
    private final List<String> around;
    private final List<Entry> entries = new ArrayList<>();

    private PageEntries(Page page) {
        this.page = page;
        this.around = Words.of(page.title() + " " + page.name());
    }

    static Stream<Entry> of(Page page) {
        PageEntries found = new PageEntries(page);
        found.entries.add(
                new Entry(
                        new Hit(page.name(), page.title(), Kind.PAGE, "", page.title(), 1),
                        found.around,
                        Words.of(page.purpose())));
        page.parts().forEach(found::add);
        return found.entries.stream();
    }

    private void add(Part part) {
        if (part instanceof Part.Prose prose) {
            headings(prose);
        } else if (part instanceof Part.Inputs inputs) {
            for (Field field : inputs.fields()) {
                add(Kind.FIELD, field.name(), field.label(), field.line());
            }
        } else if (part instanceof Part.Results results) {
            for (Result result : results.results()) {
                add(Kind.RESULT, result.name(), result.label(), result.line());
            }
        } else if (part instanceof Part.Readings readings) {
            String columns =
                    readings.columns().stream().map(Column::name).collect(Collectors.joining(", "));
            add(Kind.READINGS, readings.name(), columns, readings.line());
        }
    }

    private void headings(Part.Prose prose) {
        PARSER.parse(prose.markdown())
                .accept(
                        new AbstractVisitor() {
                            @Override
                            public void visit(Heading heading) {
                                int index = heading.getSourceSpans().get(0).getLineIndex();
                                String text = TEXT.render(heading).strip().replaceFirst(":$", "");
                                add(Kind.HEADING, "", text, prose.line() + index);
                            }
                        });
    }

    private void add(Kind kind, String name, String text, int line) {
        List<String> own = new ArrayList<>(Words.of(text));
        own.addAll(Words.ofName(name));
        Hit hit = new Hit(page.name(), page.title(), kind, name, text, line);
        entries.add(new Entry(hit, own, around));
    }
}
