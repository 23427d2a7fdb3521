package halfwidth.engine;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Which names each statement of a program needs, and on which it may leave its mark. */
final class Effects {
    private final Program program;
    private final List<Program.Reach> reach;
    private final Map<String, CompiledStatement> declarations = new LinkedHashMap<>();

    Effects(Program program) {
        this.program = program;
        this.reach = program.reach();
        for (Program.Line line : program.lines()) {
            line.compiled()
                    .filter(compiled -> !compiled.name().isEmpty())
                    .ifPresent(compiled -> declarations.putIfAbsent(compiled.name(), compiled));
        }
    }

    /** The statement that declares a name. */
    Optional<CompiledStatement> declaration(String name) {
        return Optional.ofNullable(declarations.get(name));
    }

    /** The names whose values a statement may use. */
    Set<String> needs(int index) {
        return reach.get(index).needs();
    }

    /** The names that have no dependable value where a statement did not run to its end. */
    Set<String> affected(int index) {
        Program.Line line = program.lines().get(index);
        Set<String> names = declared(index);
        if (!line.name().isEmpty()) {
            names.add(line.name()); // an assignment goes by the name that it assigns to
        }
        if (line.statement().check()) {
            return names; // a check looks at the page's values; it has no part in them
        }
        for (String name : reach.get(index).changes()) {
            CompiledStatement declaration = declarations.get(name);
            boolean assigned = line.names().assigned().contains(name);
            if (declaration != null && (assigned || declaration.changeable())) {
                names.add(name);
            }
        }
        return names;
    }

    /** The names that a statement declares, which are all that is not there if it is left out. */
    Set<String> declared(int index) {
        Program.Line line = program.lines().get(index);
        Set<String> names = new HashSet<>(line.names().declared());
        if (line.compiled().isPresent()) {
            names.retainAll(Set.of(line.name())); // not what is declared within it
        }
        return names;
    }
}
