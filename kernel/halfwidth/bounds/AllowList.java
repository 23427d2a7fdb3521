package halfwidth.bounds;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The classes and members that page code may use, as {@code bounds.txt} lists them. */
final class AllowList {
    private static final String RESOURCE = "bounds.txt";
    private static final Set<String> ALL = Set.of();
    private static final String ADVICE =
            "A page computes from its inputs and readings with Java's numbers, strings, dates and"
                    + " collections, tables, plots and the physics of halfwidth.localizer.";

    /** By class, or by package with a trailing dot; {@link #ALL} stands for every member. */
    private final Map<String, Set<String>> allowed = new HashMap<>();

    /** By member, the classes whose member of this name is barred. */
    private final Map<String, Set<String>> barred = new HashMap<>();

    /** By what a name starts with, what to do instead. */
    private final Map<String, String> advice = new HashMap<>();

    /** Classes of a listed package that are not. */
    private final Set<String> closed = new HashSet<>();

    private final Set<String> extended = new HashSet<>();
    private final Set<String> program = new HashSet<>();

    /** Reads the program's own list. */
    static AllowList ours() {
        try (InputStream text = AllowList.class.getResourceAsStream(RESOURCE)) {
            return new AllowList(
                    new String(text.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
        } catch (IOException e) {
            throw new UncheckedIOException(RESOURCE, e);
        }
    }

    AllowList(List<String> lines) {
        for (String line : lines) {
            if (!line.isBlank() && !line.startsWith("#")) {
                entry(line);
            }
        }
    }

    private void entry(String line) {
        String[] parts = line.substring(1).split("\\|");
        if (parts.length != 3 || parts[2].isBlank()) {
            throw new IllegalStateException(
                    RESOURCE + ": expected SIGN NAME | MEMBERS | WHY, found: " + line);
        }
        String name = parts[0].strip().replaceFirst("\\*$", "");
        String members = parts[1].strip();
        Set<String> named = members.equals("*") ? ALL : Set.of(members.split(" +"));
        switch (line.charAt(0)) {
            case '~' -> {
                allowed.put(name, named);
                program.add(name);
            }
            case '^' -> {
                allowed.put(name, named);
                extended.add(name);
            }
            case '+' -> allowed.put(name, named);
            case '-' -> bar(name, named, parts[2].strip());
            default ->
                    throw new IllegalStateException(
                            RESOURCE + ": expected +, ^, ~ or - before: " + line);
        }
    }

    private void bar(String name, Set<String> members, String instead) {
        if (members == ALL) {
            advice.put(name, instead);
            closed.add(name);
        }
        for (String member : members) {
            barred.computeIfAbsent(member, m -> new HashSet<>()).add(name);
            advice.put(name + "." + member, instead);
        }
    }

    /** Whether page code may name a class. */
    boolean type(String name) {
        return members(name) != null;
    }

    /** Whether only code that the program itself puts into a page may name a class. */
    boolean ofProgram(String name) {
        return program.contains(name);
    }

    /** Whether page code may declare a class that extends this one. */
    boolean mayBeExtended(String name) {
        return extended.contains(name);
    }

    /** Whether page code may use a member of a class, declared there or inherited. */
    boolean member(String name, String member) {
        Set<String> members = members(name);
        String shown = member.equals("<init>") ? "new" : member;
        return members != null
                && (members == ALL || members.contains(shown))
                && barred.getOrDefault(shown, Set.of()).stream()
                        .noneMatch(other -> other.equals(name) || Hierarchy.is(name, other));
    }

    /** The members listed for a class, {@link #ALL} for every one; null if it is not listed. */
    private Set<String> members(String name) {
        Set<String> own = allowed.get(name);
        if (own != null) {
            return own;
        }
        int nested = name.indexOf('$');
        String outermost = nested < 0 ? name : name.substring(0, nested);
        if (closed.contains(name) || closed.contains(outermost)) {
            return null;
        }
        return allowed.get(outermost.substring(0, outermost.lastIndexOf('.') + 1));
    }

    /** What a page does instead of using a member of a class. */
    String advice(String name, String member) {
        String used = name + "." + (member.equals("<init>") ? "new" : member);
        return advice.keySet().stream()
                .filter(
                        start ->
                                used.equals(start)
                                        || name.equals(start)
                                        || start.endsWith(".") && name.startsWith(start))
                .max(Comparator.comparingInt(String::length))
                .map(advice::get)
                .orElse(ADVICE);
    }

    /** The listed classes, and packages with a trailing dot. */
    Set<String> names() {
        return Set.copyOf(allowed.keySet());
    }
}
