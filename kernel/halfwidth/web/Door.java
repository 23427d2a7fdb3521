package halfwidth.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Lets in the browser of the person who started the program, and nobody else: pages of other sites,
 * which that browser may also show, can reach this port, and so can other people on the machine.
 */
final class Door {
    private static final String ENTER = "/key/";

    /** What a browser says of a request that our own page made, or the person by hand. */
    private static final Set<String> OUR_SITES = Set.of("same-origin", "none");

    private final int port;
    private final List<String> hosts;
    private final String secret = random();
    private final String pass = random();

    Door(int port) {
        this.port = port;
        this.hosts = List.of("127.0.0.1:" + port, "localhost:" + port);
    }

    private static String random() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** The address to open, with the secret that gets in. */
    String address() {
        return "http://" + hosts.get(0) + ENTER + secret;
    }

    /**
     * Looks at a request before anything else does.
     *
     * @return a reply that gives the browser its pass; empty if it has one
     * @throws Refusal if it is not ours
     */
    Optional<Reply> check(Request request) {
        checkPlace(request);
        Optional<String> shown = request.behind(ENTER);
        if (shown.isPresent()) {
            return Optional.of(enter(request, shown.get()));
        }
        if (cookies(request).noneMatch(cookie -> same(cookie, name() + "=" + pass))) {
            throw new Refusal(
                    403,
                    "This address opens only with the key that the program prints when it"
                            + " starts. Open the address it printed.");
        }
        return Optional.empty();
    }

    /** Another site's name that leads here (DNS rebinding), or another site's page, is refused. */
    private void checkPlace(Request request) {
        String host = request.header("Host").orElse("");
        if (!hosts.contains(host)) {
            throw new Refusal(403, "This program answers at " + hosts.get(0) + " only.");
        }
        boolean ours =
                request.header("Origin")
                        .map(origin -> origin.equals("http://" + host))
                        .orElse(request.looks() && !request.has("Origin"));
        boolean oursToo =
                request.header("Sec-Fetch-Site")
                        .map(OUR_SITES::contains)
                        .orElse(!request.has("Sec-Fetch-Site"));
        if (!ours || !oursToo) {
            throw new Refusal(403, "Another site's page asked for this; it gets nothing.");
        }
    }

    private Reply enter(Request request, String shown) {
        if (!request.looks() || !same(shown, secret)) {
            throw new Refusal(
                    403,
                    "This key is not that of the running program: it has a new one each time it"
                            + " starts. Open the address it printed last.");
        }
        return Reply.goTo("/")
                .with("Set-Cookie", name() + "=" + pass + "; HttpOnly; SameSite=Strict; Path=/");
    }

    /** Cookies are shared between ports; another job's program has another port. */
    private String name() {
        return "halfwidth-" + port;
    }

    private static Stream<String> cookies(Request request) {
        return request.header("Cookie").stream()
                .flatMap(header -> Arrays.stream(header.split(";")))
                .map(String::strip);
    }

    /** Compares in a time that does not tell how much is right. */
    private static boolean same(String shown, String known) {
        return MessageDigest.isEqual(
                shown.getBytes(StandardCharsets.UTF_8), known.getBytes(StandardCharsets.UTF_8));
    }
}
