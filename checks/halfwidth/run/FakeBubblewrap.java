package halfwidth.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;

/** Small programs in place of bubblewrap, so that something is tried where it is not installed. */
final class FakeBubblewrap {
    /** Takes its options as bubblewrap does, notes them beside itself, and starts the command. */
    static final String HOLDS_NOTHING =
            """
            #!/bin/sh
            echo "$@" >> "$0.options"
            while [ "${1#--}" != "$1" ]; do
                case "$1" in
                    --version) echo "bubblewrap 0, a fake"; exit 0;;
                    --ro-bind|--bind) shift 3;;
                    --dev|--proc|--tmpfs|--cap-drop) shift 2;;
                    *) shift;;
                esac
            done
            exec "$@"
            """;

    private FakeBubblewrap() {}

    /** A program of this text, as a search path would find it. */
    static Path in(Path folder, String text) throws IOException {
        Path program = Files.writeString(folder.resolve("bwrap"), text);
        return Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwx------"));
    }

    /** The one of this system, if it is there and works; else says why not. */
    static Optional<Bubblewrap> realOne() {
        Confinement here =
                Confinement.find(
                        "",
                        System.getProperty("os.name"),
                        System.getenv("PATH"),
                        java.time.Duration.ofSeconds(30));
        if (here.by().isEmpty()) {
            System.out.println("Not tried with bubblewrap itself. " + here.told());
        }
        return here.by();
    }
}
