package halfwidth.job;

import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;

/** A path of the {@link WatchedDisk}, for one of the disk below it. */
record WatchedPath(WatchedDisk disk, Path below) implements Path {

    private Path watched(Path path) {
        return path == null ? null : new WatchedPath(disk, path);
    }

    /** The path of the disk below. */
    static Path below(Path path) {
        return path instanceof WatchedPath watched ? watched.below : path;
    }

    @Override
    public FileSystem getFileSystem() {
        return disk;
    }

    @Override
    public boolean isAbsolute() {
        return below.isAbsolute();
    }

    @Override
    public Path getRoot() {
        return watched(below.getRoot());
    }

    @Override
    public Path getFileName() {
        return watched(below.getFileName());
    }

    @Override
    public Path getParent() {
        return watched(below.getParent());
    }

    @Override
    public int getNameCount() {
        return below.getNameCount();
    }

    @Override
    public Path getName(int index) {
        return watched(below.getName(index));
    }

    @Override
    public Path subpath(int from, int to) {
        return watched(below.subpath(from, to));
    }

    @Override
    public boolean startsWith(Path other) {
        return below.startsWith(below(other));
    }

    @Override
    public boolean endsWith(Path other) {
        return below.endsWith(below(other));
    }

    @Override
    public Path normalize() {
        return watched(below.normalize());
    }

    @Override
    public Path resolve(Path other) {
        return watched(below.resolve(below(other)));
    }

    @Override
    public Path relativize(Path other) {
        return watched(below.relativize(below(other)));
    }

    @Override
    public URI toUri() {
        return below.toUri();
    }

    @Override
    public Path toAbsolutePath() {
        return watched(below.toAbsolutePath());
    }

    @Override
    public Path toRealPath(LinkOption... options) throws IOException {
        return watched(below.toRealPath(options));
    }

    @Override
    public WatchKey register(
            WatchService service, WatchEvent.Kind<?>[] events, WatchEvent.Modifier... modifiers) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int compareTo(Path other) {
        return below.compareTo(below(other));
    }

    @Override
    public String toString() {
        return below.toString();
    }
}
