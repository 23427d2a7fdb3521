package halfwidth.localizer;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTreeScanner;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import javax.lang.model.element.Modifier;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/**
 * Finds the numbers of the public types in source files: parameters and results of public methods,
 * record components and public constants. What an overriding method documents is inherited.
 */
final class NumberReader extends TreePathScanner<Void, List<DocumentedNumber>> {
    private final DocTrees docs;
    private boolean inInterface;

    private NumberReader(DocTrees docs) {
        this.docs = docs;
    }

    static List<DocumentedNumber> read(Iterable<? extends JavaFileObject> sources)
            throws IOException {
        JavacTask task =
                (JavacTask)
                        ToolProvider.getSystemJavaCompiler()
                                .getTask(null, null, null, List.of(), null, sources);
        NumberReader reader = new NumberReader(DocTrees.instance(task));
        List<DocumentedNumber> found = new ArrayList<>();
        for (CompilationUnitTree file : task.parse()) {
            reader.scan(file, found);
        }
        return found;
    }

    @Override
    public Void visitClass(ClassTree type, List<DocumentedNumber> found) {
        boolean outer = inInterface;
        if (!isPublic(type.getModifiers())) {
            return null;
        }
        inInterface = type.getKind() == Tree.Kind.INTERFACE;
        if (type.getKind() == Tree.Kind.RECORD) {
            for (Tree member : type.getMembers()) {
                if (member instanceof VariableTree field && !isStatic(field)) {
                    add(field.getType(), field.getName().toString(), parameter(field), found);
                }
            }
        }
        super.visitClass(type, found);
        inInterface = outer;
        return null;
    }

    @Override
    public Void visitVariable(VariableTree field, List<DocumentedNumber> found) {
        if (isPublic(field.getModifiers())
                && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree) {
            add(field.getType(), field.getName().toString(), null, found);
        }
        return null;
    }

    @Override
    public Void visitMethod(MethodTree method, List<DocumentedNumber> found) {
        boolean inherits =
                method.getModifiers().getAnnotations().stream()
                        .anyMatch(each -> each.getAnnotationType().toString().equals("Override"));
        if (!isPublic(method.getModifiers()) || inherits || isCompact(method)) {
            return null;
        }
        for (VariableTree parameter : method.getParameters()) {
            String name = method.getName() + "(" + parameter.getName() + ")";
            add(parameter.getType(), name, parameter(parameter), found);
        }
        if (method.getReturnType() != null) {
            Predicate<DocTree> result = ReturnTree.class::isInstance;
            add(method.getReturnType(), method.getName() + "()", result, found);
        }
        return null;
    }

    /** A record's constructor whose parameters are the record's components. */
    private boolean isCompact(MethodTree method) {
        return method.getReturnType() == null
                && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree type
                && type.getKind() == Tree.Kind.RECORD
                && names(method.getParameters()).equals(names(components(type)));
    }

    private static List<VariableTree> components(ClassTree type) {
        return type.getMembers().stream()
                .filter(member -> member instanceof VariableTree field && !isStatic(field))
                .map(VariableTree.class::cast)
                .toList();
    }

    private static List<String> names(List<? extends VariableTree> variables) {
        return variables.stream().map(variable -> variable.getName().toString()).toList();
    }

    private static Predicate<DocTree> parameter(VariableTree variable) {
        return tag ->
                tag instanceof ParamTree named
                        && named.getName().getName().contentEquals(variable.getName());
    }

    /** Adds a number with the text of its tag; a constant, which has none, with its description. */
    private void add(Tree type, String name, Predicate<DocTree> tag, List<DocumentedNumber> found) {
        if (DocumentedNumber.isNumber(type.toString())) {
            found.add(new DocumentedNumber(place() + " " + name, text(tag)));
        }
    }

    private String place() {
        CompilationUnitTree file = getCurrentPath().getCompilationUnit();
        long start = docs.getSourcePositions().getStartPosition(file, getCurrentPath().getLeaf());
        return file.getSourceFile().getName() + ":" + file.getLineMap().getLineNumber(start);
    }

    private String text(Predicate<DocTree> tag) {
        DocCommentTree comment = docs.getDocCommentTree(getCurrentPath());
        if (comment == null) {
            return "";
        }
        return tag == null
                ? words(comment.getFullBody())
                : words(comment.getBlockTags().stream().filter(tag).toList());
    }

    /** The plain words, since printing a tree escapes letters and adds markup. */
    private static String words(Iterable<? extends DocTree> trees) {
        StringBuilder words = new StringBuilder();
        new DocTreeScanner<Void, Void>() {
            @Override
            public Void visitText(TextTree text, Void nothing) {
                words.append(text.getBody());
                return null;
            }
        }.scan(trees, null);
        return words.toString();
    }

    private boolean isPublic(ModifiersTree modifiers) {
        return inInterface || modifiers.getFlags().contains(Modifier.PUBLIC);
    }

    private static boolean isStatic(VariableTree field) {
        return field.getModifiers().getFlags().contains(Modifier.STATIC);
    }
}
