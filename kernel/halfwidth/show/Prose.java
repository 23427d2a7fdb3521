package halfwidth.show;

import halfwidth.page.Page;
import halfwidth.page.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** A page's CommonMark prose. What stands in block quotes are its cautions. */
final class Prose {
    private static final List<org.commonmark.Extension> TABLES = List.of(TablesExtension.create());
    private static final Parser PARSER = Parser.builder().extensions(TABLES).build();
    private static final HtmlRenderer HTML =
            HtmlRenderer.builder()
                    .extensions(TABLES)
                    .escapeHtml(true)
                    .sanitizeUrls(true)
                    .attributeProviderFactory(context -> Prose::dress)
                    .build();
    private static final TextContentRenderer TEXT =
            TextContentRenderer.builder()
                    .extensions(TABLES)
                    .lineBreakRendering(LineBreakRendering.STRIP)
                    .build();

    private static final String CAUTION = "(?i)cautions?[.:!]?";

    private final Node document;

    private Prose(Node document) {
        this.document = document;
    }

    static Prose of(String markdown) {
        Node document = PARSER.parse(markdown);
        document.accept(new Sealing());
        return new Prose(document);
    }

    /** The cautions of all of a page's prose, each as a piece of prose of its own. */
    static List<Prose> cautions(Page page) {
        return page.parts().stream()
                .filter(Part.Prose.class::isInstance)
                .flatMap(part -> of(((Part.Prose) part).markdown()).takeCautions().stream())
                .toList();
    }

    /** Takes the cautions out of this prose. */
    List<Prose> takeCautions() {
        List<Prose> cautions = new ArrayList<>();
        for (Node node = document.getFirstChild(); node != null; ) {
            Node next = node.getNext();
            if (node instanceof BlockQuote) {
                node.unlink();
                cautions.add(contents(node));
            }
            node = next;
        }
        return cautions;
    }

    private static Prose contents(Node quote) {
        Document document = new Document();
        while (quote.getFirstChild() != null) {
            document.appendChild(quote.getFirstChild());
        }
        dropLead(document);
        return new Prose(document);
    }

    /** Drops a bold "Caution." at the beginning, since the heading above it says so already. */
    private static void dropLead(Document caution) {
        Node lead =
                caution.getFirstChild() == null ? null : caution.getFirstChild().getFirstChild();
        if (lead instanceof StrongEmphasis && TEXT.render(lead).strip().matches(CAUTION)) {
            if (lead.getNext() instanceof Text rest) {
                rest.setLiteral(rest.getLiteral().stripLeading());
            }
            lead.unlink();
        }
    }

    /** Markup that runs nothing and loads nothing. */
    String html() {
        return Html.readable(HTML.render(document));
    }

    /** Its paragraphs as plain text, each in one line. */
    List<String> paragraphs() {
        List<String> paragraphs = new ArrayList<>();
        for (Node node = document.getFirstChild(); node != null; node = node.getNext()) {
            paragraphs.add(TEXT.render(node));
        }
        return paragraphs;
    }

    boolean isEmpty() {
        return document.getFirstChild() == null;
    }

    private static void dress(Node node, String tag, Map<String, String> attributes) {
        if (node instanceof BlockQuote) {
            attributes.put("class", "caution");
        }
        if (node instanceof TableCell cell && cell.isHeader()) {
            attributes.put("scope", "col");
        }
    }

    /**
     * Leaves out what a sheet that stands alone cannot keep: pictures, which would be fetched,
     * links to other pages, and the page's title, which the sheet has in its heading.
     */
    private static final class Sealing extends AbstractVisitor {
        @Override
        public void visit(Image image) {
            unwrap(image);
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            if (!link.getDestination().matches("(?i)(https?|mailto):.*")) {
                unwrap(link);
            }
        }

        @Override
        public void visit(Heading heading) {
            visitChildren(heading);
            if (heading.getLevel() == 1) {
                heading.unlink();
            }
        }

        private static void unwrap(Node node) {
            while (node.getFirstChild() != null) {
                node.insertBefore(node.getFirstChild());
            }
            node.unlink();
        }
    }
}
