package halfwidth.job;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a disk holds after the power was lost. */
final class PowerLoss {
    /** A page of the disk's, of which a write may reach it without those before. */
    private static final int SECTOR = 512;

    /** What became of a change that nothing had forced. */
    enum Fate {
        KEPT,
        LOST,
        /** The first half of a write reached the disk. */
        FIRST_HALF,
        /** The second half did, if it is longer than a sector. */
        SECOND_HALF,
        /** The file has its length, and nothing in it. */
        BLANK
    }

    private final Path base;
    private final Map<PowerLog.Inode, byte[]> files = new LinkedHashMap<>();
    private final Map<Path, PowerLog.Inode> names = new LinkedHashMap<>();
    private final Set<Path> folders = new LinkedHashSet<>();

    /**
     * @param base the folder that was there before, and all above it
     */
    PowerLoss(Path base) {
        this.base = base;
        folders.add(base);
    }

    /** The fates that a change may have. */
    static List<Fate> fates(PowerLog.Change change) {
        if (!(change instanceof PowerLog.Write write)) {
            return List.of(Fate.KEPT, Fate.LOST);
        }
        return write.bytes().length > SECTOR
                ? List.of(Fate.values())
                : List.of(Fate.KEPT, Fate.LOST, Fate.FIRST_HALF, Fate.BLANK);
    }

    void apply(PowerLog.Change change, Fate fate) {
        if (fate == Fate.LOST) {
            return;
        }
        if (change instanceof PowerLog.Write write) {
            write(write, fate);
        } else if (change instanceof PowerLog.Cut cut) {
            files.put(cut.file(), Arrays.copyOf(content(cut.file()), (int) cut.length()));
        } else if (change instanceof PowerLog.Entry entry) {
            names.put(entry.path(), entry.file());
        } else if (change instanceof PowerLog.FolderEntry entry) {
            folders.add(entry.path());
        } else if (change instanceof PowerLog.Rename rename) {
            names.remove(rename.from());
            names.put(rename.to(), rename.file());
        } else if (change instanceof PowerLog.Removal removal) {
            names.remove(removal.path());
        }
    }

    private byte[] content(PowerLog.Inode file) {
        return files.getOrDefault(file, new byte[0]);
    }

    private void write(PowerLog.Write write, Fate fate) {
        byte[] bytes = write.bytes();
        int half = bytes.length / 2;
        int from = fate == Fate.SECOND_HALF ? half : 0;
        int to = fate == Fate.FIRST_HALF ? half : fate == Fate.BLANK ? 0 : bytes.length;
        int reached = fate == Fate.FIRST_HALF ? half : bytes.length;
        byte[] before = content(write.file());
        int at = (int) write.at();
        byte[] after = Arrays.copyOf(before, Math.max(before.length, at + reached));
        if (from < to) {
            System.arraycopy(bytes, from, after, at + from, to - from);
        }
        files.put(write.file(), after);
    }

    /** Tells one state from another, whatever the clock showed: so all runs count the same. */
    List<Object> state() {
        List<Object> state = new ArrayList<>(folders);
        names.forEach(
                (name, file) -> {
                    String text = new String(content(file), StandardCharsets.ISO_8859_1);
                    state.add(name + "=" + text.replaceAll("T\\d{2}:\\d{2}:\\d{2}", ""));
                });
        return state;
    }

    /** Writes what is left into another folder. */
    void write(Path other) throws IOException {
        Files.createDirectories(other);
        for (Path folder : folders) {
            if (folders.contains(folder.getParent())) {
                Files.createDirectories(other.resolve(base.relativize(folder)));
            }
        }
        for (Map.Entry<Path, PowerLog.Inode> name : names.entrySet()) {
            Path file = other.resolve(base.relativize(name.getKey()));
            if (Files.isDirectory(file.getParent())) {
                Files.write(file, content(name.getValue()));
            }
        }
    }
}
