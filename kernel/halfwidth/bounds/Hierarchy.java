package halfwidth.bounds;

import java.util.stream.Stream;

/** What libraries' classes inherit. Their code is not run by looking. */
final class Hierarchy {
    private Hierarchy() {}

    /** Whether a class is another one or a subtype of it; one that is not there is neither. */
    static boolean is(String name, String other) {
        try {
            return load(other).isAssignableFrom(load(name));
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }

    static boolean isInterface(String name) {
        try {
            return load(name).isInterface();
        } catch (ClassNotFoundException | LinkageError e) {
            return false;
        }
    }

    /** Whether a class has a member of a name that a subclass could reach. */
    static boolean has(String name, String member) {
        try {
            for (Class<?> type = load(name); type != null; type = type.getSuperclass()) {
                boolean declared =
                        Stream.concat(
                                        Stream.of(type.getDeclaredMethods()),
                                        Stream.of(type.getDeclaredFields()))
                                .anyMatch(one -> one.getName().equals(member));
                if (declared
                        || Stream.of(type.getInterfaces())
                                .anyMatch(one -> has(one.getName(), member))) {
                    return true;
                }
            }
            return false;
        } catch (ClassNotFoundException | LinkageError e) {
            return true; // then it is held against the list
        }
    }

    private static Class<?> load(String name) throws ClassNotFoundException {
        return Class.forName(name, false, Hierarchy.class.getClassLoader());
    }
}
