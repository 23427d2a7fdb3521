package halfwidth.localizer.limits;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A table of limits, asked by key and category.
 *
 * <p>The table is a CSV file of the columns key, quantity, category, least, most, unit, document,
 * section, status and note. A row of category "any" holds for every category that has no row of its
 * own.
 */
public final class Limits {
    /** The category of a figure that holds for all. */
    public static final String ANY = "any";

    private static final String PUBLISHED = "datasets/limits.csv";

    private final String name;
    private final Map<String, Map<String, Limit>> byKey = new LinkedHashMap<>();

    private Limits(String name, List<Limit> limits) {
        this.name = name;
        for (Limit limit : limits) {
            Limit before =
                    byKey.computeIfAbsent(limit.key(), key -> new LinkedHashMap<>())
                            .put(limit.category(), limit);
            if (before != null) {
                throw new IllegalArgumentException(
                        name
                                + ": "
                                + limit.key()
                                + " must stand once for category "
                                + limit.category());
            }
        }
    }

    /**
     * Returns the table that comes with the program.
     *
     * @return its limits
     */
    public static Limits published() {
        try (InputStream stream = Limits.class.getClassLoader().getResourceAsStream(PUBLISHED)) {
            if (stream == null) {
                throw new IllegalStateException(PUBLISHED + " is not on the class path");
            }
            return read(new InputStreamReader(stream, StandardCharsets.UTF_8), PUBLISHED);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * Reads another table, a station's own.
     *
     * @param file the table, in UTF-8
     * @return its limits
     * @throws IOException if it cannot be read
     * @throws IllegalArgumentException if a row is wrong, with the file and the line
     */
    public static Limits read(Path file) throws IOException {
        try (Reader reader = Files.newBufferedReader(file)) {
            return read(reader, file.toString());
        }
    }

    /**
     * Reads a table from a stream.
     *
     * @param reader the table
     * @param name what to call it in a refusal
     * @return its limits
     * @throws IOException if it cannot be read
     * @throws IllegalArgumentException if a row is wrong, with the name and the line
     */
    public static Limits read(Reader reader, String name) throws IOException {
        return new Limits(name, new LimitsReader(name).read(reader));
    }

    /**
     * Returns a figure that holds for every category.
     *
     * @param key its name
     * @return the limit
     * @throws IllegalArgumentException if there is none, with what there is
     */
    public Limit of(String key) {
        return of(key, ANY);
    }

    /**
     * Returns the figure of a category, or that of every category if it has none of its own.
     *
     * @param key its name
     * @param category "I", "II" or "III"
     * @return the limit
     * @throws IllegalArgumentException if there is none, with what there is
     */
    public Limit of(String key, String category) {
        Map<String, Limit> categories = byKey.get(key);
        if (categories == null) {
            throw new IllegalArgumentException(
                    "limit " + key + " must be one of those in " + name + ": " + like(key));
        }
        Limit found = categories.getOrDefault(category, categories.get(ANY));
        if (found == null) {
            throw new IllegalArgumentException(
                    "category "
                            + category
                            + " of "
                            + key
                            + " must be one of those in "
                            + name
                            + ": "
                            + String.join(", ", categories.keySet()));
        }
        return found;
    }

    /**
     * Tells whether there is a figure for a category, its own or that of every category.
     *
     * @param key its name
     * @param category "I", "II" or "III"
     * @return true if {@link #of(String, String)} would return one
     */
    public boolean has(String key, String category) {
        Map<String, Limit> categories = byKey.getOrDefault(key, Map.of());
        return categories.containsKey(category) || categories.containsKey(ANY);
    }

    /**
     * Returns every limit, in the order of the table, grouped by key.
     *
     * @return the limits
     */
    public List<Limit> all() {
        return byKey.values().stream().flatMap(of -> of.values().stream()).toList();
    }

    /** The keys that begin alike, or all of them if none does. */
    private String like(String key) {
        String group = key.contains(".") ? key.substring(0, key.indexOf('.') + 1) : key;
        List<String> alike = byKey.keySet().stream().filter(k -> k.startsWith(group)).toList();
        return (alike.isEmpty() ? byKey.keySet() : alike)
                .stream().collect(Collectors.joining(", "));
    }
}
