package halfwidth.web;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Speaks HTTP over a bare socket, so that a check can send what no browser would. */
final class Wire {
    private final int port;
    private final Map<String, String> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    private String root = "";

    private Wire(int port) {
        this.port = port;
        headers.put("Host", "127.0.0.1:" + port);
        headers.put("Connection", "close");
    }

    /** Somebody who has no pass. */
    static Wire stranger(int port) {
        return new Wire(port);
    }

    /** A browser that was let in, asking from a page of ours. */
    static Wire friend(Served served) {
        Wire wire = new Wire(served.port());
        String entered = wire.get(path(served.key()));
        wire.root = served.root();
        String cookie = entered.replaceAll("(?is).*set-cookie: ([^;]*);.*", "$1");
        return wire.with("Cookie", cookie)
                .with("Origin", "http://127.0.0.1:" + served.port())
                .with("Sec-Fetch-Site", "same-origin");
    }

    /** The path of an address. */
    static String path(String address) {
        return java.net.URI.create(address).getPath();
    }

    String header(String name) {
        return headers.get(name);
    }

    Wire with(String header, String value) {
        headers.put(header, value);
        return this;
    }

    Wire without(String header) {
        headers.remove(header);
        return this;
    }

    String get(String path) {
        return ask("GET", path, "");
    }

    String post(String path, String form) {
        return ask("POST", path, form);
    }

    /**
     * Asks, and returns the whole answer with its headers. A friend's addresses, there and back,
     * are those below the session's own path.
     */
    String ask(String method, String path, String form) {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            byte[] body = form.getBytes(StandardCharsets.UTF_8);
            StringBuilder head = new StringBuilder(method + " " + root + path + " HTTP/1.1\r\n");
            headers.forEach((name, value) -> head.append(name + ": " + value + "\r\n"));
            head.append("Content-Length: " + body.length + "\r\n\r\n");
            OutputStream out = socket.getOutputStream();
            out.write(head.toString().getBytes(StandardCharsets.UTF_8));
            out.write(body);
            out.flush();
            String answer =
                    new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return root.isEmpty() ? answer : answer.replace(root, "");
        } catch (IOException e) {
            return "no answer: " + e;
        }
    }

    static int status(String answer) {
        return Integer.parseInt(answer.split(" ", 3)[1]);
    }
}
