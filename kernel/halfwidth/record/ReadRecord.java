package halfwidth.record;

import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.JournalLink;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Pages;
import halfwidth.run.Run;
import halfwidth.show.OwnCopy;
import halfwidth.show.Stamp;
import halfwidth.value.EntryRefused;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * A record as it was read from its file. Nothing of the page in it has run.
 *
 * @param file where it was read from
 * @param text all of it, with zeros in the place of its digest
 * @param sealed whether every byte is as it was written
 * @param contents what is attached to it
 * @param filled the page that it holds, with the values
 */
public record ReadRecord(Path file, String text, boolean sealed, Contents contents, Filled filled) {

    /** Reads the page of a record from its text. */
    interface PageReader {
        Page read(String name, Path file, String text);
    }

    /**
     * Reads a record that anybody may have made. No file is read but its own, whatever paths it
     * names.
     *
     * @throws RecordRefused if the file is no record, or what it holds is not understood
     */
    public static ReadRecord of(Path file) {
        return of(file, RecordFile.bytes(file), Pages::parseFromElsewhere);
    }

    /**
     * Reads a record that is just what a job has written, by its journal.
     *
     * @throws RecordRefused if it is not, or cannot be read
     */
    public static ReadRecord ofJob(Job job, Path file) {
        byte[] bytes = RecordFile.bytes(file);
        Signatures.refuseOther(job, file, bytes);
        return of(file, bytes, Pages::parse);
    }

    private static ReadRecord of(Path file, byte[] bytes, PageReader reader) {
        try {
            Contents contents = Attached.read(bytes);
            Filled filled = contents.filled(reader);
            contents.findings();
            contents.reasons();
            return new ReadRecord(file, Seal.opened(bytes), Seal.holds(bytes), contents, filled);
        } catch (RecordRefused | PageRefused | EntryRefused | NoSuchElementException wrong) {
            throw refused(file, wrong, bytes);
        }
    }

    private static RecordRefused refused(Path file, RuntimeException wrong, byte[] bytes) {
        if (!Seal.isThere(bytes)) {
            return new RecordRefused(
                    file
                            + " is no record: it has no seal. Name an HTML file in the folder"
                            + " records of a job.");
        }
        String how =
                Seal.holds(bytes)
                        ? " cannot be done again: "
                        : " was changed, and cannot be read: ";
        return new RecordRefused(file + how + wrong.getMessage());
    }

    /** What it says of itself, by name. */
    public Map<String, String> about() {
        return contents.facts();
    }

    /** The visit of which it is. */
    public Visit visit() {
        return new Visit(about().getOrDefault("page", ""), about().getOrDefault("visit", ""));
    }

    /** Whether it says that its page was the one that its program shipped. */
    public boolean saysShipped() {
        return RecordFile.SHIPPED.equals(about().get("page text"));
    }

    /** Where its job's journal ended before it was written, as it says. */
    public Optional<JournalLink> journalLink() {
        return RecordFile.link(about());
    }

    /** What it was made by and from, as it says. */
    Stamp stamp() {
        Map<String, String> about = about();
        byte[] page = filled.page().text().getBytes(StandardCharsets.UTF_8);
        return Stamp.of(about.getOrDefault("program", ""), ran(about), page)
                .onJava(about.getOrDefault("java", ""));
    }

    private static ZonedDateTime ran(Map<String, String> about) {
        try {
            return OffsetDateTime.parse(about.getOrDefault("ran", "")).toZonedDateTime();
        } catch (DateTimeParseException none) {
            // Records of every program so far say when they were run; what is shown will differ.
            return Instant.EPOCH.atZone(ZoneOffset.UTC);
        }
    }

    /**
     * What it tells of a page that is a job's own, if it says that it is one.
     *
     * @param example the run of the page's worked example
     */
    public Optional<OwnCopy> ownCopy(Run example) {
        if (saysShipped()) {
            return Optional.empty();
        }
        boolean shipped = RecordFile.GOES_BEFORE.equals(about().get("own copy"));
        String outside = about().getOrDefault("outside the bounds", "");
        return Optional.of(OwnCopy.of(shipped, example, outside));
    }

    /** The fingerprint of what it shows. */
    public String content() {
        return Fingerprint.of(filled, contents.reasons());
    }

    /** Whether the page and the values in it are those that were run, by what it says itself. */
    boolean isMadeFromThese() {
        String madeFrom = about().getOrDefault("made from", "");
        return Fingerprint.isOf(madeFrom, filled, contents.reasons());
    }
}
