package halfwidth.job;

import halfwidth.job.DiskCalls.Kind;
import halfwidth.job.DiskCalls.Reach;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;

/** An open file of the {@link WatchedDisk}. */
final class WatchedChannel extends FileChannel {
    private final FileChannel below;
    private final Path file;
    private final boolean forces;
    private final DiskCalls calls;

    /**
     * @param forces whether each write is on the disk when it returns
     */
    WatchedChannel(FileChannel below, Path file, boolean forces, DiskCalls calls) {
        this.below = below;
        this.file = file;
        this.forces = forces;
        this.calls = calls;
    }

    @Override
    public int read(ByteBuffer to) throws IOException {
        calls.before(Kind.READ, file);
        return below.read(to);
    }

    @Override
    public int read(ByteBuffer to, long at) throws IOException {
        calls.before(Kind.READ, file);
        return below.read(to, at);
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        long at = below.position();
        int count = write(from, at);
        below.position(at + count);
        return count;
    }

    @Override
    public int write(ByteBuffer from, long at) throws IOException {
        Reach reach = calls.before(Kind.WRITE, file);
        int count = reach == Reach.ALL ? from.remaining() : (from.remaining() + 1) / 2;
        byte[] bytes = new byte[count];
        from.get(bytes);
        ByteBuffer part = ByteBuffer.wrap(bytes);
        while (part.hasRemaining()) {
            below.write(part, at + part.position());
        }
        calls.wrote(file, at, bytes);
        if (reach == Reach.HALF_THEN_FAILS) {
            throw new IOException("No space left on device");
        }
        if (forces) {
            calls.forced(file);
        }
        return count;
    }

    @Override
    public long position() throws IOException {
        return below.position();
    }

    @Override
    public FileChannel position(long position) throws IOException {
        below.position(position);
        return this;
    }

    @Override
    public long size() throws IOException {
        calls.before(Kind.SIZE, file);
        return below.size();
    }

    @Override
    public FileChannel truncate(long length) throws IOException {
        calls.before(Kind.TRUNCATE, file);
        below.truncate(length);
        calls.truncated(file, length);
        return this;
    }

    @Override
    public void force(boolean all) throws IOException {
        calls.before(Kind.FORCE, file);
        calls.forced(file);
    }

    @Override
    public FileLock tryLock(long at, long length, boolean shared) throws IOException {
        calls.before(Kind.LOCK, file);
        return below.tryLock(at, length, shared);
    }

    /** The file is closed in any case, as those of an operating system are. */
    @Override
    protected void implCloseChannel() throws IOException {
        below.close();
        calls.before(Kind.CLOSE, file);
    }

    @Override
    public FileLock lock(long at, long length, boolean shared) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long read(ByteBuffer[] to, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferTo(long at, long count, WritableByteChannel to) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel from, long at, long count) {
        throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long at, long length) {
        throw new UnsupportedOperationException();
    }
}
