package halfwidth.adapt;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AdaptedPagesTest {
    private static final String NAME = "transmit/feed-trim";

    @TempDir Path folder;

    private Path job;
    private AdaptedPages pages;

    @BeforeEach
    void makeJob() throws IOException {
        job = Files.createDirectory(folder.resolve("job"));
        pages = new AdaptedPages(ShippedText.NOTEBOOKS, job);
    }

    private static Draft retitled(Draft draft, String title) {
        return draft.replace(new Place(1, 1, false), "# " + title);
    }

    private Version write(String title) {
        Draft draft = pages.draft(NAME);
        return pages.write(retitled(draft, title), draft.text().version());
    }

    @Test
    void anAdaptedPageGoesBeforeTheShippedOneOfItsName() {
        assertFalse(pages.adapted(NAME));
        assertEquals("Feed trim", pages.pages().find(NAME).title());
        write("Our feed trim");
        assertTrue(pages.adapted(NAME));
        assertEquals("Our feed trim", pages.pages().find(NAME).title());
        assertEquals(ShippedText.NAMES, pages.pages().names());
        assertEquals("Feed trim", retitled(pages.draft(NAME), "Feed trim").page().get().title());
        assertEquals(ShippedText.of(NAME), pages.shipped(NAME));
    }

    @Test
    void theCopyIsTheWholeFileAndNothingIsLeftBesideIt() throws IOException {
        write("Our feed trim");
        assertEquals(job.resolve("pages/transmit/feed-trim.md"), pages.file(NAME));
        assertEquals(
                ShippedText.of(NAME).replaceFirst("Feed trim", "Our feed trim"),
                Files.readString(pages.file(NAME)));
        try (var beside = Files.list(pages.file(NAME).getParent())) {
            assertEquals(List.of(pages.file(NAME)), beside.toList());
        }
    }

    @Test
    void windowsLineEndsAreKept() throws IOException {
        Files.createDirectories(pages.file(NAME).getParent());
        String text = "\ufeff" + ShippedText.of(NAME).replace("\n", "\r\n");
        Files.writeString(pages.file(NAME), text);
        write("Our feed trim");
        assertEquals(
                text.replaceFirst("Feed trim", "Our feed trim"),
                Files.readString(pages.file(NAME)));
    }

    @Test
    void anEditInAnotherEditorShowsInTheVersion() throws IOException {
        Version before = write("Our feed trim");
        assertEquals(before, pages.version(NAME));
        var time = Files.getLastModifiedTime(pages.file(NAME));
        String text = Files.readString(pages.file(NAME)).replace("Our feed", "Own feed");
        Files.writeString(pages.file(NAME), text);
        Files.setLastModifiedTime(pages.file(NAME), time);
        assertNotEquals(before, pages.version(NAME), "same size and time, other text");
        assertEquals(pages.draft(NAME).text().version(), pages.version(NAME));
    }

    @Test
    void aChangeMadeElsewhereIsNotOverwritten() {
        Draft mine = pages.draft(NAME);
        write("Theirs");
        assertThrows(
                ChangedElsewhere.class,
                () -> pages.write(retitled(mine, "Mine"), mine.text().version()));
        assertEquals("Theirs", pages.pages().find(NAME).title());
    }

    @Test
    void aPageThatCannotBeReadIsNotWritten() {
        Draft draft = pages.draft(NAME);
        Draft broken = draft.replace(new Place(1, 1, false), "no title");
        assertThrows(
                IllegalArgumentException.class, () -> pages.write(broken, draft.text().version()));
        assertFalse(pages.adapted(NAME));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../feed-trim",
                "transmit/../../feed-trim",
                "/etc/feed-trim",
                "C:\\feed-trim",
                "transmit\\feed-trim",
                "transmit//feed-trim",
                "",
                ".",
                "transmit/.hidden",
                "a\u0000b",
                "a\nb"
            })
    void aNameThatLeadsElsewhereIsRefused(String name) {
        assertThrows(IllegalArgumentException.class, () -> pages.file(name));
        assertThrows(IllegalArgumentException.class, () -> pages.draft(name));
        assertThrows(IllegalArgumentException.class, () -> pages.shipped(name));
        assertThrows(IllegalArgumentException.class, () -> pages.version(name));
    }

    @Test
    void aLinkThatLeadsElsewhereIsRefused() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createDirectory(job.resolve("pages"));
        Files.createSymbolicLink(job.resolve("pages/transmit"), elsewhere);
        assertThrows(IllegalArgumentException.class, () -> write("Our feed trim"));
        try (var there = Files.list(elsewhere)) {
            assertEquals(0, there.count());
        }
    }

    @Test
    void aJobBehindALinkIsAsGoodAsAny() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), job);
        AdaptedPages linked = new AdaptedPages(ShippedText.NOTEBOOKS, link);
        Draft draft = linked.draft(NAME);
        linked.write(retitled(draft, "Linked"), draft.text().version());
        assertEquals("Linked", pages.pages().find(NAME).title());
    }

    @Test
    void aCopySetAsideGivesWayToTheShippedPageAndIsKept() throws IOException {
        write("First of ours");
        pages.setAside(NAME, pages.version(NAME));
        assertFalse(pages.adapted(NAME));
        assertEquals("Feed trim", pages.pages().find(NAME).title());
        write("Second of ours");
        pages.setAside(NAME, pages.version(NAME));
        assertEquals(
                Optional.of(job.resolve("pages/transmit/feed-trim.aside-2.txt")),
                pages.lastSetAside(NAME));
        Path first = job.resolve("pages/transmit/feed-trim.aside-1.txt");
        assertTrue(Files.readString(first).contains("# First of ours"));
        assertEquals(ShippedText.NAMES, pages.pages().names());
        Files.move(first, pages.file(NAME));
        assertEquals("First of ours", pages.pages().find(NAME).title());
    }

    @Test
    void aCopyThatWasChangedMeanwhileIsNotSetAside() {
        Version seen = write("First of ours");
        write("Second of ours");
        assertThrows(ChangedElsewhere.class, () -> pages.setAside(NAME, seen));
        assertTrue(pages.adapted(NAME));
    }

    @Test
    void aPageThatTheJobAloneHasIsNotSetAside() throws IOException {
        Path own = pages.file("transmit/own-page");
        Files.createDirectories(own.getParent());
        Files.writeString(own, ShippedText.of(NAME));
        assertThrows(
                IllegalArgumentException.class,
                () -> pages.setAside("transmit/own-page", pages.version("transmit/own-page")));
        assertThrows(
                IllegalArgumentException.class, () -> pages.setAside(NAME, pages.version(NAME)));
        assertTrue(Files.exists(own));
    }
}
