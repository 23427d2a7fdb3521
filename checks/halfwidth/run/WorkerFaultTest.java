package halfwidth.run;

import static halfwidth.run.Bench.failureAt;
import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static halfwidth.run.Bench.values;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/**
 * A page that misbehaves is ended at its limit, with a message at the step that did it; its other
 * steps, the other pages and the next run go on. Most of this takes a page that was freed of its
 * bounds.
 */
@Timeout(240)
class WorkerFaultTest {
    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = new Bench(Bench.SHORT);
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    /** Runs a page of three steps whose middle one is at fault, and returns what is said of it. */
    private static Outcome.Failed fault(String code) {
        Run run =
                bench.runUnbounded(
                        "double before = 1;\n" + code.replace("\n", " ") + "\ndouble after = 2;");
        assertEquals(1, realAt(run, 10));
        assertEquals(2, realAt(run, 12));
        assertEquals(11, failureAt(run, 11).line());
        return failureAt(run, 11);
    }

    private static void assertSays(String words, Outcome.Failed failed) {
        assertTrue(failed.reason().contains(words), failed.toString());
    }

    @Test
    void endlessLoopEndsAtTheTimeLimit() {
        Outcome.Failed failed = fault("while (true) { before += 1; }");
        assertSays("longer than its limit of 3 s", failed);
        assertSays("still computing", failed);
    }

    @Test
    void endlessLoopThatCatchesEverythingEndsToo() {
        assertSays(
                "longer than its limit",
                fault("while (true) { try { Thread.sleep(1000); } catch (Throwable t) { } }"));
    }

    @Test
    void deadLockIsNamed() {
        Outcome.Failed failed =
                fault(
                        """
                        { Object a = new Object(); Object b = new Object();
                        var latch = new java.util.concurrent.CountDownLatch(2);
                        Thread other = new Thread(() -> { synchronized (b) { latch.countDown();
                            try { latch.await(); } catch (InterruptedException e) { }
                            synchronized (a) { } } });
                        other.start();
                        synchronized (a) { latch.countDown(); latch.await(); synchronized (b) { } } }
                        """);
        assertSays("dead lock", failed);
    }

    @Test
    void exhaustedMemoryIsNamed() {
        Outcome.Failed failed =
                fault(
                        "{ List<long[]> all = new ArrayList<>(); while (true) all.add(new long[1 <<"
                                + " 20]); }");
        assertSays("more memory than the page may use", failed);
    }

    @Test
    void endlessRecursionIsNamed() {
        Run run = bench.run("int f(int n) { return f(n + 1) + 1; }\nint a = f(0);\ndouble b = 2;");
        assertSays("calls itself without end", failureAt(run, 11));
        assertEquals(2, realAt(run, 12));
    }

    @Test
    void exitEndsOnlyTheStep() {
        assertSays("ended the Java process", fault("System.exit(7);"));
        assertSays("exit status 7", fault("Runtime.getRuntime().halt(7);"));
    }

    @Test
    void floodOfOutputEndsAtItsLimit() {
        Outcome.Failed failed = fault("while (true) System.out.println(\"a line of no use\");");
        assertSays("more than 20000 bytes", failed);
    }

    @Test
    void threadLeftBehindIsNamed() {
        Outcome.Failed failed =
                fault(
                        """
                        new Thread(() -> { try { Thread.sleep(60000); } catch (InterruptedException e) { } },
                            "pump").start();
                        """);
        assertSays("left a thread running: pump", failed);
    }

    @Test
    void pageThatWritesIntoThePipeIsEnded() {
        Outcome.Failed failed =
                fault(
                        "{ var raw = new java.io.FileOutputStream(java.io.FileDescriptor.out);"
                                + " raw.write(new byte[5000]); raw.flush(); Thread.sleep(1000); }");
        assertSays("ended the Java process", failed);
    }

    @Test
    void nextRunOfTheSamePageIsWhole() {
        Script script = page(List.of("n"), "double a = n;\nwhile (a > 5) { }\ndouble b = n + 1;");
        try (OpenPage page = bench.open(script)) {
            assertEquals(3, realAt(page.run(values("n", 2.0)), 12));
            assertSays("longer than its limit", failureAt(page.run(values("n", 9.0)), 11));
            Run again = page.run(values("n", 3.0));
            assertEquals(4, realAt(again, 12));
            assertTrue(again.steps().stream().allMatch(r -> r.outcome() instanceof Outcome.Done));
        }
    }

    @Test
    void otherPageIsUntouched() {
        try (OpenPage good = bench.open(page(List.of("n"), "double a = 2 * n;"))) {
            assertEquals(4, realAt(good.run(values("n", 2.0)), 10));
            fault("System.exit(1);");
            assertEquals(6, realAt(good.run(values("n", 3.0)), 10));
        }
    }

    @Test
    void severalRunawayStepsAreEachNamed() {
        Run run =
                bench.runUnbounded(
                        "while (true) { }\ndouble a = 1;\nSystem.exit(3);\ndouble b = 2;");
        assertSays("longer than its limit", failureAt(run, 10));
        assertSays("exit status 3", failureAt(run, 12));
        assertEquals(2, realAt(run, 13));
    }

    @Test
    void processThatAnUnboundedPageStartedEndsWithItsWorker() throws Exception {
        Script script =
                page(
                        List.of(),
                        "double started = new ProcessBuilder(System.getProperty(\"java.home\") +"
                                + " \"/bin/java\", \"-cp\", System.getProperty(\"java.class.path\"),"
                                + " \"halfwidth.run.WorkerFaultTest$Sleeper\").start().pid();");
        ProcessHandle child;
        try (OpenPage open = bench.openUnbounded(script)) {
            child = ProcessHandle.of((long) realAt(open.run(values()), 10)).orElseThrow();
            assertTrue(child.isAlive());
            open.stop(); // no step runs, so this changes nothing
            assertTrue(child.isAlive());
        }
        bench.close();
        bench = new Bench(Bench.SHORT);
        child.onExit().get(10, TimeUnit.SECONDS);
    }

    /** A process that does not end by itself soon. */
    static final class Sleeper {
        public static void main(String[] arguments) throws Exception {
            Thread.sleep(120_000);
        }
    }

    @Test
    void workerEndsWithThePipe() throws Exception {
        Process program =
                new ProcessBuilder(
                                System.getProperty("java.home") + "/bin/java",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Orphan.class.getName())
                        .redirectErrorStream(true)
                        .start();
        assertEquals('r', program.getInputStream().read(), "the program is in its endless page");
        List<ProcessHandle> workers = program.descendants().toList();
        assertTrue(workers.stream().anyMatch(ProcessHandle::isAlive), "a worker runs");
        program.destroyForcibly().waitFor();
        for (ProcessHandle worker : workers) {
            worker.onExit().get(10, TimeUnit.SECONDS); // no worker outlives its program
        }
    }

    /** A program that is killed while a page loops. */
    static final class Orphan {
        public static void main(String[] arguments) throws Exception {
            try (Bench bench = new Bench(Budget.USUAL)) {
                try (OpenPage page = bench.open(page(List.of(), "double a = 1;"))) {
                    page.run(values());
                }
                new Thread(() -> bench.run("while (true) { }")).start();
                Thread.sleep(1500);
                System.out.print('r');
                System.out.flush();
                Thread.sleep(60_000);
            }
        }
    }
}
