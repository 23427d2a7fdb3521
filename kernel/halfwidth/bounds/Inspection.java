package halfwidth.bounds;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;

/** Holds the classes of one page against a list. */
final class Inspection {
    /** How JShell names the classes that it compiles. */
    private static final Pattern OF_PAGE = Pattern.compile("REPL\\.\\$JShell\\$.+");

    /** Methods that the JVM calls by itself, or that serialization would. */
    private static final Set<String> CALLED_UNSEEN =
            Set.of(
                    "finalize",
                    "readObject",
                    "readObjectNoData",
                    "readExternal",
                    "readResolve",
                    "writeObject",
                    "writeExternal",
                    "writeReplace");

    private static final int CALLS_NAMED = 3;

    private final AllowList list;
    private final Map<String, Shape> shapes;

    /** The classes of a page name the same things again and again. */
    private final Map<Reference, Boolean> judged = new HashMap<>();

    Inspection(AllowList list, Map<String, Shape> shapes) {
        this.list = list;
        this.shapes = shapes;
    }

    static Refusal unreadable(String name) {
        return new Refusal(
                List.of("a class that cannot be read"), name, -1, "Open the page again.");
    }

    /**
     * Says why a class is refused.
     *
     * @param declares whether it declares inputs, by code of the program's own
     * @return empty if it is not
     */
    Optional<Refusal> refusal(String name, ClassReader reader, boolean declares) {
        try {
            Shape shape = shapes.get(name);
            if (!OF_PAGE.matcher(name).matches()) {
                return Optional.of(unreadable(name));
            }
            Optional<Refusal> declared = declared(name, shape);
            List<Reference> references =
                    Stream.concat(
                                    new ConstantPool(reader).references().stream(),
                                    shape.annotations().stream().map(Reference::type))
                            .filter(reference -> !allows(reference, declares))
                            .toList();
            return declared.isPresent() || references.isEmpty()
                    ? declared
                    : Optional.of(refusal(name, reader, references, declares));
        } catch (RuntimeException e) {
            return Optional.of(unreadable(name)); // a class file that contradicts itself
        }
    }

    private Optional<Refusal> declared(String name, Shape shape) {
        for (Shape.Declared member : shape.members()) {
            if (member.isNative() || CALLED_UNSEEN.contains(member.name())) {
                String kind = member.isNative() ? "the native method " : "a method named ";
                return Optional.of(
                        new Refusal(
                                List.of(kind + member.name()),
                                name,
                                -1,
                                "A page calls its own methods itself: choose another name, or write"
                                        + " it in Java."));
            }
        }
        for (String parent : shape.parents()) {
            String binary = parent.replace('/', '.');
            boolean mayBe =
                    shapes.containsKey(binary)
                            || list.mayBeExtended(binary)
                            || list.type(binary) && Hierarchy.isInterface(binary);
            if (!mayBe) {
                return Optional.of(
                        new Refusal(
                                List.of("a type that extends " + Reference.type(parent).shown()),
                                name,
                                -1,
                                list.type(binary)
                                        ? "Declare a record, or a class with methods of its own."
                                        : list.advice(binary, "")));
            }
        }
        return Optional.empty();
    }

    private Refusal refusal(
            String name, ClassReader reader, List<Reference> references, boolean declares) {
        List<Instructions.Used> used =
                Instructions.of(reader).stream()
                        .filter(one -> !allows(one.reference(), declares))
                        .toList();
        List<Instructions.Used> members =
                used.stream()
                        .filter(one -> !one.reference().member().isEmpty())
                        .filter(one -> !shapes.containsKey(one.reference().owner()))
                        .toList();
        List<Instructions.Used> shown = members.isEmpty() ? used : members;
        Reference first = shown.isEmpty() ? references.get(0) : shown.get(0).reference();
        Set<String> calls = new LinkedHashSet<>();
        shown.forEach(one -> calls.add(one.reference().shown()));
        return new Refusal(
                calls.isEmpty()
                        ? List.of(first.shown())
                        : calls.stream().limit(CALLS_NAMED).toList(),
                name,
                shown.isEmpty() ? -1 : shown.get(0).line(),
                list.advice(first.owner(), first.member()));
    }

    private boolean allows(Reference reference, boolean declares) {
        if (list.ofProgram(reference.owner()) && !declares) {
            return false;
        }
        Boolean known = judged.get(reference);
        if (known == null) {
            known = allows(reference);
            judged.put(reference, known);
        }
        return known;
    }

    private boolean allows(Reference reference) {
        String owner = reference.owner();
        boolean own = owner.isEmpty() || shapes.containsKey(owner);
        if (reference.member().isEmpty() || !own && !list.type(owner)) {
            return own || list.type(owner);
        }
        boolean types =
                ConstantPool.types(reference.descriptor()).stream()
                        .allMatch(type -> allows(Reference.type(type)));
        if (reference.array()) {
            return types && list.member("java.lang.Object", reference.member());
        }
        return types && (own ? inherits(reference) : list.member(owner, reference.member()));
    }

    /** Whether a page's own class has a member from itself, or from where the page may use it. */
    private boolean inherits(Reference reference) {
        Shape shape = shapes.get(reference.owner());
        if (shape.declares(reference.member(), reference.descriptor())) {
            return true;
        }
        for (String parent : shape.parents()) {
            Reference above = Reference.member(parent, reference.member(), reference.descriptor());
            boolean allowed =
                    shapes.containsKey(above.owner())
                            ? inherits(above)
                            : !Hierarchy.has(above.owner(), above.member())
                                    || list.member(above.owner(), above.member());
            if (!allowed) {
                return false;
            }
        }
        return true;
    }
}
