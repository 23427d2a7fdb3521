package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scratch folders of demo stations do not pile up, and nothing that somebody entered is lost. */
class DemoFolderTest {
    private static final Visit ALL = new Visit("", "");

    @TempDir Path scratch;

    private Job season() throws IOException {
        Job job = Job.create(DemoFolder.create(scratch), Map.of());
        job.state(new Fact.Noted(ALL, "the season"));
        DemoFolder.noteSeason(job);
        return job;
    }

    /** What is there after one more demo station was opened, without that one. */
    private Set<Path> leftAfterTheNext() throws IOException {
        Path next = DemoFolder.create(scratch);
        try (Stream<Path> folders = Files.list(scratch)) {
            return folders.filter(folder -> !folder.equals(next)).collect(Collectors.toSet());
        } finally {
            Leftovers.remove(next);
        }
    }

    @Test
    void oneThatNobodyTouchedGoesWhenItsProgramIsGone() throws IOException {
        Job killed = season();
        assertEquals(Set.of(killed.folder()), leftAfterTheNext(), "its program lives");
        killed.close();
        assertEquals(Set.of(), leftAfterTheNext());
    }

    @Test
    void oneInWhichSomethingWasEnteredOrAdaptedStays() throws IOException {
        Job entered = season();
        entered.state(new Fact.Noted(ALL, "tried by hand"));
        assertFalse(DemoFolder.isUntouched(entered));
        entered.close();
        Job adapted = season();
        Files.createDirectory(adapted.folder().resolve("pages"));
        adapted.close();
        assertEquals(Set.of(entered.folder(), adapted.folder()), leftAfterTheNext());
    }

    @Test
    void aFolderThatIsNotWholeStaysTillItIsOld() throws IOException {
        Path begun = DemoFolder.create(scratch);
        Path strange = Files.createDirectory(scratch.resolve("halfwidth-demo-strange"));
        Files.writeString(strange.resolve("season.txt"), "many");
        Path other = Files.createDirectory(scratch.resolve("other"));
        assertTrue(leftAfterTheNext().containsAll(List.of(begun, strange, other)));
    }
}
