package halfwidth.bounds;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.objectweb.asm.ClassReader;

/**
 * What page code may use: what {@code bounds.txt} lists, and what the page declares itself. Held
 * against compiled classes, since a text can hide what it calls, and before they are loaded.
 */
public final class Bounds {
    /** The newest Java whose classes can be read here. */
    public static final int NEWEST_JAVA = 28;

    private static final AllowList LIST = AllowList.ours();

    private Bounds() {}

    /** Uses once what a page will need, so that the first page need not wait for it. */
    public static void prepare() {
        try (InputStream own = Bounds.class.getResourceAsStream("Inspection.class")) {
            refused(Map.of("REPL.$JShell$0", own.readAllBytes()), Set.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Finds the classes that are not to be loaded.
     *
     * @param classes all classes compiled from a page, by name
     * @param declarations those of them that declare inputs by code of the program's own
     * @return why each is refused, by its name
     */
    public static Map<String, Refusal> refused(
            Map<String, byte[]> classes, Set<String> declarations) {
        Map<String, Refusal> refused = new HashMap<>();
        Map<String, ClassReader> readers = new HashMap<>();
        Map<String, Shape> shapes = new HashMap<>();
        classes.forEach(
                (name, bytes) -> {
                    try {
                        ClassReader reader = new ClassReader(bytes);
                        shapes.put(name, Shape.of(reader));
                        readers.put(name, reader);
                    } catch (RuntimeException e) {
                        refused.put(name, Inspection.unreadable(name));
                    }
                });
        Inspection inspection = new Inspection(LIST, shapes);
        readers.forEach(
                (name, reader) ->
                        inspection
                                .refusal(name, reader, declarations.contains(name))
                                .ifPresent(refusal -> refused.put(name, refusal)));
        return refused;
    }
}
