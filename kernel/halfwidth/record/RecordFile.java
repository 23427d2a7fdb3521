package halfwidth.record;

import halfwidth.job.Fact;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.JournalLink;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.show.Attachment;
import halfwidth.show.HtmlSheet;
import halfwidth.show.OwnCopy;
import halfwidth.show.ResultsCsv;
import halfwidth.show.Sheet;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Writes records into a job's folder {@code records}; none is ever written over. */
public final class RecordFile {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);

    /** A file's name may have 255 letters, and the path to it 260 on some systems. */
    private static final int LONGEST_NAME = 80;

    /** What a record says of its page's text where it is the one that its program ships. */
    static final String SHIPPED = "shipped";

    /** What it says of a job's own page that goes before a shipped one. */
    static final String GOES_BEFORE = "before a shipped page";

    private RecordFile() {}

    /**
     * Writes a run of a page as a record, and its results beside it, and notes it in the journal.
     *
     * @param sheet the run, with its plots drawn
     * @param visit the visit's name, "" for that without
     * @return the record's HTML file
     * @throws RecordRefused if it cannot be written
     */
    public static Path write(Job job, Sheet sheet, String visit) {
        Visit of = new Visit(sheet.page().name(), visit);
        Map<Place, String> reasons = job.reasons(of);
        String content = Fingerprint.of(sheet.filled(), reasons);
        String html = html(sheet, about(job, sheet, visit, content), reasons);
        Path folder = job.folder().resolve("records");
        String name = name(sheet, visit);
        if (Files.isSymbolicLink(folder)) {
            throw new RecordRefused(folder + " is a link; put a folder into its place");
        }
        try {
            Files.createDirectories(folder);
            Path file = free(folder, name);
            put(csv(file), ResultsCsv.of(sheet));
            put(file, html);
            String written = file.getFileName().toString();
            job.state(new Fact.Recorded(of, written, Fingerprint.of(html), content));
            return file;
        } catch (IOException e) {
            throw new RecordRefused("Folder " + folder + " cannot be written: " + e);
        }
    }

    /** The results that were written beside a record. */
    public static Path csv(Path record) {
        String name = record.getFileName().toString().replaceFirst("\\.html$", ".csv");
        return record.resolveSibling(name);
    }

    private static Map<String, String> about(Job job, Sheet sheet, String visit, String content) {
        Map<String, String> about = new LinkedHashMap<>();
        about.put("page", sheet.page().name());
        about.put("visit", visit);
        about.put(
                "ran",
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(sheet.stamp().ran().withNano(0)));
        about.put("program", sheet.stamp().version());
        about.put("java", sheet.stamp().java());
        about.put("page text", sheet.ownCopy().isPresent() ? "adapted" : SHIPPED);
        about.put("made from", content);
        sheet.ownCopy()
                .map(OwnCopy::outside)
                .filter(outside -> !outside.isEmpty())
                .ifPresent(outside -> about.put("outside the bounds", outside));
        sheet.ownCopy()
                .ifPresent(
                        copy -> about.put("own copy", copy.hasShipped() ? GOES_BEFORE : "alone"));
        about.put("build", Build.ofProgram());
        if (ShownSheet.hasPlots(sheet)) {
            about.put("drawn by", Build.ofDrawing());
        }
        about.put("journal line", Long.toString(job.link().line()));
        about.put("journal link", job.link().link());
        return about;
    }

    static String html(Sheet sheet, Map<String, String> about, Map<Place, String> reasons) {
        return Seal.close(html(sheet, Contents.of(about, sheet, reasons)));
    }

    /** A record that is not sealed yet. */
    static String html(Sheet sheet, Contents contents) {
        List<Attachment> attached = new ArrayList<>();
        attached.add(new Attachment("about", "About this record", contents.about()));
        attached.add(new Attachment(Attached.HEADING, "What heads it", contents.heading()));
        attached.add(new Attachment("entries", "What was entered", contents.entries()));
        if (!contents.blanks().equals(Contents.NO_BLANKS)) {
            String title = "Why there is no value";
            attached.add(new Attachment(Attached.BLANKS, title, contents.blanks()));
        }
        contents.arrays()
                .forEach(
                        (input, text) -> {
                            String title = "The array's file, as it was: " + input;
                            attached.add(new Attachment(Attached.ARRAY + input, title, text));
                        });
        attached.add(new Attachment("unrounded", "Results, unrounded", contents.results()));
        attached.add(new Attachment("page-text", "The page's own text", contents.page()));
        return HtmlSheet.of(sheet, attached, printed(contents.facts()));
    }

    /** What its foot says besides: where the journal ended before it was written. */
    private static Map<String, String> printed(Map<String, String> about) {
        return link(about).map(link -> Map.of("Journal before it", link.words())).orElse(Map.of());
    }

    /** Where the journal ended before a record was written; older programs did not say. */
    static Optional<JournalLink> link(Map<String, String> about) {
        String line = about.getOrDefault("journal line", "");
        String link = about.getOrDefault("journal link", "");
        return line.matches("\\d{1,15}") && !link.isEmpty()
                ? Optional.of(new JournalLink(Long.parseLong(line), link))
                : Optional.empty();
    }

    private static String name(Sheet sheet, String visit) {
        String what = sheet.page().name() + (visit.isEmpty() ? "" : "-" + visit);
        String plain = what.replaceAll("[^A-Za-z0-9._-]+", "-");
        String brief = plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        return brief + "-" + STAMP.format(sheet.stamp().ran());
    }

    private static Path free(Path folder, String name) {
        Path file = folder.resolve(name + ".html");
        for (int i = 2; Files.exists(file); i++) {
            file = folder.resolve(name + "-" + i + ".html");
        }
        return file;
    }

    /** Under another name first, so that a record is there whole or not at all. */
    private static void put(Path file, String text) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        Files.writeString(part, text, StandardOpenOption.CREATE_NEW);
        try (FileChannel written = FileChannel.open(part, StandardOpenOption.WRITE)) {
            written.force(true);
        }
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * The bytes of a record, whatever line ends a mail program gave it.
     *
     * @throws RecordRefused if it cannot be read
     */
    static byte[] bytes(Path file) {
        try {
            // Latin-1 keeps every byte, be it UTF-8 or not, so that none can change unnoticed.
            byte[] bytes = Files.readAllBytes(file);
            String text = new String(bytes, StandardCharsets.ISO_8859_1);
            return text.replace("\r\n", "\n").getBytes(StandardCharsets.ISO_8859_1);
        } catch (NoSuchFileException none) {
            throw new RecordRefused(file + " is not there");
        } catch (IOException e) {
            throw new RecordRefused(file + " cannot be read: " + e);
        }
    }
}
