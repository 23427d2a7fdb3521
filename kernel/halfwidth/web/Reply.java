package halfwidth.web;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * What is sent back. Every reply carries the headers that keep other sites out and nothing in a
 * cache.
 *
 * @param headers others than those
 */
record Reply(int status, String type, byte[] body, Map<String, String> headers) {
    private static final String NOTHING_BUT_OURS =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self';"
                    + " connect-src 'self'; form-action 'self'; base-uri 'none';"
                    + " frame-ancestors 'none'";
    private static final String POLICY = "Content-Security-Policy";
    private static final Map<String, String> ALWAYS =
            Map.of(
                    POLICY,
                    NOTHING_BUT_OURS,
                    "X-Content-Type-Options",
                    "nosniff",
                    "X-Frame-Options",
                    "DENY",
                    "Referrer-Policy",
                    // With none at all a form that the browser sends by itself has no origin.
                    "same-origin",
                    "Cross-Origin-Opener-Policy",
                    "same-origin",
                    "Cross-Origin-Resource-Policy",
                    "same-origin",
                    "Cache-Control",
                    "no-store");

    private static Reply of(int status, String type, byte[] body) {
        return new Reply(status, type, body, Map.of());
    }

    static Reply html(int status, String markup) {
        return of(status, "text/html; charset=utf-8", bytes(markup));
    }

    static Reply html(String markup) {
        return html(200, markup);
    }

    static Reply text(int status, String text) {
        return of(status, "text/plain; charset=utf-8", bytes(text));
    }

    static Reply of(String type, byte[] body) {
        return of(200, type, body);
    }

    /** There is nothing new to tell. */
    static Reply nothing() {
        return of(204, "", new byte[0]);
    }

    static Reply goTo(String path) {
        return text(303, "").with("Location", path);
    }

    /** A file to keep. */
    static Reply file(String name, String type, byte[] body) {
        String plain = name.replaceAll("[^A-Za-z0-9._-]", "-");
        return of(type, body).with("Content-Disposition", "attachment; filename=\"" + plain + "\"");
    }

    Reply with(String header, String value) {
        Map<String, String> all = new TreeMap<>(headers);
        all.put(header, value);
        return new Reply(status, type, body, all);
    }

    /** The same, for a page that has a policy of its own. */
    Reply withPolicy(String policy) {
        return with(POLICY, policy + "; base-uri 'none'; frame-ancestors 'none'");
    }

    void send(HttpExchange exchange) throws IOException {
        Headers out = exchange.getResponseHeaders();
        ALWAYS.forEach(out::set);
        if (!type.isEmpty()) {
            out.set("Content-Type", type);
        }
        headers.forEach(out::set);
        boolean empty = body.length == 0 || exchange.getRequestMethod().equals("HEAD");
        exchange.sendResponseHeaders(status, empty ? -1 : body.length);
        if (!empty) {
            exchange.getResponseBody().write(body);
        }
        exchange.close();
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
