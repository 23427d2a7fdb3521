package halfwidth.method;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import halfwidth.source.JavaText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.lang.model.element.Element;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;

/** Finds the calls in a page's class and which step makes each. */
final class CallFinder extends TreePathScanner<Void, Void> {
    private static final String LIBRARY = "halfwidth.localizer.";

    private final PageClass page;
    private final Trees trees;
    private final Map<Integer, Set<ExecutableElement>> called = new LinkedHashMap<>();

    private CallFinder(PageClass page, Trees trees) {
        this.page = page;
        this.trees = trees;
    }

    static Map<Integer, List<MethodSource>> calls(PageClass page) {
        JavacTask task = JavaText.lookUp("Page.java", page.text());
        CompilationUnitTree unit;
        try {
            unit = task.parse().iterator().next();
            task.analyze();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        CallFinder finder = new CallFinder(page, Trees.instance(task));
        finder.scan(unit, null);
        Map<Integer, List<MethodSource>> sources = new LinkedHashMap<>();
        finder.called.forEach(
                (step, methods) ->
                        sources.put(
                                step,
                                methods.stream()
                                        .flatMap(method -> SourceFile.of(method).stream())
                                        .distinct()
                                        .toList()));
        return sources;
    }

    @Override
    public Void visitMethodInvocation(MethodInvocationTree tree, Void none) {
        super.visitMethodInvocation(tree, none);
        note(tree, tree.getMethodSelect());
        return null;
    }

    @Override
    public Void visitNewClass(NewClassTree tree, Void none) {
        super.visitNewClass(tree, none);
        note(tree, tree);
        return null;
    }

    @Override
    public Void visitMemberReference(MemberReferenceTree tree, Void none) {
        super.visitMemberReference(tree, none);
        note(tree, tree);
        return null;
    }

    private void note(Tree call, Tree name) {
        long offset = trees.getSourcePositions().getStartPosition(unit(), call);
        page.stepAt(offset)
                .ifPresent(
                        step -> {
                            Set<ExecutableElement> methods =
                                    called.computeIfAbsent(step, s -> new LinkedHashSet<>());
                            candidates(name).filter(CallFinder::isLibrary).forEach(methods::add);
                        });
    }

    private CompilationUnitTree unit() {
        return getCurrentPath().getCompilationUnit();
    }

    /** The method that a name stands for, or all of that name if the compiler finds no fit. */
    private Stream<ExecutableElement> candidates(Tree name) {
        Element element = trees.getElement(TreePath.getPath(unit(), name));
        if (element instanceof ExecutableElement method && isResolved(method)) {
            return Stream.of(method);
        }
        if (name instanceof MemberSelectTree select) {
            return named(select.getExpression(), select.getIdentifier().toString());
        }
        if (name instanceof MemberReferenceTree reference) {
            return named(reference.getQualifierExpression(), reference.getName().toString());
        }
        return name instanceof NewClassTree made
                ? named(made.getIdentifier(), "<init>")
                : Stream.empty();
    }

    private static boolean isResolved(ExecutableElement method) {
        return method.getEnclosingElement() instanceof TypeElement type
                && type.getEnclosedElements().contains(method);
    }

    private Stream<ExecutableElement> named(Tree receiver, String name) {
        TypeMirror type = trees.getTypeMirror(TreePath.getPath(unit(), receiver));
        if (!(type instanceof DeclaredType declared)) {
            return Stream.empty();
        }
        List<ExecutableElement> methods = new ArrayList<>();
        for (Element member : declared.asElement().getEnclosedElements()) {
            if (member instanceof ExecutableElement method
                    && method.getSimpleName().contentEquals(name)) {
                methods.add(method);
            }
        }
        return methods.stream();
    }

    private static boolean isLibrary(ExecutableElement method) {
        return method.getEnclosingElement() instanceof TypeElement type
                && type.getQualifiedName().toString().startsWith(LIBRARY);
    }
}
