package halfwidth.web;

import com.sun.net.httpserver.HttpExchange;
import halfwidth.spreadsheet.SpreadsheetFile;
import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * What a browser asks for.
 *
 * @param path decoded, as in {@code /fill/transmit/feed-trim}
 * @param query what stands behind the question mark
 * @param form what was sent along
 */
record Request(HttpExchange exchange, String method, String path, Form query, Form form) {
    /** The largest file of readings, which a form makes longer by a half at most. */
    static final int MOST_BYTES = SpreadsheetFile.MOST_BYTES / 2 * 3;

    /** In milliseconds: what is sent on one machine is there by then. */
    private static final long SOON = 200;

    /**
     * Reads what heads a request; what was sent along is not read yet.
     *
     * @throws Refusal if its address is malformed
     */
    static Request head(HttpExchange exchange) {
        String query = exchange.getRequestURI().getRawQuery();
        return new Request(
                exchange,
                exchange.getRequestMethod(),
                decoded(exchange.getRequestURI().getRawPath()),
                Form.read(query == null ? "" : query),
                Form.read(""));
    }

    /**
     * Reads the request to its end.
     *
     * @throws Refusal if its body is too large or not to be read as a form
     */
    Request whole() throws IOException {
        return new Request(exchange, method, path, query, Form.read(body()));
    }

    private String body() throws IOException {
        byte[] bytes = exchange.getRequestBody().readNBytes(MOST_BYTES + 1);
        if (bytes.length > MOST_BYTES) {
            throw new Refusal(
                    413, "What was sent is too large; send at most " + MOST_BYTES + " bytes.");
        }
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /**
     * Takes in what was sent along with a refused request and is there by now: the answer would be
     * torn away with what is left over.
     */
    static void takeIn(HttpExchange exchange) {
        int rest = announced(exchange);
        InputStream body = exchange.getRequestBody();
        // On a thread of its own: what is there cannot be asked for, only waited for.
        Thread taking = new Thread(() -> take(body, rest), "refused request");
        taking.setDaemon(true);
        taking.start();
        try {
            taking.join(SOON);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void take(InputStream body, int length) {
        try {
            body.readNBytes(length);
        } catch (IOException gone) {
            // The answer says all there is to say.
        }
    }

    private static int announced(HttpExchange exchange) {
        String length = exchange.getRequestHeaders().getFirst("Content-Length");
        boolean known = length != null && length.matches("\\d{1,9}");
        return known ? Math.min(Integer.parseInt(length), 2 * MOST_BYTES) : 0;
    }

    private static String decoded(String path) {
        try {
            // A plus sign is a space in a form only.
            return URLDecoder.decode(path.replace("+", "%2B"), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException malformed) {
            throw new Refusal(400, "The address is malformed.");
        }
    }

    /** The only value of a header; empty if it is absent or there are several. */
    Optional<String> header(String name) {
        List<String> values = exchange.getRequestHeaders().get(name);
        return values == null || values.size() != 1 ? Optional.empty() : Optional.of(values.get(0));
    }

    boolean has(String header) {
        return exchange.getRequestHeaders().containsKey(header);
    }

    /** Whether it only looks and changes nothing. */
    boolean looks() {
        return method.equals("GET") || method.equals("HEAD");
    }

    /** The same with the path below a root that it is under. */
    Request below(String root) {
        return new Request(exchange, method, path.substring(root.length()), query, form);
    }

    /** The rest of a path behind a prefix; empty if the path does not start with it. */
    Optional<String> behind(String prefix) {
        return path.startsWith(prefix)
                ? Optional.of(path.substring(prefix.length()))
                : Optional.empty();
    }
}
