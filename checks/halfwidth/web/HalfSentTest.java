package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Requests of which only a part arrives keep nobody waiting. */
class HalfSentTest {
    private static final int MANY = 40;

    /** Of an answer that waits for nothing, on a machine that has much else to do. */
    private static final Duration SOON = Duration.ofSeconds(5);

    private static Served served;
    private static Wire friend;

    private final List<Socket> sockets = new ArrayList<>();

    @BeforeAll
    static void serve() {
        served = Served.scratch();
        friend = Wire.friend(served);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    @AfterEach
    void hangUp() throws IOException {
        for (Socket socket : sockets) {
            socket.close();
        }
    }

    private Socket send(String part) throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.port());
        sockets.add(socket);
        socket.getOutputStream().write(part.getBytes(StandardCharsets.UTF_8));
        return socket;
    }

    private static String head(String more) {
        return "POST /enter/transmit/feed-trim?visit= HTTP/1.1\r\nHost: 127.0.0.1:"
                + served.port()
                + "\r\n"
                + more;
    }

    private void assertFriendIsAnswered() {
        assertTimeoutPreemptively(
                SOON, () -> assertEquals(200, Wire.status(friend.get("/own/sheet.css"))));
    }

    @Test
    void withoutAPassTheyAreRefusedBeforeTheirBodiesAreRead() throws IOException {
        for (int i = 0; i < MANY; i++) {
            send(head("Content-Length: 1000\r\n\r\nname="));
        }
        assertFriendIsAnswered();
        Socket one = send(head("Content-Length: 1000\r\n\r\nname="));
        one.setSoTimeout((int) SOON.toMillis());
        String answer = new String(one.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(403, Wire.status(answer), answer);
    }

    @Test
    void withHalfAHeadTheyWaitByThemselves() throws IOException {
        for (int i = 0; i < MANY; i++) {
            send(head("Content-Le"));
        }
        assertFriendIsAnswered();
    }

    /** Twice the time and a look of the server's, since the machine may be busy. */
    @Test
    void whatDoesNotArriveInItsTimeIsGivenUp() throws IOException {
        Socket half = send(head("Content-Le"));
        half.setSoTimeout(1000 * (2 * Screen.ARRIVAL + 2));
        assertTrue(half.getInputStream().read() < 0, "hung up, and not timed out");
    }
}
