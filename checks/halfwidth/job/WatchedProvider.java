package halfwidth.job;

import halfwidth.job.DiskCalls.Kind;
import java.io.IOException;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/** The calls of the {@link WatchedDisk}; what a job has no use for is not there. */
final class WatchedProvider extends FileSystemProvider {
    private final WatchedDisk disk;
    private final DiskCalls calls;

    WatchedProvider(WatchedDisk disk, DiskCalls calls) {
        this.disk = disk;
        this.calls = calls;
    }

    @Override
    public String getScheme() {
        return "watched";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> settings) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return disk;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public FileChannel newFileChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        Path file = WatchedPath.below(path);
        calls.before(Kind.OPEN, file);
        boolean there = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
        Set<OpenOption> below = new HashSet<>(options);
        boolean forces = below.remove(StandardOpenOption.SYNC);
        boolean appends = below.remove(StandardOpenOption.APPEND);
        FileChannel channel = FileChannel.open(file, below, attributes);
        if (appends) {
            channel.position(channel.size());
        }
        if (!there) {
            calls.created(file);
        } else if (below.contains(StandardOpenOption.TRUNCATE_EXISTING)) {
            calls.truncated(file, 0);
        }
        return new WatchedChannel(channel, file, forces, calls);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(
            Path folder, DirectoryStream.Filter<? super Path> filter) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void createDirectory(Path path, FileAttribute<?>... attributes) throws IOException {
        Path folder = WatchedPath.below(path);
        calls.before(Kind.CREATE_FOLDER, folder);
        Files.createDirectory(folder, attributes);
        calls.createdFolder(folder);
    }

    @Override
    public void delete(Path path) throws IOException {
        Path file = WatchedPath.below(path);
        calls.before(Kind.DELETE, file);
        Files.delete(file);
        calls.deleted(file);
    }

    @Override
    public void copy(Path from, Path to, CopyOption... options) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void move(Path from, Path to, CopyOption... options) throws IOException {
        calls.before(Kind.MOVE, WatchedPath.below(to));
        Files.move(WatchedPath.below(from), WatchedPath.below(to), options);
        calls.moved(WatchedPath.below(from), WatchedPath.below(to));
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return Files.isSameFile(WatchedPath.below(one), WatchedPath.below(other));
    }

    @Override
    public boolean isHidden(Path path) {
        return false;
    }

    @Override
    public FileStore getFileStore(Path path) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        Path file = WatchedPath.below(path);
        calls.before(Kind.ATTRIBUTES, file);
        file.getFileSystem().provider().checkAccess(file, modes);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(
            Path path, Class<V> type, LinkOption... options) {
        throw new UnsupportedOperationException();
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(
            Path path, Class<A> type, LinkOption... options) throws IOException {
        calls.before(Kind.ATTRIBUTES, WatchedPath.below(path));
        return Files.readAttributes(WatchedPath.below(path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String names, LinkOption... options) {
        throw new UnsupportedOperationException();
    }

    @Override
    public void setAttribute(Path path, String name, Object value, LinkOption... options) {
        throw new UnsupportedOperationException();
    }
}
