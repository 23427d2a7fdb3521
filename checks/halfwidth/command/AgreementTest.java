package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A page of a job that says in its heading that it leaves the bounds: it does so only once somebody
 * agreed to this text, in this folder, for this account; and whatever came of it says so.
 */
@Tag("long")
class AgreementTest {
    private static final String ASKS = "Reads the monitor's log beside the job.";
    private static final String REFUSED = "Not allowed on a page: java.nio.file.Path.of";

    @TempDir Path temporary;
    private Scratch scratch;
    private Path harm;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        harm = scratch.folder().resolve("harm");
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/other", "double same = length; // mm", "assert twice == 10 : \"x\";");
        page("job", "");
    }

    private void page(String job, String more) {
        String file = harm.toString().replace('\\', '/');
        scratch.file(
                job + "/pages/trial/log.md",
                "# Log",
                "",
                "Reads a log." + more,
                "",
                "> **Outside the bounds.** " + ASKS,
                "",
                "```csv inputs",
                "name,unit,kind,example,default,least,most,label",
                "length,mm,number,5,,0,100,Length",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "twice,mm,1,Twice",
                "```",
                "",
                "```java",
                "double twice = 2 * length; // mm",
                "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + file + "\"), \"x\");",
                "```");
    }

    private Program program(String home, String job, String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        if (!arguments[0].equals("verify")) {
            all.addAll(
                    List.of("--job", scratch.path(job), "--notebooks", scratch.path("notebooks")));
        }
        return Program.in(
                Program.PROJECT,
                List.of("-Duser.home=" + scratch.path(home)),
                all.toArray(String[]::new));
    }

    private Program run(String home, String job, String... more) {
        List<String> all =
                new ArrayList<>(
                        List.of("run", "trial/log", "--set", "length=5", "--seconds", "300"));
        all.addAll(List.of(more));
        return program(home, job, all.toArray(String[]::new));
    }

    private void agree() {
        Program agreed = program("home", "job", "agree", "trial/log", "--name", "A. Example");
        Expect.status(0, agreed);
        Expect.said(agreed, "A. Example agreed on", ASKS);
    }

    private void staysWithin(Program program) {
        Expect.status(1, program);
        Expect.complained(program, REFUSED, "asks to leave the bounds", ASKS);
        Expect.said(program, "10.0");
        assertFalse(Files.exists(harm));
    }

    @Test
    void staysWithinItsBoundsUntilSomebodyAgreed() {
        staysWithin(run("home", "job"));
        agree();
        Program free = run("home", "job");
        Expect.status(0, free);
        Expect.said(free, "A. Example agreed on", "leaves the bounds of page code", ASKS);
        assertTrue(Files.exists(harm));
    }

    @Test
    void agreementIsForOneTextOneFolderAndOneAccount() throws IOException {
        agree();
        copy("job", "copied");
        staysWithin(run("home", "copied"));
        staysWithin(run("other-home", "job"));
        page("job", " Changed.");
        staysWithin(run("home", "job"));
        Program list = program("home", "job", "list");
        Expect.said(list, "A. Example agreed on", "not in force");
    }

    @Test
    void recordListAndVerifySaySoAndVerifyStaysWithinTheBounds() throws IOException {
        agree();
        Expect.status(0, run("home", "job", "--record"));
        Files.delete(harm);
        Path record;
        try (Stream<Path> files = Files.list(scratch.folder().resolve("job/records"))) {
            record = files.filter(f -> f.toString().endsWith(".html")).findFirst().orElseThrow();
        }
        assertTrue(Files.readString(record).contains("A. Example agreed on"));
        Program list = program("home", "job", "list");
        Expect.said(list, "A. Example agreed on");
        assertFalse(list.out().contains("not in force"), list.out());
        Program verified =
                program(
                        "home",
                        "job",
                        "verify",
                        "--run-its-code",
                        "--seconds",
                        "300",
                        record.toString());
        Expect.said(
                verified,
                "step at line",
                "ran OUTSIDE the bounds of page code",
                "A. Example agreed on");
        assertFalse(Files.exists(harm));
    }

    @Test
    void onlyAPageThatAsksAndIsTheJobsOwnCanBeAgreedTo() {
        Program shipped = program("home", "job", "agree", "trial/other", "--name", "A. Example");
        Expect.status(1, shipped);
        Expect.complained(shipped, "is not the job's own page");
        scratch.page("trial/plain", "double same = length; // mm", "assert twice == 10 : \"x\";");
        scratch.file("job/pages/trial/plain.md", scratch.text("notebooks/trial/plain.md"));
        Program plain = program("home", "job", "agree", "trial/plain", "--name", "A. Example");
        Expect.status(1, plain);
        Expect.complained(plain, "does not say in its heading");
    }

    private void copy(String from, String to) throws IOException {
        Path source = scratch.folder().resolve(from);
        try (Stream<Path> all = Files.walk(source)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Path target = scratch.folder().resolve(to).resolve(source.relativize(file));
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }
}
