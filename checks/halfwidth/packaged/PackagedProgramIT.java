package halfwidth.packaged;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The program as it is carried to a site, and its sheet as Chromium shows and prints it. */
class PackagedProgramIT {
    private static final Path JAR = Path.of("target/halfwidth.jar").toAbsolutePath();

    @TempDir static Path folder;

    private static String printed;

    @BeforeAll
    static void run() throws Exception {
        printed = run("transmit/feed-trim", folder);
    }

    private static String run(String page, Path out) throws Exception {
        return start(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString(),
                "run",
                page,
                "--out",
                out.toString());
    }

    /**
     * Runs a command in an empty folder, and returns what it prints; it must end with status 0, or
     * 3 where a limit is not met.
     */
    private static String start(String... command) throws Exception {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Path out = Files.createTempFile(folder, "out", ".txt");
        Path err = Files.createTempFile(folder, "err", ".txt");
        Process process =
                new ProcessBuilder(command)
                        .directory(elsewhere.toFile())
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start();
        assertTrue(process.waitFor(180, TimeUnit.SECONDS), "ended in time");
        assertTrue(Set.of(0, 3).contains(process.exitValue()), () -> read(err));
        return read(out);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String chromium(String... arguments) throws Exception {
        return start(Chromium.command(folder, arguments).toArray(String[]::new));
    }

    @Test
    void runsFromAnotherFolder() {
        assertTrue(printed.contains("WORKED EXAMPLE"), printed);
        assertTrue(printed.contains("CSB"), printed);
    }

    @Test
    void keepsCompiledPagesAndAWorkerArchiveBesideTheJar() throws IOException {
        try (var files = Files.list(JAR.resolveSibling("compiled"))) {
            assertTrue(files.findAny().isPresent());
        }
        String archive = "worker-" + System.getProperty("java.vm.version") + ".jsa";
        assertTrue(Files.isRegularFile(JAR.resolveSibling(archive)), archive);
    }

    @Test
    void opensTheDemoStationToWhoHasTheAddress() throws Exception {
        Path out = Files.createTempFile(folder, "open", ".txt");
        Process open =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-jar",
                                JAR.toString(),
                                "open",
                                "--no-browser",
                                "--notebooks",
                                Path.of("notebooks").toAbsolutePath().toString())
                        .directory(folder.toFile())
                        .redirectOutput(out.toFile())
                        .redirectErrorStream(true)
                        .start();
        try {
            Pattern address = Pattern.compile("http://127\\.0\\.0\\.1:\\d+/key/\\w+");
            for (int i = 0; i < 600 && !address.matcher(read(out)).find(); i++) {
                Thread.sleep(100);
            }
            Matcher found = address.matcher(read(out));
            assertTrue(found.find(), () -> read(out));
            HttpClient browser =
                    HttpClient.newBuilder()
                            .cookieHandler(new CookieManager())
                            .followRedirects(HttpClient.Redirect.ALWAYS)
                            .build();
            HttpRequest request = HttpRequest.newBuilder(URI.create(found.group())).build();
            String list = browser.send(request, HttpResponse.BodyHandlers.ofString()).body();
            assertTrue(list.contains("Varnholt Heath (invented)"), list);
            assertTrue(list.contains("course-2"), "visits of the season are listed");
        } finally {
            open.destroy();
            assertTrue(open.waitFor(60, TimeUnit.SECONDS), "Ctrl-C ends it");
        }
    }

    /** The longest pages there are among them, so that nobody's record becomes a booklet. */
    @ParameterizedTest
    @CsvSource({"transmit/feed-trim, 4", "array/prediction, 8", "sweep/ground-check, 8"})
    void sheetPrintsToAFewPages(String page, int most) throws Exception {
        Path out = folder.resolve(page);
        run(page, out);
        Path pdf = out.resolve("sheet.pdf");
        chromium(
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                out.resolve("page.html").toUri().toString());
        Matcher pages =
                Pattern.compile("/Type\\s*/Page[^s]")
                        .matcher(Files.readString(pdf, StandardCharsets.ISO_8859_1));
        long count = pages.results().count();
        assertTrue(count >= 1 && count <= most, count + " pages");
    }

    @ParameterizedTest
    @ValueSource(strings = {"page.html", "review.html"})
    void sheetFitsAPhoneAndAWideScreen(String file) throws Exception {
        for (int width : new int[] {360, 1920}) {
            Path frame = folder.resolve("frame" + width + file);
            Files.writeString(frame, framed(file, width));
            String dom = chromium("--dump-dom", frame.toUri().toString());
            Matcher measured = Pattern.compile("<title>(\\d+)</title>").matcher(dom);
            assertTrue(measured.find(), dom);
            assertTrue(
                    Integer.parseInt(measured.group(1)) <= width,
                    "at " + width + " px " + file + " is " + measured.group(1) + " px wide");
        }
        assertFalse(read(folder.resolve(file)).contains("<script"));
    }

    /** A page that shows the sheet in a frame of a width and says how wide its content is. */
    private static String framed(String file, int width) {
        String sheet = read(folder.resolve(file)).replace("&", "&amp;").replace("\"", "&quot;");
        return """
            <!doctype html><title>none</title>
            <iframe style="width:%spx;height:2000px;border:0" srcdoc="%s" onload="
              document.title = this.contentDocument.documentElement.scrollWidth"></iframe>
            """
                .formatted(width, sheet);
    }
}
