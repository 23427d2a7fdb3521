package halfwidth.job;

import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.List;
import java.util.Set;

/**
 * The machine's disk with somebody who hears of every call and may make it fail. Nothing is forced
 * to the disk below, which would take most of the time and changes nothing that can be seen.
 */
final class WatchedDisk extends FileSystem {
    private final Path root;
    private final WatchedProvider provider;

    private WatchedDisk(Path root, DiskCalls calls) {
        this.root = root;
        this.provider = new WatchedProvider(this, calls);
    }

    /** A path by which everything is watched. */
    static Path path(Path below, DiskCalls calls) {
        return new WatchedPath(new WatchedDisk(below.getRoot(), calls), below);
    }

    @Override
    public FileSystemProvider provider() {
        return provider;
    }

    @Override
    public void close() {}

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return root.getFileSystem().getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        return List.of(new WatchedPath(this, root));
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        return root.getFileSystem().getFileStores();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return root.getFileSystem().supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
        return new WatchedPath(this, root.getFileSystem().getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String syntaxAndPattern) {
        throw new UnsupportedOperationException();
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        throw new UnsupportedOperationException();
    }

    @Override
    public WatchService newWatchService() {
        throw new UnsupportedOperationException();
    }
}
