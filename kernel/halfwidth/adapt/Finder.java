package halfwidth.adapt;

import halfwidth.page.Part;
import halfwidth.run.Step;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Finds where the steps and blocks of a page stand in its text. */
final class Finder {
    private static final Parser PARSER =
            Parser.builder().includeSourceSpans(IncludeSourceSpans.BLOCKS).build();
    private static final Pattern CLOSING = Pattern.compile(" {0,3}(`{3,}|~{3,})[ \\t]*");

    private final PageText text;

    Finder(PageText text) {
        this.text = text;
    }

    /** Whether CommonMark may take a line for the end of a fenced block. */
    static boolean endsBlock(String line) {
        return CLOSING.matcher(line).matches();
    }

    /** The step's line is that of its code; comments before it are part of its text. */
    Place step(Step step) {
        List<String> code = PageText.contents(step.code());
        for (int first = step.line(); first > step.line() - code.size(); first--) {
            int last = first + code.size() - 1;
            if (first >= 1 && last <= text.count()) {
                Place place = new Place(first, last, true);
                if (text.at(place).contains(step.code())) {
                    return place;
                }
            }
        }
        throw new IllegalArgumentException(
                "line %s must hold the step that ran; the page was changed since"
                        .formatted(step.line()));
    }

    Place part(Part part) {
        if (part instanceof Part.Prose prose) {
            int lines = PageText.contents(prose.markdown()).size();
            return new Place(prose.line(), prose.line() + lines - 1, false);
        }
        return blocks().filter(place -> place.first() == part.line())
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "line %s must start a block; the page was changed since"
                                                .formatted(part.line())));
    }

    /** The lines between the fences of each block that is not empty. */
    private Stream<Place> blocks() {
        Node document = PARSER.parse(text.whole());
        return Stream.iterate(document.getFirstChild(), node -> node != null, Node::getNext)
                .filter(FencedCodeBlock.class::isInstance)
                .map(FencedCodeBlock.class::cast)
                .filter(block -> block.getSourceSpans().size() > 2)
                .map(Finder::content);
    }

    private static Place content(FencedCodeBlock block) {
        List<SourceSpan> spans = block.getSourceSpans();
        int opening = spans.get(0).getLineIndex() + 1;
        int end = spans.get(spans.size() - 1).getLineIndex() + 1;
        boolean closed = block.getClosingFenceLength() != null;
        return new Place(opening + 1, closed ? end - 1 : end, true);
    }
}
