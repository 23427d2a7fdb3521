package halfwidth.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.opentest4j.TestAbortedException;

/** A law that does not hold is told so, with what repeats it. */
class LawTest {
    private static final Tries USUAL = new Tries(1000, Optional.empty());
    private static int runs;

    @Law(tries = 48)
    void isRunByJUnit(Draw draw) {
        draw.flag();
        runs++;
    }

    @AfterAll
    static void wasRunAsOftenAsItSays() {
        assertEquals(Seed.asked().isPresent() ? 1 : 48, runs);
    }

    @Test
    void isTriedAsOftenAsItSaysIfItHolds() {
        List<Double> drawn = new ArrayList<>();
        USUAL.of(draw -> drawn.add(draw.between(0, 1)));
        assertEquals(1000, drawn.size());
        assertTrue(drawn.stream().distinct().count() > 300, drawn::toString);
    }

    @Test
    void failsForOneValueInManyAndNamesItWithASeedThatRepeatsIt() {
        List<Integer> seen = new ArrayList<>();
        Tries.Trial law =
                draw -> {
                    seen.add(draw.whole(0, 99));
                    draw.text("ab\n", 3);
                    assertTrue(seen.get(seen.size() - 1) != 42, "it is 42");
                };

        AssertionError failure = assertThrows(AssertionError.class, () -> USUAL.of(law));
        int tries = seen.size();
        AssertionError again =
                assertThrows(
                        AssertionError.class,
                        () -> new Tries(1000, Optional.of(named(failure))).of(law));

        assertEquals(42, seen.get(tries - 1));
        assertEquals(tries + 1, seen.size());
        assertTrue(failure.getMessage().contains("it is 42"), failure::getMessage);
        assertTrue(failure.getMessage().contains("try " + tries + " of 1000, with 42, \""));
        assertEquals(
                failure.getMessage().replace("try " + tries + " of 1000", "the only try"),
                again.getMessage());
    }

    private static Seed named(AssertionError failure) {
        Matcher seed = Pattern.compile("-Dhalfwidth\\.seed=(\\w+)$").matcher(failure.getMessage());
        assertTrue(seed.find(), failure::getMessage);
        return Seed.parse(seed.group(1));
    }

    @Test
    void failsByWhateverIsThrown() {
        AssertionError failure =
                assertThrows(
                        AssertionError.class,
                        () ->
                                USUAL.of(
                                        draw -> {
                                            throw new StackOverflowError();
                                        }));
        assertEquals(StackOverflowError.class, failure.getCause().getClass());
        named(failure);
    }

    @Test
    void drawsAgainWhatItIsNotAbout() {
        List<Boolean> taken = new ArrayList<>();
        USUAL.of(
                draw -> {
                    assumeTrue(draw.flag());
                    taken.add(true);
                });
        assertEquals(1000, taken.size());
    }

    @Test
    void failsIfItIsAboutNearlyNothing() {
        AssertionError failure =
                assertThrows(
                        AssertionError.class,
                        () -> USUAL.of(draw -> assumeTrue(draw.whole(1, 100) == 50)));
        assertTrue(failure.getMessage().startsWith("Turned down 5001 of "), failure::getMessage);
    }

    @Test
    void isSkippedIfItIsNotAboutTheOnlySeed() {
        Tries one = new Tries(1000, Optional.of(new Seed(7)));
        assertThrows(TestAbortedException.class, () -> one.of(draw -> assumeTrue(false)));
    }

    @Test
    void refusesWhatIsNoSeed() {
        var refusal = assertThrows(IllegalArgumentException.class, () -> Seed.parse("try 7"));
        assertTrue(refusal.getMessage().contains("-Dhalfwidth.seed=try 7"), refusal::getMessage);
    }
}
