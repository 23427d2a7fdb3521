package halfwidth.job;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A job's folder as one zip file, which any program unpacks. What somebody enters while it is made
 * may be missing from it, but nothing in it is half: the journal is taken up to its last whole line
 * and only then what it names. Links are left out.
 *
 * @param lines how many lines of the journal it holds
 * @param files how many files it holds
 */
public record Backup(int lines, int files) {
    /**
     * Writes one, and takes the place of a file of that name only when all of it is on disk.
     *
     * @throws JobRefused if the folder is no job's, or its journal is not sound
     * @throws IOException if a file cannot be read or written
     */
    public static Backup of(Path job, Path zip) throws IOException {
        Job read = Job.readOnly(job);
        if (!read.warnings().isEmpty()) {
            throw new JobRefused(
                    "The journal is not sound, and a copy of it would be none to fall back on: "
                            + String.join("; ", read.warnings()));
        }
        Map<String, byte[]> files = new TreeMap<>();
        byte[] journal = journal(job);
        collect(job, files);
        if (journal.length > 0) {
            files.put(Job.JOURNAL, journal);
        }
        Path part = zip.resolveSibling(zip.getFileName() + ".part");
        try {
            write(files, part);
            Files.move(
                    part, zip, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
        FolderSync.of(zip.toAbsolutePath().getParent());
        int lines = JournalText.read(journal, List.of()).lines().size();
        return new Backup(lines, files.size());
    }

    /** First, so that every record that it names is there when the others are collected. */
    private static byte[] journal(Path job) throws IOException {
        Path file = job.resolve(Job.JOURNAL);
        if (!Files.exists(file)) {
            return new byte[0];
        }
        byte[] bytes = Files.readAllBytes(file);
        return Arrays.copyOf(bytes, JournalText.read(bytes, List.of()).whole());
    }

    private static void collect(Path job, Map<String, byte[]> files) throws IOException {
        Files.walkFileTree(
                job,
                new SimpleFileVisitor<>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes is)
                            throws IOException {
                        String name = job.relativize(file).toString().replace('\\', '/');
                        if (is.isRegularFile() && kept(name)) {
                            files.put(name, Files.readAllBytes(file));
                        }
                        return FileVisitResult.CONTINUE;
                    }
                });
    }

    /** Where the journal ended is left out: by now it may be ahead of the journal's copy. */
    private static boolean kept(String name) {
        return name.equals("job.csv") || name.startsWith("pages/") || name.startsWith("records/");
    }

    private static void write(Map<String, byte[]> files, Path zip) throws IOException {
        try (FileChannel channel =
                        FileChannel.open(
                                zip,
                                StandardOpenOption.CREATE,
                                StandardOpenOption.WRITE,
                                StandardOpenOption.TRUNCATE_EXISTING);
                OutputStream bytes = new BufferedOutputStream(Channels.newOutputStream(channel));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            files.forEach((name, content) -> write(name, content, out));
            out.finish();
            bytes.flush();
            channel.force(true);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void write(String name, byte[] content, ZipOutputStream out) {
        try {
            out.putNextEntry(new ZipEntry(name));
            out.write(content);
            out.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
