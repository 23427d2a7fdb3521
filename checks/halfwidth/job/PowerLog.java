package halfwidth.job;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;

/** What a program changed on a disk, in order, and what had been told by then. */
final class PowerLog implements DiskCalls {
    /** A file, whatever its name. */
    record Inode(int number) {}

    /** Something that a loss of power may undo. */
    sealed interface Change {
        /** The file or the folder to be forced, for it to last. */
        Object forcedBy();
    }

    record Entry(Path path, Inode file) implements Change {
        @Override
        public Object forcedBy() {
            return path.getParent();
        }
    }

    record FolderEntry(Path path) implements Change {
        @Override
        public Object forcedBy() {
            return path.getParent();
        }
    }

    record Rename(Path from, Path to, Inode file) implements Change {
        @Override
        public Object forcedBy() {
            return to.getParent();
        }
    }

    record Removal(Path path) implements Change {
        @Override
        public Object forcedBy() {
            return path.getParent();
        }
    }

    record Write(Inode file, long at, byte[] bytes) implements Change {
        @Override
        public Object forcedBy() {
            return file;
        }
    }

    record Cut(Inode file, long length) implements Change {
        @Override
        public Object forcedBy() {
            return file;
        }
    }

    /** A change or, where that is null, the forcing of something. */
    record Event(Change change, Object forced, JobScenario.State before) {}

    private final List<Event> events = new ArrayList<>();
    private final Map<Path, Inode> names = new HashMap<>();
    private final Supplier<JobScenario.State> told;
    private int inodes;

    PowerLog(Supplier<JobScenario.State> told) {
        this.told = told;
    }

    List<Event> events() {
        return events;
    }

    /**
     * What may be undone where the power is lost behind so many events: what nothing has forced.
     */
    List<Change> unforced(int count) {
        List<Change> open = new ArrayList<>();
        for (Event event : events.subList(0, count)) {
            if (event.change == null) {
                open.removeIf(change -> Objects.equals(change.forcedBy(), event.forced));
            } else {
                open.add(event.change);
            }
        }
        return open;
    }

    private void add(Change change) {
        events.add(new Event(change, null, told.get()));
    }

    @Override
    public Reach before(Kind kind, Path path) {
        return Reach.ALL;
    }

    @Override
    public void created(Path file) {
        names.put(file, new Inode(++inodes));
        add(new Entry(file, names.get(file)));
    }

    @Override
    public void createdFolder(Path folder) {
        add(new FolderEntry(folder));
    }

    @Override
    public void wrote(Path file, long at, byte[] bytes) {
        add(new Write(names.get(file), at, bytes));
    }

    @Override
    public void truncated(Path file, long length) {
        add(new Cut(names.get(file), length));
    }

    @Override
    public void forced(Path path) {
        Object what = names.containsKey(path) ? names.get(path) : path;
        events.add(new Event(null, what, told.get()));
    }

    @Override
    public void moved(Path from, Path to) {
        Inode file = names.remove(from);
        names.put(to, file);
        add(new Rename(from, to, file));
    }

    @Override
    public void deleted(Path file) {
        names.remove(file);
        add(new Removal(file));
    }
}
