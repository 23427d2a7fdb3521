package halfwidth.engine;

import halfwidth.run.Prelude;
import halfwidth.run.Script;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.ObjectInputFilter;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Pages compiled before, in a folder beside the packaged program, so that a page opens at once. A
 * page is found by a digest of all that its compilation rests on: its code, the imports, the
 * program's jar and the JVM; a page with one letter changed is another page. Values are not kept.
 */
final class CompiledPages {
    private static final ObjectInputFilter OURS =
            ObjectInputFilter.Config.createFilter(
                    "halfwidth.engine.*;halfwidth.run.*;halfwidth.formula.*;java.lang.*;java.util.*;!*");

    private final Path folder;

    private CompiledPages(Path folder) {
        this.folder = folder;
    }

    /** The folder beside the program's jar; none where the program is not packaged. */
    static Optional<CompiledPages> besideProgram() {
        return program().map(jar -> new CompiledPages(jar.resolveSibling("compiled")));
    }

    private static Optional<Path> program() {
        String first = System.getProperty("java.class.path").split(File.pathSeparator)[0];
        return Optional.of(Path.of(first).toAbsolutePath())
                .filter(file -> file.toString().endsWith(".jar") && Files.isRegularFile(file));
    }

    static CompiledPages in(Path folder) {
        return new CompiledPages(folder);
    }

    /** Finds a page; one that cannot be read counts as not there and is compiled anew. */
    Optional<Program> find(Script script) {
        try (InputStream bytes = Files.newInputStream(file(script));
                ObjectInputStream in = new ObjectInputStream(bytes)) {
            in.setObjectInputFilter(OURS);
            return Optional.of((Program) in.readObject());
        } catch (IOException | ClassNotFoundException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** Keeps a page; where the folder cannot be written, the page is compiled anew next time. */
    void keep(Script script, Program program) {
        try {
            Files.createDirectories(folder);
            Path whole = Files.createTempFile(folder, "page", ".part");
            try (OutputStream bytes = Files.newOutputStream(whole);
                    ObjectOutputStream out = new ObjectOutputStream(bytes)) {
                out.writeObject(program);
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

    private static String digest(Script script) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(all)) {
            out.writeObject(script);
        }
        all.writeBytes(Prelude.IMPORTS.toString().getBytes(StandardCharsets.UTF_8));
        all.writeBytes(System.getProperty("java.vm.version").getBytes(StandardCharsets.UTF_8));
        // The jar names its libraries with their versions. Not its time: copying changes that.
        if (program().isPresent()) {
            all.writeBytes(Files.readAllBytes(program().get()));
        }
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(all.toByteArray()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
