package halfwidth.method;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.EndElementTree;
import com.sun.source.doctree.EntityTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.StartElementTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.util.DocTreeScanner;
import java.util.List;

/** A documentation comment as plain text. */
final class PlainDocumentation extends DocTreeScanner<Void, Void> {
    private final StringBuilder text = new StringBuilder();

    private PlainDocumentation() {}

    static String of(DocCommentTree comment) {
        PlainDocumentation plain = new PlainDocumentation();
        plain.scan(comment.getFullBody(), null);
        for (DocTree tag : comment.getBlockTags()) {
            plain.text.append('\n');
            plain.scan(tag, null);
        }
        return plain.text.toString().replaceAll("[ \\t]+", " ").replaceAll(" ?\\n ?", "\n").strip();
    }

    @Override
    public Void visitText(TextTree tree, Void none) {
        text.append(tree.getBody().replaceAll("\\s+", " "));
        return null;
    }

    @Override
    public Void visitLiteral(LiteralTree tree, Void none) {
        text.append(tree.getBody().getBody());
        return null;
    }

    /** A link says its label, or what it leads to. */
    @Override
    public Void visitLink(LinkTree tree, Void none) {
        if (tree.getLabel().isEmpty()) {
            text.append(
                    tree.getReference().getSignature().replaceFirst("^#", "").replace('#', '.'));
        }
        return scan(tree.getLabel(), none);
    }

    @Override
    public Void visitEntity(EntityTree tree, Void none) {
        String name = tree.getName().toString();
        text.append(
                switch (name) {
                    case "lt" -> "<";
                    case "gt" -> ">";
                    case "amp" -> "&";
                    default -> "&" + name + ";";
                });
        return null;
    }

    @Override
    public Void visitStartElement(StartElementTree tree, Void none) {
        switch (tree.getName().toString()) {
            case "p", "ul", "ol", "pre", "table" -> text.append("\n\n");
            case "li" -> text.append("\n– ");
            case "tr", "br" -> text.append('\n');
            case "sub" -> text.append('_');
            case "sup" -> text.append('^');
            default -> {}
        }
        return null;
    }

    @Override
    public Void visitEndElement(EndElementTree tree, Void none) {
        if (List.of("ul", "ol", "pre", "table").contains(tree.getName().toString())) {
            text.append("\n\n");
        }
        return null;
    }

    @Override
    public Void visitParam(ParamTree tree, Void none) {
        return tag(tree.getName().getName().toString(), tree.getDescription());
    }

    @Override
    public Void visitReturn(ReturnTree tree, Void none) {
        return tag("returns", tree.getDescription());
    }

    @Override
    public Void visitThrows(ThrowsTree tree, Void none) {
        return tag("throws " + tree.getExceptionName().getSignature(), tree.getDescription());
    }

    private Void tag(String name, List<? extends DocTree> description) {
        text.append('\n').append(name).append(": ");
        return scan(description, null);
    }
}
