package halfwidth.job;

import java.io.IOException;
import java.nio.file.Path;

/** Hears of every call of a program to the {@link WatchedDisk}, and may make it fail. */
interface DiskCalls {
    /** What a program asks of a disk. */
    enum Kind {
        OPEN,
        READ,
        WRITE,
        FORCE,
        TRUNCATE,
        SIZE,
        LOCK,
        CLOSE,
        MOVE,
        DELETE,
        CREATE_FOLDER,
        ATTRIBUTES
    }

    /** How much of a call is done. */
    enum Reach {
        ALL,
        /** Half of a write, which says so by its count. */
        HALF,
        /** Half of a write, which then fails. */
        HALF_THEN_FAILS
    }

    /** Nothing fails. */
    DiskCalls NONE = (kind, path) -> Reach.ALL;

    /**
     * Comes before a call, and before anything is done.
     *
     * @throws IOException where the call fails
     */
    Reach before(Kind kind, Path path) throws IOException;

    /** A file was made. */
    default void created(Path file) {}

    /** A folder was made. */
    default void createdFolder(Path folder) {}

    /** Bytes were written. */
    default void wrote(Path file, long at, byte[] bytes) {}

    /** A file was cut to a length. */
    default void truncated(Path file, long length) {}

    /** A file, or the entries of a folder, were forced to the disk. */
    default void forced(Path fileOrFolder) {}

    /** A file got another name. */
    default void moved(Path from, Path to) {}

    /** A file was deleted. */
    default void deleted(Path file) {}
}
