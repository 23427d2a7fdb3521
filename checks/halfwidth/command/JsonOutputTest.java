package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What commands write with --json is one object, of the members that the README lists. */
@Tag("long")
class JsonOutputTest {
    private static final ObjectMapper READER =
            new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North \"Field\" é");
        scratch.page("trial/first", "double same = length; // mm", "assert twice == 10 : \"x\";");
    }

    private Program run(String... arguments) {
        return Program.here(
                Stream.concat(
                                Stream.of(arguments),
                                Stream.of("--json", "--notebooks", scratch.path("notebooks")))
                        .toArray(String[]::new));
    }

    private static JsonNode read(String object, int status, Program program) throws IOException {
        assertEquals(status, program.status(), program::toString);
        JsonNode json = READER.readTree(program.out());
        JsonMembers.hold(object, json);
        assertEquals("halfwidth " + object + " 1", json.get("format").asText());
        assertEquals(status, json.get("status").intValue());
        return json;
    }

    @Test
    void aRun() throws IOException {
        Program program = run("run", "trial/first");
        JsonNode json = read("run", 0, program);
        assertEquals("worked example", json.get("values").asText());
        JsonNode twice = json.get("results").get(0);
        assertEquals(10.0, twice.get("value").doubleValue());
        assertEquals("mm", twice.get("unit").asText());
        assertEquals("met", twice.get("verdict").asText());
        assertTrue(twice.get("uncertainty").isNull());
    }

    /** u(2 x) = 2 u(x) (JCGM 100:2008, 5.1.2). */
    @Test
    void aRunInAJobWhoseLimitIsNotMet() throws IOException {
        JsonNode json =
                read(
                        "run",
                        3,
                        run(
                                "run",
                                "trial/first",
                                "--set",
                                "length=7.25 ± 0.1",
                                "--job",
                                scratch.path("job")));
        assertEquals("North \"Field\" é", json.get("heading").get("Station").asText());
        JsonNode twice = json.get("results").get(0);
        assertEquals(14.5, twice.get("value").doubleValue());
        assertEquals(0.2, twice.get("uncertainty").doubleValue(), 1e-9);
        assertEquals("not met", twice.get("verdict").asText());
        assertEquals("entered", json.get("values").asText());
    }

    @Test
    void aRunThatWaitsOrFails() throws IOException {
        JsonNode waits = read("run", 0, run("run", "trial/first", "--job", scratch.path("job")));
        assertEquals("length", waits.get("awaited").get(0).asText());
        assertTrue(waits.get("results").get(0).get("value").isNull());
        scratch.page(
                "trial/worse", "int none = 1 / (int) (length - 5);", "assert twice == 11 : \"s\";");
        JsonNode fails = read("run", 1, run("run", "trial/worse"));
        assertEquals(2, fails.get("faults").size(), fails::toString);
        assertTrue(fails.get("faults").get(0).get("code").asText().startsWith("int none"));
    }

    @Test
    void aBudgetIsNoPartOfIt() {
        Program both = run("run", "trial/first", "--budget");
        assertEquals(2, both.status());
        assertEquals("", both.out());
        Expect.complained(both, "leave out --budget");
    }

    @Test
    void nothingIsWrittenWhereNothingCouldBeDone() {
        Program none = run("run", "trial/none");
        assertEquals(1, none.status());
        assertEquals("", none.out());
    }

    @Test
    void aListAndAJob() throws IOException {
        scratch.file("notebooks/trial/zero.md", "# Zero");
        read(
                "run",
                0,
                run(
                        "run",
                        "trial/first",
                        "--set",
                        "length=5",
                        "--visit",
                        "June",
                        "--job",
                        scratch.path("job")));
        JsonNode json = read("list", 1, run("list", "--job", scratch.path("job")));
        assertEquals("trial/first", json.get("pages").get(0).get("page").asText());
        assertEquals("trial", json.get("pages").get(0).get("stage").asText());
        assertEquals("Trial", json.get("pages").get(0).get("title").asText());
        JsonNode visit = json.get("pages").get(0).get("visits").get(0);
        assertEquals("June", visit.get("visit").asText());
        assertEquals("met", visit.get("standing").asText());
        assertTrue(json.get("pages").get(1).get("title").isNull());
        assertFalse(json.get("pages").get(1).get("malformed").isEmpty());
    }

    @Test
    void aCheck() throws IOException {
        JsonNode sound = read("check", 0, run("check"));
        assertTrue(sound.get("pages").get(0).get("holds").booleanValue());
        assertEquals(2, sound.get("pages").get(0).get("steps").intValue());
        scratch.page("trial/worse", "double same = length; // mm", "assert twice == 11 : \"s\";");
        scratch.file("notebooks/trial/zero.md", "# Zero");
        JsonNode json = read("check", 1, run("check"));
        List<Boolean> holds =
                json.get("pages").findValues("holds").stream().map(JsonNode::booleanValue).toList();
        assertEquals(List.of(true, false, false), holds);
        assertEquals(1, json.get("pages").get(1).get("faults").size());
    }

    @Test
    void recordsThatAreVerified() throws IOException {
        run("run", "trial/first", "--set", "length=7", "--record", "--job", scratch.path("job"));
        Path record;
        try (Stream<Path> files = Files.list(scratch.folder().resolve("job/records"))) {
            record = files.filter(file -> file.toString().endsWith(".html")).findFirst().get();
        }
        Program.here(
                "sign",
                record.toString(),
                "--name",
                "P. Example",
                "--as",
                "prepared",
                "--notebooks",
                scratch.path("notebooks"));
        JsonNode json = read("verify", 0, run("verify", record.toString()));
        JsonNode whole = json.get("records").get(0);
        assertTrue(whole.get("holds").booleanValue());
        assertTrue(whole.get("again").get("unchanged").booleanValue());
        assertTrue(whole.get("not run").isEmpty());
        assertEquals("same", whole.get("again").get("sheet").asText());
        assertEquals("trial/first", whole.get("again").get("page").asText());
        assertEquals(1, whole.get("again").get("limits not met").size());
        assertEquals("P. Example", whole.get("job").get("signatures").get(0).get("by").asText());
        assertFalse(whole.get("job").get("signatures").get(0).get("changed since").booleanValue());

        Path changed = scratch.folder().resolve("changed.html");
        Files.writeString(changed, Files.readString(record).replace("North", "South"));
        Path none = scratch.file("none.html", "<html/>");
        JsonNode two = read("verify", 1, run("verify", changed.toString(), none.toString()));
        JsonNode altered = two.get("records").get(0);
        assertFalse(altered.get("holds").booleanValue());
        assertTrue(altered.get("again").isNull(), "nothing of it runs");
        assertEquals("its seal is broken", altered.get("not run").get(0).asText());
        assertTrue(altered.get("job").isNull(), "it lies in no job");
        JsonNode other = two.get("records").get(1);
        assertTrue(other.get("again").isNull());
        assertTrue(other.get("refused").asText().contains("is no record"));
    }
}
