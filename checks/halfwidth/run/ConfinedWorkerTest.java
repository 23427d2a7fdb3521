package halfwidth.run;

import static halfwidth.run.Bench.at;
import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static halfwidth.run.Bench.values;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a worker is kept from by the system, once page code has left its bounds: each step is run
 * freed of them. Every harm is done by a worker that nothing holds, so that the check can fail.
 */
@Timeout(240)
@EnabledOnOs(OS.LINUX)
class ConfinedWorkerTest {
    private static final Duration LONG = Duration.ofSeconds(60);

    @TempDir Path folder;

    private static Worker worker(Optional<Bubblewrap> confined) {
        return Worker.start(new Launch(96, confined));
    }

    private static Run run(Worker worker, String code) throws WorkerLost {
        Script script = page(List.of(), code);
        worker.ask(new Message.Open(script, 20_000, false), Message.Opened.class, LONG);
        return worker.ask(new Message.Go(values(), Map.of(), false), Message.Ran.class, LONG).run();
    }

    private static Run run(Optional<Bubblewrap> confined, String code) throws WorkerLost {
        try (Worker worker = worker(confined)) {
            return run(worker, code);
        }
    }

    private static String writes(Path file) {
        return "java.nio.file.Files.writeString(java.nio.file.Path.of(\"%s\"), \"x\"); double n = 1;"
                .formatted(file);
    }

    private static Path beside() throws IOException {
        return Files.createDirectories(Path.of("target", "confined")).toRealPath();
    }

    @Test
    void aFakeThatHoldsNothingLetsTheWorkerWork() throws Exception {
        Path program = FakeBubblewrap.in(folder, FakeBubblewrap.HOLDS_NOTHING);
        assertEquals(2, realAt(run(Optional.of(new Bubblewrap(program)), "double a = 2;"), 10));
        String options = Files.readString(Path.of(program + ".options"));
        assertTrue(options.contains("--bind " + ProgramFiles.compiled().toRealPath()), options);
        assertTrue(options.matches("(?s).*--bind \\S*halfwidth-\\S*\\.step .*"), options);
    }

    @Test
    void itOutlivesTheThreadThatStartedIt() throws Exception {
        for (Optional<Bubblewrap> confined : withAndWithout()) {
            AtomicReference<Worker> started = new AtomicReference<>();
            Thread thread = new Thread(() -> started.set(worker(confined)));
            thread.start();
            thread.join();
            try (Worker worker = started.get()) {
                Thread.sleep(300);
                assertEquals(2, realAt(run(worker, "double a = 2;"), 10));
            }
        }
    }

    private static List<Optional<Bubblewrap>> withAndWithout() {
        Optional<Bubblewrap> real = FakeBubblewrap.realOne();
        return real.isPresent() ? List.of(Optional.empty(), real) : List.of(Optional.empty());
    }

    @Test
    void nothingIsWritten() throws Exception {
        Path own = beside().resolve("harm");
        Path temporary = Path.of("/tmp/halfwidth-harm-" + ProcessHandle.current().pid());
        for (Path file : List.of(own, temporary)) {
            for (Optional<Bubblewrap> confined : withAndWithout()) {
                run(confined, writes(file));
                assertEquals(confined.isEmpty(), Files.deleteIfExists(file), file.toString());
            }
        }
    }

    @Test
    void noNetworkIsReached() throws Exception {
        try (ServerSocket server = new ServerSocket(0, 5, InetAddress.getLoopbackAddress())) {
            String connects =
                    "double n = new java.net.Socket(\"127.0.0.1\", %s).getPort();"
                            .formatted(server.getLocalPort());
            for (Optional<Bubblewrap> confined : withAndWithout()) {
                Outcome outcome = at(run(confined, connects), 10);
                if (confined.isPresent()) {
                    assertInstanceOf(Outcome.Failed.class, outcome);
                } else {
                    assertInstanceOf(Outcome.Done.class, outcome);
                }
            }
        }
    }

    @Test
    void noOtherProcessIsSeen() throws Exception {
        String sees =
                "double seen = ProcessHandle.of(%s).map(p -> 1.0).orElse(0.0);"
                        .formatted(ProcessHandle.current().pid());
        for (Optional<Bubblewrap> confined : withAndWithout()) {
            // Where it is no other's number by chance; in there are two processes or three.
            assertEquals(confined.isEmpty() ? 1 : 0, realAt(run(confined, sees), 10));
        }
    }

    @Test
    void theStepAndTheExitStatusAreKnown() {
        for (Optional<Bubblewrap> confined : withAndWithout()) {
            WorkerLost lost =
                    assertThrows(
                            WorkerLost.class,
                            () -> run(confined, "double a = 1;\nRuntime.getRuntime().halt(7);"));
            assertEquals(1, lost.statement());
            assertTrue(lost.reason().contains("step ended"), lost.reason());
            assertTrue(lost.reason().contains("exit status 7"), lost.reason());
        }
    }

    @Test
    void compiledPagesAreKept() throws Exception {
        for (Optional<Bubblewrap> confined : withAndWithout()) {
            Set<Path> before = kept();
            run(confined, "double a = " + System.nanoTime() + ".0;");
            Set<Path> more = kept();
            more.removeAll(before);
            assertFalse(more.isEmpty(), "by " + confined);
            for (Path file : more) {
                Files.deleteIfExists(file);
            }
        }
    }

    private static Set<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(Files.createDirectories(ProgramFiles.compiled()))) {
            return new HashSet<>(files.toList());
        }
    }

    private static Set<ProcessHandle> descendants() {
        return ProcessHandle.current().descendants().collect(Collectors.toSet());
    }

    @Test
    void allOfItEndsWithItsFirstProcess() throws Exception {
        for (Optional<Bubblewrap> confined : withAndWithout()) {
            for (boolean onlyTheFirst : List.of(true, false)) {
                Set<ProcessHandle> before = descendants();
                try (Worker worker = worker(confined)) {
                    run(worker, "double a = 1;");
                    Set<ProcessHandle> its = descendants();
                    its.removeAll(before);
                    assertTrue(confined.isEmpty() || its.size() > 1, "a JVM within: " + its);
                    if (onlyTheFirst) {
                        ProcessHandle.current()
                                .children()
                                .filter(its::contains)
                                .forEach(ProcessHandle::destroyForcibly);
                    } else {
                        worker.end();
                    }
                    for (ProcessHandle one : its) {
                        one.onExit().get(10, TimeUnit.SECONDS);
                    }
                }
            }
        }
    }
}
