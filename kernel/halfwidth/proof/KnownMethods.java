package halfwidth.proof;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.IntersectionType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.type.TypeVariable;
import javax.lang.model.util.ElementFilter;

/**
 * The library methods whose effect on units is known, by the class that declares them and their
 * erased signature. They stand in the folder {@code methods}: a class on a line of its own; below
 * it, indented, an effect, a colon and its methods; longer lines go on below, indented further.
 */
final class KnownMethods {
    private static final List<String> FILES =
            List.of("jdk.txt", "tablesaw.txt", "hipparchus.txt", "pages.txt");

    /** By class, then by signature. */
    private static final Map<String, Map<String, Effect>> BY_CLASS = new HashMap<>();

    static {
        FILES.forEach(KnownMethods::read);
    }

    private KnownMethods() {}

    /** All of them, by class and signature. */
    static Map<String, Map<String, Effect>> all() {
        return BY_CLASS;
    }

    /** What a method does to units; empty if that is not known. */
    static Optional<Effect> effect(ExecutableElement method) {
        String signature = signature(method);
        Deque<TypeElement> types = new ArrayDeque<>();
        types.add((TypeElement) method.getEnclosingElement());
        while (!types.isEmpty()) {
            TypeElement type = types.remove();
            boolean declares = type.equals(method.getEnclosingElement()) || has(type, signature);
            Effect effect =
                    declares ? BY_CLASS.getOrDefault(name(type), Map.of()).get(signature) : null;
            if (effect != null) {
                return Optional.of(effect);
            }
            // What a method overrides says what it is for; a constructor overrides nothing.
            if (signature.startsWith("<init>")) {
                break;
            }
            supertypes(type).forEach(types::add);
        }
        return Optional.empty();
    }

    private static boolean has(TypeElement type, String signature) {
        return ElementFilter.methodsIn(type.getEnclosedElements()).stream()
                .anyMatch(one -> signature(one).equals(signature));
    }

    private static List<TypeElement> supertypes(TypeElement type) {
        return Stream.concat(Stream.of(type.getSuperclass()), type.getInterfaces().stream())
                .filter(DeclaredType.class::isInstance)
                .map(above -> (TypeElement) ((DeclaredType) above).asElement())
                .toList();
    }

    /** The name of a class as {@link Class#getName} gives it. */
    private static String name(TypeElement type) {
        return type.getEnclosingElement() instanceof TypeElement around
                ? name(around) + "$" + type.getSimpleName()
                : type.getQualifiedName().toString();
    }

    private static String signature(ExecutableElement method) {
        return method.getParameters().stream()
                .map(parameter -> erased(parameter.asType()))
                .collect(Collectors.joining(",", method.getSimpleName() + "(", ")"));
    }

    private static String erased(TypeMirror type) {
        if (type instanceof ArrayType array) {
            return erased(array.getComponentType()) + "[]";
        }
        if (type instanceof TypeVariable variable) {
            return erased(variable.getUpperBound());
        }
        if (type instanceof IntersectionType several) {
            return erased(several.getBounds().get(0));
        }
        return type instanceof DeclaredType declared
                ? declared.asElement().getSimpleName().toString()
                : type.getKind().name().toLowerCase(Locale.ROOT);
    }

    private static void read(String file) {
        try (BufferedReader reader =
                new BufferedReader(
                        new InputStreamReader(
                                KnownMethods.class.getResourceAsStream("methods/" + file),
                                StandardCharsets.UTF_8))) {
            String owner = "";
            Effect effect = null;
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                if (!line.startsWith(" ")) {
                    owner = line;
                    continue;
                }
                String methods = line;
                int colon = line.indexOf(':');
                if (colon > 0) {
                    String name = line.substring(0, colon).strip().replace('-', '_');
                    effect = Effect.valueOf(name.toUpperCase(Locale.ROOT));
                    methods = line.substring(colon + 1);
                }
                for (String method : methods.strip().split(" ")) {
                    BY_CLASS.computeIfAbsent(owner, any -> new HashMap<>()).put(method, effect);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
