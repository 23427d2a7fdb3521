package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import halfwidth.packaged.Chromium;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The field for a step in Chromium, under the policy that the screen is served with. */
class EditorIT {
    private static final String PAGE =
            """
            <!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>Step</title>
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <link rel="stylesheet" href="editor.css"><script type="module" src="check.js"></script>
            <label for="step">Step at line 12</label>
            <textarea id="step">// The phase constant by the data sheet
            double phaseConstantOf(double frequency, double velocityFactor) {
                return 360 * frequency / (halfWave * velocityFactor);
            }
            String word = "CSB"; // the feed</textarea>
            </html>
            """;
    private static final Map<String, String> TYPES =
            Map.of("css", "text/css", "js", "text/javascript", "html", "text/html");

    @TempDir static Path folder;

    private static HttpServer server;

    @BeforeAll
    static void serve() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", EditorIT::answer);
        server.start();
    }

    @AfterAll
    static void stop() {
        server.stop(0);
    }

    private static void answer(HttpExchange exchange) throws IOException {
        String name = exchange.getRequestURI().getPath().substring(1);
        byte[] body =
                name.equals("page.html")
                        ? PAGE.getBytes(StandardCharsets.UTF_8)
                        : resource(name.equals("check.js") ? "editor-check.js" : name);
        String type = TYPES.getOrDefault(name.replaceFirst(".*\\.", ""), "text/plain");
        exchange.getResponseHeaders().add("Content-Type", type + "; charset=utf-8");
        exchange.getResponseHeaders()
                .add(
                        "Content-Security-Policy",
                        "default-src 'none'; script-src 'self'; style-src 'self'");
        exchange.sendResponseHeaders(
                body.length == 0 ? 404 : 200, body.length == 0 ? -1 : body.length);
        exchange.getResponseBody().write(body);
        exchange.close();
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = EditorIT.class.getResourceAsStream(name)) {
            return in == null ? new byte[0] : in.readAllBytes();
        }
    }

    private static String dom(int width) throws Exception {
        Path out = Files.createTempFile(folder, "dom", ".html");
        Process chromium =
                new ProcessBuilder(
                                Chromium.command(
                                        folder,
                                        "--window-size=" + width + ",800",
                                        "--virtual-time-budget=5000",
                                        "--dump-dom",
                                        "http://127.0.0.1:"
                                                + server.getAddress().getPort()
                                                + "/page.html"))
                        .redirectOutput(out.toFile())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        assertTrue(chromium.waitFor(120, TimeUnit.SECONDS), "ended in time");
        return Files.readString(out);
    }

    @ParameterizedTest
    @ValueSource(ints = {500, 1100})
    void doesWhatItsChecksSay(int width) throws Exception {
        String dom = dom(width);
        Matcher output =
                Pattern.compile("<output[^>]*>(.*?)</output>", Pattern.DOTALL).matcher(dom);
        assertTrue(output.find(), dom);
        List<String> lines = output.group(1).lines().toList();
        assertEquals("end", lines.get(lines.size() - 1), "every check was reached");
        assertEquals(List.of(), lines.stream().filter(l -> l.startsWith("WRONG")).toList());
        assertTrue(lines.size() > 40, lines.size() + " checks");
    }
}
