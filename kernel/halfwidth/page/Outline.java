package halfwidth.page;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/** Splits a page into its title, its prose and its fenced blocks, as CommonMark sees them. */
final class Outline {
    private final List<String> lines;
    private final Problems problems;
    private final BlockReader blocks;
    private final List<Part> parts = new ArrayList<>();
    private String title = "";
    private int titleLine;
    private int proseFrom = 1;

    /**
     * Splits a page.
     *
     * @param files whether its entries may name files
     */
    Outline(String text, Problems problems, boolean files) {
        this.lines = text.lines().toList();
        this.problems = problems;
        this.blocks = new BlockReader(problems, files);
        Node document = Markdown.parse(text);
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            take(block);
        }
        prose(lines.size() + 1);
        if (titleLine == 0) {
            problems.add(1, "has no title; expected a level-one heading first, as in # Feed trim");
        }
        blocks.checkComplete();
    }

    String title() {
        return title;
    }

    List<Part> parts() {
        return parts;
    }

    private void take(Node block) {
        if (block instanceof FencedCodeBlock fence && Fence.isMeant(Fence.tidy(fence.getInfo()))) {
            prose(first(fence));
            proseFrom = last(fence) + 1;
            fenced(fence);
        } else if (block instanceof Heading heading && heading.getLevel() == 1) {
            heading(heading);
        } else {
            block.accept(new StrayFences());
        }
    }

    private void heading(Heading heading) {
        int line = first(heading);
        if (titleLine > 0) {
            problems.add(
                    line,
                    "is a second title after line " + titleLine + "; expected one, use ## here");
            return;
        }
        titleLine = line;
        if (heading.getPrevious() != null) {
            problems.add(line, "the title is not first; expected nothing before it");
        }
        title = Markdown.title(heading);
        if (title.isBlank()) {
            problems.add(line, "the title is empty; expected what the page answers");
        }
        proseFrom = last(heading) + 1;
    }

    private void fenced(FencedCodeBlock fence) {
        if (fence.getClosingFenceLength() == null) {
            problems.add(
                    first(fence),
                    "the block is never closed; expected a line of "
                            + fence.getFenceCharacter().repeat(fence.getOpeningFenceLength()));
            return;
        }
        Fence found = new Fence(first(fence), Fence.tidy(fence.getInfo()), fence.getLiteral());
        blocks.read(found).ifPresent(parts::add);
    }

    /** Ends the prose that is under way before a line. */
    private void prose(int end) {
        int from = proseFrom;
        int to = Math.min(end, lines.size() + 1);
        while (from < to && lines.get(from - 1).isBlank()) {
            from++;
        }
        if (from < to) {
            String markdown = String.join("\n", lines.subList(from - 1, to - 1)).stripTrailing();
            parts.add(new Part.Prose(from, markdown));
        }
    }

    private static int first(Block block) {
        return block.getSourceSpans().get(0).getLineIndex() + 1;
    }

    private static int last(Block block) {
        List<SourceSpan> spans = block.getSourceSpans();
        return spans.get(spans.size() - 1).getLineIndex() + 1;
    }

    /** Blocks that CommonMark does not see as such would be skipped in silence. */
    private final class StrayFences extends AbstractVisitor {
        @Override
        public void visit(FencedCodeBlock fence) {
            if (Fence.isMeant(Fence.tidy(fence.getInfo()))) {
                stray(first(fence), "is part of a list or a quotation");
            }
        }

        @Override
        public void visit(HtmlBlock html) {
            look(html, html.getLiteral(), "is part of an HTML block or comment");
        }

        @Override
        public void visit(IndentedCodeBlock indented) {
            look(indented, indented.getLiteral(), "is indented by four or more");
        }

        private void look(Block block, String literal, String why) {
            int line = first(block);
            for (String content : literal.lines().toList()) {
                if (Fence.opens(content)) {
                    stray(line, why);
                }
                line++;
            }
        }

        private void stray(int line, String why) {
            problems.add(line, "the block " + why + "; expected at the left margin, by itself");
        }
    }
}
