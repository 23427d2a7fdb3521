package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** What is told of long work. */
class ProgressTest {
    @Test
    void tellsHowFarItIsUntilItIsDone() throws InterruptedException {
        StringWriter told = new StringWriter();
        CountDownLatch thrice = new CountDownLatch(3);
        int[] step = {0};
        try (Progress progress =
                Progress.every(
                        Duration.ofMillis(10),
                        new PrintWriter(told),
                        () -> {
                            thrice.countDown();
                            return "step " + ++step[0];
                        })) {
            assertTrue(thrice.await(30, TimeUnit.SECONDS), progress::toString);
        }
        assertTrue(told.toString().lines().toList().contains("step 2"), told.toString());
    }

    /** As in a script, or where the output goes to a file. */
    @Test
    void tellsNothingWhereThereIsNoTerminal() throws InterruptedException {
        StringWriter told = new StringWriter();
        if (System.console() == null) {
            try (Progress progress = Progress.begin(new PrintWriter(told), progress())) {
                Thread.sleep(50);
                assertEquals("", told.toString(), progress::toString);
            }
        }
    }

    private static java.util.function.Supplier<String> progress() {
        return () -> "told";
    }
}
