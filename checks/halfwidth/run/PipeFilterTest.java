package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.InvalidClassException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What either end of the worker's pipe reads: the program's own messages and nothing else. */
class PipeFilterTest {
    private static Object sent(Object message) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream pipe = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(pipe)) {
            out.writeObject(message);
        }
        try (ObjectInputStream in =
                new ObjectInputStream(new ByteArrayInputStream(pipe.toByteArray()))) {
            in.setObjectInputFilter(Message.FILTER);
            return in.readObject();
        }
    }

    @Test
    void messageIsRead() throws Exception {
        Message go =
                new Message.Go(
                        new Values(Map.of("day", java.time.LocalDate.of(2026, 1, 2)), true),
                        Map.of(3, new Outcome.Failed(1, "a", "b", "c")),
                        true);
        assertEquals(go, sent(go));
    }

    @Test
    void objectOfAnotherClassIsRefused() {
        assertThrows(InvalidClassException.class, () -> sent(new File("x")));
        assertThrows(InvalidClassException.class, () -> sent(List.of(new File("x"))));
        assertThrows(
                InvalidClassException.class,
                () -> sent(new Values(Map.of("f", new File("x")), true)));
    }

    @Test
    void objectNestedWithoutEndIsRefused() {
        Object[] nested = {};
        for (int i = 0; i < 1100; i++) {
            nested = new Object[] {nested};
        }
        Object[] deep = nested;
        assertThrows(InvalidClassException.class, () -> sent(deep));
    }
}
