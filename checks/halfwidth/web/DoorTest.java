package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.NetworkInterface;
import java.net.Socket;
import java.time.Instant;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Attacks on a server on one's own machine that runs code, each from where it would come. */
class DoorTest {
    private static final String ENTER = "/enter/transmit/feed-trim?visit=";
    private static final String VALUE = "name=target&row=0&column=&typed=0.5&seen=";

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.scratch();
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static int status(String answer) {
        return Wire.status(answer);
    }

    private static String journal() {
        return served.journal();
    }

    @Test
    void letsInWhoHasTheKey() {
        assertEquals(200, status(Wire.friend(served).get("/")));
    }

    @Test
    void givesAPassThatScriptsAndOtherSitesCannotUse() {
        String answer = Wire.stranger(served.port()).get(Wire.path(served.key()));
        assertEquals(303, status(answer));
        String root = served.root();
        assertTrue(answer.contains("; HttpOnly; SameSite=Strict; Path=" + root + "\r\n"), answer);
        assertTrue(answer.contains("Location: " + root + "/\r\n"), answer);
    }

    /** Cookies go to every port of a host: another server there must not be asked for this path. */
    @Test
    void givesEachSessionAPathThatNobodyGuesses() {
        try (Served other = Served.scratch()) {
            assertTrue(served.root().matches("/[0-9a-f]{48}"), served.root());
            assertNotEquals(served.root(), other.root());
        }
        String cookie = Wire.friend(served).header("Cookie");
        Wire outside = Wire.stranger(served.port()).with("Cookie", cookie);
        assertEquals(403, status(outside.get("/")));
        assertEquals(403, status(outside.get("/own/fill.js")));
        assertEquals(200, status(outside.get(served.root() + "/")));
    }

    @Test
    void letsAKeyInOnce() {
        String key = Wire.path(served.key());
        String other = Wire.path(served.key());
        Wire stranger = Wire.stranger(served.port());
        assertEquals(403, status(stranger.post(key, "")), "a form does not use it up");
        assertEquals(303, status(stranger.get(key)));
        String again = stranger.get(key);
        assertEquals(403, status(again));
        assertTrue(again.contains("This key was used"), again);
        assertEquals(303, status(stranger.get(other)), "each has its own turn");
    }

    @Test
    void letsNoKeyInThatIsTooOld() {
        Instant[] now = {Instant.parse("2026-06-12T10:00:00Z")};
        Door door = new Door(1, () -> now[0]);
        String early = key(door);
        String late = key(door);
        now[0] = now[0].plus(Screen.KEY_LIFE);
        assertTrue(door.admits(early));
        now[0] = now[0].plusSeconds(1);
        assertFalse(door.admits(late));
    }

    private static String key(Door door) {
        return Wire.path(door.address()).substring("/key/".length());
    }

    /** Led by a file, a browser takes the way in for one from elsewhere and sends no pass yet. */
    @Test
    void asksOnceMoreWhereTheBrowserCameFromAFile() {
        String key = Wire.path(served.key());
        Wire led = Wire.stranger(served.port()).with("Sec-Fetch-Site", "cross-site");
        assertEquals(303, status(led.get(key)));
        String answer = led.get(served.root() + "/");
        assertEquals(200, status(answer));
        assertTrue(answer.contains("content=\"0;url=" + served.root() + "/?again=\""), answer);
        assertFalse(answer.contains("id=\"sheet\""), answer);
        assertEquals(
                403, status(led.get(served.root() + "/?again=")), "it does not go on for ever");
    }

    @Test
    void refusesWhoHasNoPassOrAWrongOne() {
        Wire stranger = Wire.stranger(served.port());
        assertEquals(403, status(stranger.get("/")));
        assertEquals(403, status(stranger.get("/own/fill.js")));
        assertEquals(403, status(stranger.get("/key/" + "0".repeat(48))));
        assertEquals(403, status(stranger.get("/key/")));
        stranger.with("Cookie", "halfwidth-" + served.port() + "=" + "0".repeat(48));
        assertEquals(403, status(stranger.get("/")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "evil.example",
                "evil.example:PORT",
                "127.0.0.1",
                "127.0.0.1.evil.example:PORT",
                "[::1]:PORT",
                ""
            })
    void refusesNamesThatOnlyLeadHere(String host) {
        Wire rebound = Wire.friend(served);
        rebound.with("Host", host.replace("PORT", "" + served.port()));
        rebound.without("Origin");
        assertEquals(403, status(rebound.get("/")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://evil.example",
                "http://evil.example:PORT",
                "http://127.0.0.1:1",
                "http://localhost:PORT",
                "https://127.0.0.1:PORT",
                "null"
            })
    void refusesWhatPagesOfOtherSitesSend(String origin) throws IOException {
        Wire other = Wire.friend(served).with("Origin", origin.replace("PORT", "" + served.port()));
        String before = journal();
        assertEquals(403, status(other.post(ENTER, VALUE)));
        assertEquals(403, status(other.get("/fill/transmit/feed-trim?visit=")));
        assertEquals(before, journal());
    }

    @Test
    void refusesWhatTheBrowserSaysComesFromAnotherSite() {
        for (String site : List.of("cross-site", "same-site")) {
            Wire other = Wire.friend(served).without("Origin").with("Sec-Fetch-Site", site);
            assertEquals(403, status(other.get("/")));
            assertEquals(403, status(other.get("/own/sheet.css")));
        }
    }

    @Test
    void refusesAChangeWithoutAnOrigin() throws IOException {
        String before = journal();
        assertEquals(403, status(Wire.friend(served).without("Origin").post(ENTER, VALUE)));
        assertEquals(before, journal());
    }

    @Test
    void changesNothingWhenSomebodyOnlyLooks() throws IOException {
        String before = journal();
        assertEquals(404, status(Wire.friend(served).get(ENTER + "&" + VALUE)));
        assertEquals(before, journal());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/fill/../../etc/passwd",
                "/fill/%2e%2e/%2e%2e/pom",
                "/fill/..%2f..%2fREADME",
                "/fill/transmit%5c..%5c..%5cREADME",
                "/fill//etc/passwd",
                "/fill/transmit/feed-trim.md",
                "/own/../Door.class",
                "/own/%2e%2e/show/sheet.css",
                "/own/Door.class",
                "/csv/../job.csv",
                "/nothing"
            })
    void leadsToNoFileOutside(String path) {
        String answer = Wire.friend(served).get(path);
        assertEquals(404, status(answer), answer);
    }

    @Test
    void refusesAMalformedAddress() {
        int status = status(Wire.friend(served).get("/fill/%zz"));
        assertEquals(400, status);
    }

    @Test
    void refusesTooMuchAtOnce() throws IOException {
        String before = journal();
        String huge = VALUE + "x".repeat(Request.MOST_BYTES);
        String answer = Wire.friend(served).post(ENTER, huge);
        assertEquals(413, status(answer), answer);
        String many = "name=a&".repeat(60_000) + "name=b";
        assertEquals(413, status(Wire.friend(served).post(ENTER, many)));
        assertEquals(before, journal());
    }

    @Test
    void refusesFormsThatDoNotAddUp() {
        Wire friend = Wire.friend(served);
        assertEquals(400, status(friend.post(ENTER, "name=target&name=target&typed=1")));
        assertEquals(400, status(friend.post(ENTER, VALUE.replace("row=0", "row=-1"))));
        assertEquals(400, status(friend.post(ENTER, VALUE.replace("row=0", "row=99999999999"))));
        assertEquals(400, status(friend.post(ENTER, VALUE.replace("0.5", "%zz"))));
    }

    @Test
    void refusesATableThatThePageDoesNotHaveWhateverItIsCalled() {
        for (String table : List.of("../../x", "x", "%00", "a".repeat(300))) {
            String answer =
                    Wire.friend(served)
                            .post(
                                    "/load/transmit/feed-trim?visit=",
                                    "file=a.csv&bytes=YQ==&table=" + table);
            assertEquals(409, status(answer), answer);
            assertTrue(answer.contains("has no table of readings"), answer);
        }
    }

    @Test
    void refusesAVisitWhoseNameNoFileCouldHave() {
        String before = journal();
        String answer = Wire.friend(served).post(ENTER + "a".repeat(300), VALUE);
        assertEquals(409, status(answer), answer);
        assertTrue(answer.contains("give it a shorter one"), answer);
        assertEquals(before, journal());
    }

    @Test
    void sendsEveryAnswerWithAPolicyThatRunsNothingButOurs() {
        Wire friend = Wire.friend(served);
        for (String path : List.of("/", "/own/sheet.css", "/nothing", "/find?words=feed")) {
            String answer = friend.get(path);
            String policy = header(answer, "Content-Security-Policy");
            assertTrue(policy.startsWith("default-src 'none'; script-src 'self';"), policy);
            assertFalse(policy.contains("unsafe"), policy);
            assertTrue(policy.contains("frame-ancestors 'none'"), policy);
            assertEquals("nosniff", header(answer, "X-Content-Type-Options"));
            assertEquals("no-store", header(answer, "Cache-Control"));
            assertEquals("same-origin", header(answer, "Cross-Origin-Resource-Policy"));
        }
    }

    private static String header(String answer, String name) {
        return answer.lines()
                .filter(line -> line.toLowerCase().startsWith(name.toLowerCase() + ": "))
                .map(line -> line.substring(name.length() + 2))
                .findFirst()
                .orElse("none in " + answer);
    }

    @Test
    void writesNoScriptOrStyleIntoThePage() {
        String page = Wire.friend(served).get("/fill/transmit/feed-trim?visit=");
        assertFalse(
                page.replaceAll("<script type=\"module\" src=\"/own/\\w+\\.js\"></script>", "")
                        .contains("<script"),
                page);
        assertFalse(page.contains("<style") || page.matches("(?s).*\\s(style|on\\w+)=.*"), page);
    }

    @Test
    void escapesWhatIsAskedFor() {
        String page = Wire.friend(served).get("/find?words=%3Cscript%3Ealert(1)%3C/script%3E%22");
        assertTrue(page.contains("&lt;script&gt;"), page);
        assertFalse(page.contains("<script>"), page);
        String nothing = Wire.friend(served).get("/%3Cscript%3E");
        assertFalse(nothing.contains("<script>"), nothing);
        String visit = Wire.friend(served).get("/fill/transmit/feed-trim?visit=%22%3E%3Cscript%3E");
        assertFalse(visit.contains("<script>"), visit);
    }

    @Test
    void answersOnTheLoopbackAddressOnly() throws IOException {
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            for (InetAddress address : Collections.list(card.getInetAddresses())) {
                if (!address.isLoopbackAddress()) {
                    assertFalse(answers(address), address + " answers");
                }
            }
        }
        assertTrue(answers(InetAddress.getLoopbackAddress()));
    }

    private static boolean answers(InetAddress address) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(address, served.port()), 1000);
            return true;
        } catch (IOException refused) {
            return false;
        }
    }
}
