package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whoever reads a refusal stands in a field: what is wrong and what to type, in one line. */
class ShortRefusalsTest {
    private static final int MOST = 25;

    private static final List<String> WRONG =
            List.of(
                    "",
                    "oops",
                    "3 oops",
                    "3 °",
                    "3 m",
                    "3 s",
                    "3 dBm",
                    "1,234",
                    "1'234.5",
                    "1 2 3",
                    "3/0",
                    "3/8",
                    "1e999",
                    "1 ft 13 in",
                    "5 ± 0",
                    "5 ± oops",
                    "5 m ± 1",
                    "5 ± 1 cm",
                    "5 ± 1 ± 1",
                    "155 in the 120",
                    "155 in",
                    "254",
                    "-254",
                    "0.5 in the 90",
                    "-5 in the 90",
                    "1001 in the 150",
                    "2/3/2026",
                    "99.99.2026");

    private static final List<Kind> OTHERS =
            List.of(
                    new Kind.Ddm(),
                    new Kind.DdmSize(),
                    new Kind.Count(),
                    new Kind.Date(),
                    new Kind.Text(),
                    new Kind.Choice(List.of("SBO", "CSB")));

    private static Stream<String> refusals(Kind kind, String unit) {
        List<String> messages = new ArrayList<>();
        for (String typed : WRONG) {
            try {
                Entry.read(kind, unit, typed);
            } catch (EntryRefused refusal) {
                messages.add(refusal.getMessage());
            }
        }
        return messages.stream();
    }

    @Test
    void sayWhatIsWrongAndWhatToTypeIn25Words() {
        Stream<String> ofUnits =
                Stream.of(Symbol.values())
                        .flatMap(symbol -> refusals(new Kind.Number(), symbol.label));
        Stream<String> ofOthers =
                OTHERS.stream()
                        .flatMap(kind -> refusals(kind, kind instanceof Kind.Count ? "1" : "DDM"));
        List<String> all = Stream.concat(ofUnits, ofOthers).distinct().toList();
        assertTrue(all.size() > 100, () -> "only " + all.size() + " refusals were tried");
        List<String> tooLong =
                all.stream().filter(message -> message.split("\\s+").length > MOST).toList();
        assertTrue(tooLong.isEmpty(), () -> String.join("\n", tooLong));
    }
}
