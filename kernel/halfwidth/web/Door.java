package halfwidth.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Lets in the browser of the person who started the program, and nobody else: pages of other sites,
 * which that browser may also show, can reach this port, and so can other people on the machine.
 */
final class Door {
    private static final String ENTER = "/key/";

    private static final String AGAIN =
            "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Halfwidth</title>"
                    + "<meta http-equiv=\"refresh\" content=\"0;url=%s/?again=\"></head>"
                    + "<body></body></html>";

    /** What a browser says of a request that our own page made, or the person by hand. */
    private static final Set<String> OUR_SITES = Set.of("same-origin", "none");

    private final int port;
    private final List<String> hosts;
    private final InstantSource clock;

    /** Until when each key gets in that was not used yet. */
    private final Map<String, Instant> keys = new ConcurrentHashMap<>();

    /** Browsers send a cookie to every port of a host, but only to paths below its own. */
    private final String root = "/" + random();

    private final String pass = random();

    Door(int port, InstantSource clock) {
        this.port = port;
        this.clock = clock;
        this.hosts = List.of("127.0.0.1:" + port, "localhost:" + port);
    }

    private static String random() {
        byte[] bytes = new byte[24];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** The path that all addresses of this session are under. */
    String root() {
        return root;
    }

    /** An address to open, with a new key, which gets in once. */
    String address() {
        String key = random();
        keys.put(key, clock.instant().plus(Screen.KEY_LIFE));
        return "http://" + hosts.get(0) + ENTER + key;
    }

    /**
     * Looks at a request before anything else does.
     *
     * @return a reply on the way in; empty if the browser has its pass
     * @throws Refusal if it is not ours
     */
    Optional<Reply> check(Request request) {
        checkHost(request);
        Optional<String> key = request.behind(ENTER);
        if (key.isPresent()) {
            return Optional.of(enter(request, key.get()));
        }
        boolean passed =
                request.behind(root + "/").isPresent()
                        && cookies(request).anyMatch(is -> same(is, name() + "=" + pass));
        if (!passed && isEntering(request)) {
            return Optional.of(Reply.html(AGAIN.formatted(root)));
        }
        checkSite(request);
        if (!passed) {
            throw new Refusal(
                    403,
                    "This address opens only with the key that the program prints when it"
                            + " starts. Open the address it printed.");
        }
        return Optional.empty();
    }

    /**
     * Whether the browser comes from the key and did not send the pass that it was just given: led
     * by a file, it takes the way in for one from elsewhere. A page of ours then asks once more.
     */
    private boolean isEntering(Request request) {
        return request.looks()
                && request.path().equals(root + "/")
                && request.query().find("again").isEmpty();
    }

    /** Another site's name that leads here (DNS rebinding) is refused. */
    private void checkHost(Request request) {
        if (!hosts.contains(host(request))) {
            throw new Refusal(403, "This program answers at " + hosts.get(0) + " only.");
        }
    }

    private static String host(Request request) {
        return request.header("Host").orElse("");
    }

    /** Another site's page is refused. */
    private static void checkSite(Request request) {
        boolean ours =
                request.header("Origin")
                        .map(origin -> origin.equals("http://" + host(request)))
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
        if (!request.looks() || !admits(shown)) {
            throw new Refusal(
                    403,
                    "This key was used, is too old, or is not that of the running program. Go on"
                            + " in the browser that used it; or end the program, start it again and"
                            + " open the address that it prints then.");
        }
        return Reply.goTo(root + "/")
                .with(
                        "Set-Cookie",
                        name() + "=" + pass + "; HttpOnly; SameSite=Strict; Path=" + root);
    }

    /** Whether a key gets in; it does so once. */
    boolean admits(String key) {
        Instant end = keys.remove(key);
        return end != null && !clock.instant().isAfter(end);
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
