package halfwidth.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A program that starts another one with less: no network, no process seen but its own, no file
 * written but those named, and its end with the end of who started it.
 *
 * @param program where it is
 */
record Bubblewrap(Path program) {
    /**
     * What would lead out again: sockets of the user's other programs lie here, and connecting to
     * one is no writing.
     */
    private static final List<Path> HIDDEN = List.of(Path.of("/tmp"), Path.of("/run"));

    /**
     * Puts itself before a command.
     *
     * @param read what the command reads, to be shown even where it lies in a hidden folder
     * @param written the files and folders that it may change, which must exist
     */
    List<String> before(List<String> command, List<Path> read, List<Path> written) {
        List<String> line = new ArrayList<>();
        line.add(program.toString());
        line.addAll(List.of("--ro-bind", "/", "/", "--dev", "/dev", "--proc", "/proc"));
        List<Path> hidden = HIDDEN.stream().flatMap(folder -> real(folder).stream()).toList();
        for (Path folder : hidden) {
            line.addAll(List.of("--tmpfs", folder.toString()));
        }
        read.stream()
                .flatMap(path -> real(path).stream())
                .filter(path -> hidden.stream().anyMatch(path::startsWith))
                .distinct()
                .forEach(path -> bind(line, "--ro-bind", path));
        written.stream()
                .flatMap(path -> real(path).stream())
                .forEach(path -> bind(line, "--bind", path));
        // A root user's rights would let it mount all anew.
        line.addAll(List.of("--cap-drop", "ALL"));
        line.addAll(List.of("--unshare-net", "--unshare-pid", "--unshare-ipc"));
        line.addAll(List.of("--new-session", "--die-with-parent"));
        line.addAll(command);
        return line;
    }

    private static void bind(List<String> line, String how, Path path) {
        line.addAll(List.of(how, path.toString(), path.toString()));
    }

    /** A path without links, as they may lead through a hidden folder; empty where nothing is. */
    private static Optional<Path> real(Path path) {
        try {
            return Optional.of(path.toRealPath());
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The first on a search path; only absolute entries, since a job folder may be the current. */
    static Optional<Path> on(String searchPath) {
        return Stream.of(searchPath.split(":"))
                .filter(entry -> entry.startsWith("/"))
                .map(entry -> Path.of(entry, "bwrap"))
                .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
                .findFirst();
    }
}
