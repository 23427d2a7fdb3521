package halfwidth.method;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import halfwidth.source.JavaText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;

/** A file of the physics library, packaged beside its classes, as parsed. */
final class SourceFile {
    private static final Pattern UNIT = Pattern.compile("\\(([^()]{1,20})\\)[^()]*$");
    private static final Map<String, SourceFile> READ = new ConcurrentHashMap<>();

    private final String file;
    private final String text;
    private final DocTrees trees;
    private final CompilationUnitTree unit;

    private SourceFile(String file, String text) {
        this.file = file;
        this.text = text;
        JavacTask task = JavaText.lookUp("Library.java", text);
        try {
            this.unit = task.parse().iterator().next();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.trees = DocTrees.instance(task);
    }

    /** How a method is written; empty if it is nowhere, as with what every enum has. */
    static Optional<MethodSource> of(ExecutableElement method) {
        TypeElement type = (TypeElement) method.getEnclosingElement();
        TypeElement top = type;
        while (top.getEnclosingElement() instanceof TypeElement outer) {
            top = outer;
        }
        String file = top.getQualifiedName().toString().replace('.', '/') + ".java";
        return READ.computeIfAbsent(file, name -> new SourceFile(name, read(name)))
                .find(type, method);
    }

    private static String read(String file) {
        String resource = "/sources/" + file;
        try (InputStream in = SourceFile.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException(resource + " must be packaged with the program");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized Optional<MethodSource> find(TypeElement type, ExecutableElement method) {
        ClassTree declaration = declaration(type);
        for (Tree member : declaration.getMembers()) {
            if (member instanceof MethodTree written && isOf(written, method)) {
                return Optional.of(source(type, method, written));
            }
        }
        return declaration.getKind() == Tree.Kind.RECORD && isPartOf(declaration, method)
                ? Optional.of(head(type, method, declaration))
                : Optional.empty();
    }

    private ClassTree declaration(TypeElement type) {
        Element outer = type.getEnclosingElement();
        List<? extends Tree> among =
                outer instanceof TypeElement around
                        ? declaration(around).getMembers()
                        : unit.getTypeDecls();
        return among.stream()
                .filter(ClassTree.class::isInstance)
                .map(ClassTree.class::cast)
                .filter(tree -> tree.getSimpleName().contentEquals(type.getSimpleName()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(file + " must declare " + type));
    }

    private MethodSource source(TypeElement type, ExecutableElement method, MethodTree written) {
        long start = trees.getSourcePositions().getStartPosition(unit, written);
        long end = trees.getSourcePositions().getEndPosition(unit, written);
        String own = documentation(written);
        String documentation = own.isEmpty() ? documentation(declaration(type)) : own;
        return new MethodSource(
                type.getQualifiedName().toString(),
                signature(method),
                parameters(method, documentation),
                documentation,
                atMargin((int) start, (int) end),
                file,
                line(start));
    }

    /** The head of a record, which is all there is of a component's accessor. */
    private MethodSource head(TypeElement type, ExecutableElement method, ClassTree record) {
        long start = trees.getSourcePositions().getStartPosition(unit, record);
        int end = text.indexOf('{', (int) start);
        String documentation = documentation(record);
        return new MethodSource(
                type.getQualifiedName().toString(),
                signature(method),
                parameters(method, documentation),
                documentation,
                atMargin((int) start, end).stripTrailing(),
                file,
                line(start));
    }

    private String documentation(Tree tree) {
        DocCommentTree comment = trees.getDocCommentTree(TreePath.getPath(unit, tree));
        return comment == null ? "" : PlainDocumentation.of(comment);
    }

    private int line(long offset) {
        return (int) unit.getLineMap().getLineNumber(offset);
    }

    /** A piece of the file without the indentation it has there. */
    private String atMargin(int start, int end) {
        int lineStart = text.lastIndexOf('\n', start) + 1;
        return (" ".repeat(start - lineStart) + text.substring(start, end)).stripIndent();
    }

    private boolean isOf(MethodTree written, ExecutableElement method) {
        if (!written.getName().contentEquals(method.getSimpleName())) {
            return false;
        }
        List<String> types =
                written.getParameters().stream().map(p -> simple(p.getType().toString())).toList();
        return types.equals(parameterTypes(method)) || isCompact(written);
    }

    /** A record's constructor without a list of parameters is that of its components. */
    private boolean isCompact(MethodTree written) {
        long start = trees.getSourcePositions().getStartPosition(unit, written);
        String head = text.substring((int) start, text.indexOf('{', (int) start));
        return written.getReturnType() == null && !head.contains("(");
    }

    private static boolean isPartOf(ClassTree record, ExecutableElement method) {
        Map<String, String> components =
                record.getMembers().stream()
                        .filter(VariableTree.class::isInstance)
                        .map(VariableTree.class::cast)
                        .filter(field -> !field.getModifiers().getFlags().contains(Modifier.STATIC))
                        .collect(
                                Collectors.toMap(
                                        field -> field.getName().toString(),
                                        field -> simple(field.getType().toString()),
                                        (one, other) -> one,
                                        LinkedHashMap::new));
        return method.getKind() == ElementKind.CONSTRUCTOR
                ? parameterTypes(method).equals(List.copyOf(components.values()))
                : method.getParameters().isEmpty()
                        && components.containsKey(method.getSimpleName().toString());
    }

    private static String signature(ExecutableElement method) {
        CharSequence name =
                method.getKind() == ElementKind.CONSTRUCTOR
                        ? method.getEnclosingElement().getSimpleName()
                        : method.getSimpleName();
        return name + "(" + String.join(", ", parameterTypes(method)) + ")";
    }

    private static List<MethodSource.Parameter> parameters(
            ExecutableElement method, String documentation) {
        return method.getParameters().stream()
                .map(one -> one.getSimpleName().toString())
                .map(name -> new MethodSource.Parameter(name, unit(name, documentation)))
                .toList();
    }

    /** What stands in brackets at the end of a parameter's line. */
    private static String unit(String parameter, String documentation) {
        return documentation
                .lines()
                .filter(line -> line.startsWith(parameter + ": "))
                .map(UNIT::matcher)
                .filter(Matcher::find)
                .map(matcher -> matcher.group(1))
                .findFirst()
                .orElse("");
    }

    private static List<String> parameterTypes(ExecutableElement method) {
        return method.getParameters().stream().map(p -> simple(p.asType().toString())).toList();
    }

    /** A type's name without its package, its own parameters and the dots of a variable list. */
    private static String simple(String type) {
        String plain = type.replace("...", "[]");
        for (String before = ""; !before.equals(plain); ) {
            before = plain;
            plain = plain.replaceAll("<[^<>]*>", "");
        }
        return plain.substring(plain.lastIndexOf('.') + 1);
    }
}
