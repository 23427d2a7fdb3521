package halfwidth.source;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.HashSet;
import java.util.Set;

/**
 * The names that code needs from elsewhere.
 *
 * @param names of variables and types
 * @param calls names of methods
 */
public record NeededNames(Set<String> names, Set<String> calls) {
    static final NeededNames NONE = new NeededNames(Set.of(), Set.of());

    static NeededNames of(Tree tree) {
        Scanner scanner = new Scanner();
        scanner.scan(tree, null);
        scanner.names.removeAll(scanner.variables);
        scanner.calls.removeAll(scanner.methods);
        return new NeededNames(scanner.names, scanner.calls);
    }

    private static final class Scanner extends TreeScanner<Void, Void> {
        private final Set<String> names = new HashSet<>();
        private final Set<String> calls = new HashSet<>();
        private final Set<String> variables = new HashSet<>();
        private final Set<String> methods = new HashSet<>();

        @Override
        public Void visitIdentifier(IdentifierTree tree, Void none) {
            names.add(tree.getName().toString());
            return null;
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree tree, Void none) {
            if (tree.getMethodSelect() instanceof IdentifierTree method) {
                calls.add(method.getName().toString());
                scan(tree.getTypeArguments(), none);
                return scan(tree.getArguments(), none);
            }
            return super.visitMethodInvocation(tree, none);
        }

        @Override
        public Void visitVariable(VariableTree tree, Void none) {
            variables.add(tree.getName().toString());
            return super.visitVariable(tree, none);
        }

        @Override
        public Void visitMethod(MethodTree tree, Void none) {
            methods.add(tree.getName().toString());
            return super.visitMethod(tree, none);
        }

        @Override
        public Void visitClass(ClassTree tree, Void none) {
            variables.add(tree.getSimpleName().toString());
            return super.visitClass(tree, none);
        }
    }
}
