package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A record made on one Java verifies on this one: on each that is installed beside it, and on the
 * one named by {@code -Dhalfwidth.otherJava}, which has to be there.
 */
class OtherJavaTest {
    @TempDir Path temporary;

    private static List<Path> installed() throws IOException {
        Path home = Path.of(System.getProperty("java.home")).toRealPath();
        try (Stream<Path> beside = Files.list(home.getParent())) {
            return Stream.of(Stream.of(home), beside.filter(OtherJavaTest::runs), promised(home))
                    .flatMap(javas -> javas)
                    .map(OtherJavaTest::real)
                    .distinct()
                    .toList();
        }
    }

    /** Without it, a search that finds no other Java would pass unseen. */
    private static Stream<Path> promised(Path home) {
        String named = System.getProperty("halfwidth.otherJava");
        if (named == null) {
            return Stream.empty();
        }
        Path other = Path.of(named);
        assertTrue(runs(other), "-Dhalfwidth.otherJava=" + other + ": no Java is there");
        assertNotEquals(home, real(other), "-Dhalfwidth.otherJava: is the one that runs the tests");
        return Stream.of(other);
    }

    private static boolean runs(Path java) {
        return Files.exists(java.resolve("lib/modules"));
    }

    private static Path real(Path java) {
        try {
            return java.toRealPath();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void verifiesARecordMadeOnAnotherJava() throws Exception {
        Scratch scratch = Scratch.within(temporary);
        // Functions whose last digits a JVM may compute in its own way.
        scratch.file(
                "notebooks/trial/sines.md",
                "# Sines",
                "",
                "```csv inputs",
                "name,unit,kind,example,label",
                "length,mm,number,5,Length",
                "```",
                "",
                "```java",
                "double wave = 0;",
                "for (int i = 1; i < 500; i++) wave += sin(i * length) * exp(-i / 99.0) * pow(i, 0.3);",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "wave,1,9,Wave",
                "```");
        for (Path java : installed()) {
            String job = "job-" + java.getFileName();
            scratch.file(job + "/job.csv", "name,value", "Station,North Field");
            int made =
                    new ProcessBuilder(
                                    java.resolve("bin/java").toString(),
                                    "-cp",
                                    System.getProperty("java.class.path"),
                                    "halfwidth.Main",
                                    "run",
                                    "trial/sines",
                                    "--set",
                                    "length=5",
                                    "--seconds",
                                    "120",
                                    "--record",
                                    "--job",
                                    scratch.path(job),
                                    "--notebooks",
                                    scratch.path("notebooks"))
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .redirectError(ProcessBuilder.Redirect.INHERIT)
                            .start()
                            .waitFor();
            assertEquals(0, made, "on " + java);
            Program verified =
                    Program.here(
                            "verify",
                            "--seconds",
                            "120",
                            "--notebooks",
                            scratch.path("notebooks"),
                            record(scratch, job));
            assertEquals(0, verified.status(), verified.out() + verified.err());
            assertTrue(verified.out().contains("all 1 results equal"), verified.out());
        }
    }

    private static String record(Scratch scratch, String job) throws IOException {
        try (Stream<Path> files = Files.list(scratch.folder().resolve(job + "/records"))) {
            return files.map(Path::toString)
                    .filter(file -> file.endsWith(".html"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
