package halfwidth.proof;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import halfwidth.source.JavaText;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;

/** The units that the Javadoc of the physics states, in brackets at the end of each tag. */
final class StatedUnits {
    private static final Pattern TAG =
            Pattern.compile("@(param|return)\\s+(.*?)(?=\\s@[a-z]|\\z)", Pattern.DOTALL);
    private static final Pattern UNIT = Pattern.compile("\\(((?:[^()]|\\([^()]*\\))*)\\)");

    /** By class, then by {@code method/parameters} and {@code tag}. */
    private final Map<String, Map<String, String>> byClass = new HashMap<>();

    /** What a method's Javadoc states of its value; empty if nothing. */
    Optional<String> given(ExecutableElement method) {
        Map<String, String> units = units(method);
        String name = method.getSimpleName().toString();
        String key = key(name, method.getParameters().size());
        // A record's component is described at the record.
        return Optional.ofNullable(units.get(key + " return"))
                .or(
                        () ->
                                method.getParameters().isEmpty()
                                        ? Optional.ofNullable(units.get(" " + name))
                                        : Optional.empty());
    }

    /** What a method's, or a record's, Javadoc states of a parameter; empty if nothing. */
    Optional<String> taken(ExecutableElement method, int parameter) {
        Map<String, String> units = units(method);
        String name = method.getParameters().get(parameter).getSimpleName().toString();
        String key = key(method.getSimpleName().toString(), method.getParameters().size());
        return Optional.ofNullable(units.get(key + " " + name))
                .or(
                        () ->
                                method.getSimpleName().contentEquals("<init>")
                                        ? Optional.ofNullable(units.get(" " + name))
                                        : Optional.empty());
    }

    /** What the Javadoc of a constant states. */
    Optional<String> constant(TypeElement owner, String name) {
        return Optional.ofNullable(units(owner).get(name + " constant"));
    }

    private static String key(String name, int parameters) {
        return name + "/" + parameters;
    }

    private Map<String, String> units(ExecutableElement method) {
        return units((TypeElement) method.getEnclosingElement());
    }

    private Map<String, String> units(TypeElement type) {
        TypeElement outer = type;
        while (outer.getEnclosingElement() instanceof TypeElement around) {
            outer = around;
        }
        String file = outer.getQualifiedName().toString().replace('.', '/') + ".java";
        read(file);
        return byClass.getOrDefault(type.getQualifiedName().toString(), Map.of());
    }

    private void read(String file) {
        if (byClass.putIfAbsent(file, Map.of()) != null) {
            return;
        }
        try (InputStream source = StatedUnits.class.getResourceAsStream("/sources/" + file)) {
            if (source != null) {
                read(new String(source.readAllBytes(), StandardCharsets.UTF_8), file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void read(String source, String file) throws IOException {
        JavacTask task = JavaText.lookUp(file, source);
        CompilationUnitTree tree = task.parse().iterator().next();
        String prefix = tree.getPackageName() + ".";
        new Reader(Trees.instance(task), prefix).scan(tree, "");
    }

    /** Reads the tags of a class's members. */
    private final class Reader extends TreePathScanner<Void, String> {
        private final Trees trees;
        private final String prefix;

        Reader(Trees trees, String prefix) {
            this.trees = trees;
            this.prefix = prefix;
        }

        @Override
        public Void visitClass(ClassTree tree, String around) {
            String name = around + tree.getSimpleName();
            byClass.putIfAbsent(prefix + name, new HashMap<>());
            tags("", getCurrentPath(), prefix + name);
            return super.visitClass(tree, name + ".");
        }

        @Override
        public Void visitMethod(MethodTree tree, String around) {
            String type = prefix + around.substring(0, around.length() - 1);
            tags(
                    key(tree.getName().toString(), tree.getParameters().size()),
                    getCurrentPath(),
                    type);
            return null;
        }

        @Override
        public Void visitVariable(com.sun.source.tree.VariableTree tree, String around) {
            String comment = trees.getDocComment(getCurrentPath());
            if (comment != null
                    && getCurrentPath().getParentPath().getLeaf() instanceof ClassTree) {
                String type = prefix + around.substring(0, around.length() - 1);
                last(comment)
                        .ifPresent(
                                unit -> byClass.get(type).put(tree.getName() + " constant", unit));
            }
            return null;
        }

        private void tags(String key, TreePath path, String type) {
            String comment = trees.getDocComment(path);
            Matcher tag = TAG.matcher(comment == null ? "" : " " + comment);
            while (tag.find()) {
                String text = tag.group(2).strip();
                String name = tag.group(1).equals("return") ? "return" : text.split("\\s+", 2)[0];
                last(text).ifPresent(unit -> byClass.get(type).put(key + " " + name, unit));
            }
        }
    }

    /** The last bracket of a text that names a unit, or says whose unit it is. */
    private static Optional<String> last(String text) {
        List<String> brackets =
                UNIT.matcher(text.replaceAll("\\s+", " "))
                        .results()
                        .map(one -> one.group(1))
                        .toList();
        Optional<String> named =
                brackets.stream()
                        .filter(one -> one.startsWith("unit") || Calls.unit(one).isPresent())
                        .reduce((before, after) -> after);
        return named.or(() -> brackets.stream().reduce((before, after) -> after));
    }
}
