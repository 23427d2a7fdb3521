package halfwidth.show;

import halfwidth.engine.PageHere;
import java.io.IOException;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The types that a page's formulas can name: its own, those it imports, and Java's plain ones. */
final class PageTypes {
    private static final List<String> PLAIN =
            List.of("java.lang.*", "java.util.*", "java.util.stream.*", "java.util.function.*");

    private final PageHere page;
    private final Set<String> imported = new LinkedHashSet<>();
    private final Set<String> statics = new LinkedHashSet<>();

    PageTypes(PageHere page) {
        this.page = page;
        for (String line : page.imports()) {
            String name =
                    line.replaceFirst("^import\\s+(static\\s+)?", "").replaceAll("\\s*;.*", "");
            (line.startsWith("import static") ? statics : imported).add(name);
        }
        imported.addAll(PLAIN);
    }

    /** The type of a simple name, or of one with its outer type before it. */
    Optional<Class<?>> named(String name) {
        String simple = name.replaceAll("<.*", "");
        int dot = simple.indexOf('.');
        String outer = dot < 0 ? simple : simple.substring(0, dot);
        String inner = dot < 0 ? "" : "$" + simple.substring(dot + 1).replace('.', '$');
        Optional<Class<?>> own =
                page.types().stream().filter(t -> t.getSimpleName().equals(simple)).findFirst();
        return own.or(
                () ->
                        imported.stream()
                                .filter(one -> one.endsWith(".*") || one.endsWith("." + outer))
                                .map(one -> one.replaceFirst("\\*$", outer) + inner)
                                .flatMap(one -> loaded(one).stream())
                                .findFirst());
    }

    private static Optional<Class<?>> loaded(String name) {
        try {
            return Optional.of(Class.forName(name, true, PageTypes.class.getClassLoader()));
        } catch (ClassNotFoundException | NoClassDefFoundError none) {
            return Optional.empty();
        }
    }

    /** The methods of that name that static imports bring in. */
    List<Method> importedMethods(String name) {
        List<Method> found = new ArrayList<>();
        for (String one : statics) {
            String member = one.substring(one.lastIndexOf('.') + 1);
            if (member.equals("*") || member.equals(name)) {
                loaded(one.substring(0, one.lastIndexOf('.')))
                        .ifPresent(type -> found.addAll(staticMethods(type, name)));
            }
        }
        return found;
    }

    /** The public static methods of a type. */
    static List<Method> staticMethods(Class<?> type, String name) {
        return Stream.of(type.getMethods())
                .filter(method -> method.getName().equals(name))
                .filter(method -> Modifier.isStatic(method.getModifiers()))
                .toList();
    }

    /**
     * The methods of that name of any imported type: a method that is handed on, as in {@code
     * map(cut, toMillimetres)}, is shown without its type.
     */
    List<Method> handedOn(String name) {
        return all().flatMap(type -> staticMethods(type, name).stream()).toList();
    }

    /** What constants of that name are worth; in a formula they stand without their type. */
    Optional<Object> constant(String name) {
        return Stream.concat(Stream.of(Double.class, Integer.class), all())
                .flatMap(type -> constant(type, name).stream())
                .findFirst();
    }

    /** What a type's constant is worth. */
    static Optional<Object> constant(Class<?> type, String name) {
        try {
            Field field = type.getField(name);
            return Modifier.isStatic(field.getModifiers())
                    ? Optional.of(field.get(null))
                    : Optional.empty();
        } catch (NoSuchFieldException | IllegalAccessException none) {
            return Optional.empty();
        }
    }

    private Stream<Class<?>> all() {
        return Stream.concat(
                page.types().stream(), imported.stream().flatMap(one -> types(one).stream()));
    }

    private static List<Class<?>> types(String imported) {
        if (!imported.endsWith(".*")) {
            return loaded(imported).<List<Class<?>>>map(List::of).orElse(List.of());
        }
        Path folder = Path.of("target/classes", imported.replace(".*", "").replace('.', '/'));
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> file.matches("\\w+\\.class"))
                    .sorted()
                    .map(file -> imported.replace("*", file.replace(".class", "")))
                    .flatMap(name -> loaded(name).stream())
                    .<Class<?>>map(type -> type)
                    .toList();
        } catch (IOException unreadable) {
            throw new java.io.UncheckedIOException(unreadable);
        }
    }
}
