package halfwidth.job;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where a journal ended at some moment. On paper it tells later whether all up to there is still
 * the same: who rewrites an earlier line changes every link behind it.
 *
 * @param line the number of the last line; 0 before the first
 * @param link what that line ended with
 */
public record JournalLink(long line, String link) {

    /** Whether the journal in a job folder still has it. */
    public boolean isIn(Path folder) {
        Path file = folder.resolve(Job.JOURNAL);
        if (line == 0) {
            return link.equals(Chain.START);
        }
        // Any byte is a letter in Latin-1; the number and the link are ASCII in any case.
        try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1)) {
            return lines.lines()
                    .anyMatch(one -> one.startsWith(line + ",") && one.endsWith("," + link));
        } catch (IOException | UncheckedIOException e) {
            throw new JobRefused(file + " cannot be read: " + e);
        }
    }

    /** As in {@code line 41, 90ab 12cd 34ef}. */
    public String words() {
        return "line " + line + ", " + link.replaceAll("(.{4})(?!$)", "$1 ");
    }
}
