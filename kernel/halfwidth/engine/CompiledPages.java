package halfwidth.engine;

import halfwidth.run.Prelude;
import halfwidth.run.ProgramFiles;
import halfwidth.run.Script;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.io.StreamCorruptedException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Pages compiled before, in a folder beside the program, so that a page opens at once. A page is
 * found by a digest of all that its compilation rests on: its code, the imports, the program and
 * the JVM; a page with one letter changed is another page. Values are not kept. A digest of its own
 * tells a file that was damaged; it is no seal, so what is found is held against the bounds like
 * what was just compiled.
 */
final class CompiledPages {
    private static final ObjectInputFilter OURS =
            ObjectInputFilter.Config.createFilter(
                    "halfwidth.engine.*;halfwidth.run.*;halfwidth.formula.*;halfwidth.vocabulary.*;java.lang.*;java.util.*;!*");

    /** Behind what is kept stands its SHA-256, as so many bytes. */
    private static final int DIGEST = 32;

    private final Path folder;
    private byte[] program;

    private CompiledPages(Path folder) {
        this.folder = folder;
    }

    static CompiledPages besideProgram() {
        return new CompiledPages(ProgramFiles.compiled());
    }

    static CompiledPages in(Path folder) {
        return new CompiledPages(folder);
    }

    /**
     * Finds a page. One that is not as it was kept, or cannot be read, is thrown away and counts as
     * not there, so that it is compiled anew.
     */
    Optional<Program> find(Script script) {
        Path file = null;
        try {
            file = file(script);
            return Optional.of(read(Files.readAllBytes(file)));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException | ClassNotFoundException | RuntimeException | Error e) {
            throwAway(file);
            return Optional.empty();
        }
    }

    private static Program read(byte[] kept) throws IOException, ClassNotFoundException {
        int length = kept.length - DIGEST;
        if (length < 0) {
            throw new StreamCorruptedException("shorter than its digest");
        }
        MessageDigest sha = sha();
        sha.update(kept, 0, length);
        if (!MessageDigest.isEqual(sha.digest(), Arrays.copyOfRange(kept, length, kept.length))) {
            throw new StreamCorruptedException("not what was kept");
        }
        try (ObjectInputStream in =
                new ObjectInputStream(new ByteArrayInputStream(kept, 0, length))) {
            in.setObjectInputFilter(OURS);
            return (Program) in.readObject();
        }
    }

    private static void throwAway(Path file) {
        try {
            if (file != null) {
                Files.deleteIfExists(file);
            }
        } catch (IOException e) {
            // It is not used in any case.
        }
    }

    /** Keeps a page; where the folder cannot be written, the page is compiled anew next time. */
    void keep(Script script, Program program) {
        try {
            Files.createDirectories(folder);
            Path whole = Files.createTempFile(folder, "page", ".part");
            MessageDigest sha = sha();
            try (OutputStream file = Files.newOutputStream(whole);
                    OutputStream bytes = new BufferedOutputStream(file)) {
                // Not closed, since the digest is to follow.
                ObjectOutputStream out = new ObjectOutputStream(new DigestOutputStream(bytes, sha));
                out.writeObject(program);
                out.flush();
                bytes.write(sha.digest());
            }
            // Moved into place, so that another worker never reads half of it.
            Files.move(whole, file(script), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            // Read-only, full, or another worker was faster: the page works all the same.
        }
    }

    private Path file(Script script) throws IOException {
        return folder.resolve(digest(script) + ".page");
    }

    private String digest(Script script) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(all)) {
            out.writeObject(script);
        }
        all.writeBytes(Prelude.IMPORTS.toString().getBytes(StandardCharsets.UTF_8));
        all.writeBytes(System.getProperty("java.vm.version").getBytes(StandardCharsets.UTF_8));
        all.writeBytes(program());
        return HexFormat.of().formatHex(sha().digest(all.toByteArray()));
    }

    private static MessageDigest sha() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }

    /** What tells this program from another one. */
    private byte[] program() throws IOException {
        if (program == null) {
            program = readProgram();
        }
        return program;
    }

    private static byte[] readProgram() throws IOException {
        Path first = ProgramFiles.classPath().get(0);
        if (Files.isRegularFile(first)) {
            // The jar names its libraries with their versions. Not its time: copying changes that.
            return Files.readAllBytes(first);
        }
        StringBuilder files = new StringBuilder();
        for (Path entry : ProgramFiles.classPath()) {
            if (!Files.exists(entry)) {
                continue;
            }
            try (Stream<Path> all = Files.walk(entry)) {
                all.sorted().forEach(file -> files.append(file).append(changed(file)));
            }
        }
        return files.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String changed(Path file) {
        try {
            BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
            return is.isRegularFile() ? " " + is.size() + " " + is.lastModifiedTime() + "\n" : "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
