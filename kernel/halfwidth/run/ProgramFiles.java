package halfwidth.run;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the program lies, and what lies beside it. */
public final class ProgramFiles {
    private ProgramFiles() {}

    /**
     * The class path of a worker, absolute; the program itself is the first entry. As packaged it
     * is the program's jar alone, which names its libraries and fits the archive.
     */
    public static List<Path> classPath() {
        return jar().map(List::of)
                .orElseGet(
                        () ->
                                Stream.of(
                                                System.getProperty("java.class.path")
                                                        .split(File.pathSeparator))
                                        .map(entry -> Path.of(entry).toAbsolutePath())
                                        .toList());
    }

    /** The jar that this program was started from, or its folder of classes. */
    public static Path program() {
        CodeSource source = ProgramFiles.class.getProtectionDomain().getCodeSource();
        try {
            return Path.of(source.getLocation().toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException("the program lies at no path", e);
        }
    }

    private static Optional<Path> jar() {
        return Optional.of(program()).filter(Files::isRegularFile);
    }

    /**
     * The folder of compiled pages beside the program's jar; beside its classes where it is not
     * packaged, which keeps them apart from those that go to the field.
     */
    public static Path compiled() {
        Path program = classPath().get(0);
        String name = Files.isDirectory(program) ? "compiled-" + program.getFileName() : "compiled";
        return program.resolveSibling(name);
    }

    /** The class-data archive that packaging makes beside the jar, for the JVM it was made with. */
    static Optional<Path> archive() {
        String name = "worker-" + System.getProperty("java.vm.version") + ".jsa";
        return jar().map(jar -> jar.resolveSibling(name)).filter(Files::exists);
    }

    /** All that a worker's JVM reads to start. */
    static List<Path> read() {
        List<Path> all = new ArrayList<>(classPath());
        all.add(Path.of(System.getProperty("java.home")));
        all.add(classPath().get(0).resolveSibling("lib")); // the jar names its libraries there
        archive().ifPresent(all::add);
        return all;
    }
}
