package halfwidth.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Whether this system can hold workers below what this program holds them to, and by what. A worker
 * never needs it; where it does not work, workers start without.
 */
public final class Confinement {
    /** Starting it takes a hundredth of that. */
    private static final Duration PATIENCE = Duration.ofSeconds(1);

    private final Optional<Bubblewrap> by;
    private final String told;

    private Confinement(Optional<Bubblewrap> by, String told) {
        this.by = by;
        this.told = told;
    }

    /** Looked for once; the first who asks waits, for a second at most. */
    private static final class Here {
        static final Confinement FOUND =
                find(
                        System.getProperty("halfwidth.confine", ""),
                        System.getProperty("os.name"),
                        Optional.ofNullable(System.getenv("PATH")).orElse(""),
                        PATIENCE);
    }

    /** That of this system, unless it is switched off by {@code -Dhalfwidth.confine=no}. */
    public static Confinement ofThisSystem() {
        return Here.FOUND;
    }

    static Confinement find(String wanted, String system, String searchPath, Duration patience) {
        if (wanted.equals("no")) {
            return none("switched off by -Dhalfwidth.confine=no");
        }
        if (!system.equals("Linux")) {
            return none("bubblewrap, which does it, is for Linux only");
        }
        return Bubblewrap.on(searchPath)
                .map(program -> probe(program, patience))
                .orElseGet(() -> none("bubblewrap (bwrap) is not installed"));
    }

    /** Lets it start itself just as it would start a worker. */
    static Confinement probe(Path program, Duration patience) {
        Bubblewrap bubblewrap = new Bubblewrap(program);
        List<String> line =
                bubblewrap.before(
                        List.of(program.toString(), "--version"), List.of(program), List.of());
        try {
            Process process = new ProcessBuilder(line).redirectErrorStream(true).start();
            process.getOutputStream().close();
            boolean ended = process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS);
            if (!ended) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly();
                return none(program + " did not answer within " + patience.toMillis() + " ms");
            }
            String said = firstLine(process.getInputStream());
            return process.exitValue() == 0 && said.startsWith("bubblewrap ")
                    ? new Confinement(
                            Optional.of(bubblewrap),
                            "Workers are confined by %s (%s): no network, nothing written."
                                    .formatted(said, program))
                    : none(program + " does not work here: " + said);
        } catch (IOException e) {
            return none(program + " does not start: " + e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return none("looking for it was interrupted");
        }
    }

    /** Only what is there: a process that it left behind may hold the stream open. */
    private static String firstLine(InputStream in) throws IOException {
        String said = new String(in.readNBytes(in.available()), StandardCharsets.UTF_8);
        return said.lines().findFirst().map(String::strip).orElse("");
    }

    private static Confinement none(String why) {
        return new Confinement(
                Optional.empty(), "Workers are not confined by the system: " + why + ".");
    }

    Optional<Bubblewrap> by() {
        return by;
    }

    /** One sentence: whether workers are confined, and by what or why not. */
    public String told() {
        return told;
    }
}
