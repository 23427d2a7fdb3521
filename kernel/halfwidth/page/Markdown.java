package halfwidth.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** CommonMark with tables: its tree and its plain text. */
final class Markdown {
    private static final List<TablesExtension> TABLES =
            List.of((TablesExtension) TablesExtension.create());
    private static final Parser PARSER =
            Parser.builder()
                    .extensions(TABLES)
                    .includeSourceSpans(IncludeSourceSpans.BLOCKS)
                    .build();
    private static final TextContentRenderer TEXT =
            TextContentRenderer.builder()
                    .extensions(TABLES)
                    .lineBreakRendering(LineBreakRendering.STRIP)
                    .build();

    private Markdown() {}

    static Node parse(String source) {
        return PARSER.parse(source);
    }

    /** The plain text of a node, on one line. */
    static String text(Node node) {
        return TEXT.render(node).replaceAll("\\s+", " ").strip();
    }

    /**
     * The plain text of a heading, which this empties: rendered as a heading it ends in a colon.
     */
    static String title(Heading heading) {
        Paragraph words = new Paragraph();
        while (heading.getFirstChild() != null) {
            words.appendChild(heading.getFirstChild());
        }
        return text(words);
    }

    /** The plain text of each paragraph at the margin. */
    static Stream<String> paragraphs(String source) {
        return children(parse(source)).filter(Paragraph.class::isInstance).map(Markdown::text);
    }

    /** The plain text of each quotation that starts with these words in bold. */
    static Stream<String> quotations(String source, String words) {
        return children(parse(source)).filter(node -> isHeaded(node, words)).map(Markdown::inner);
    }

    private static boolean isHeaded(Node node, String words) {
        return node instanceof BlockQuote
                && node.getFirstChild() instanceof Paragraph paragraph
                && paragraph.getFirstChild() instanceof StrongEmphasis bold
                && text(bold).regionMatches(true, 0, words, 0, words.length());
    }

    private static String inner(Node quotation) {
        return children(quotation).map(Markdown::text).collect(Collectors.joining(" "));
    }

    private static Stream<Node> children(Node node) {
        return Stream.iterate(node.getFirstChild(), child -> child != null, Node::getNext);
    }
}
