package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records that cannot be looked at, among others. */
class DamagedRecordsTest {
    private static final String HEADER =
            "number,more,time,who,kind,page,visit,name,row,column,typed,understood,unit,replaced,"
                    + "reason,text,check,chain";

    @TempDir Path temporary;

    /** Twelve digits of a SHA-256, as a journal's line ends with. */
    private static String digits(String text) throws NoSuchAlgorithmException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 6);
    }

    @Test
    void keepNobodyFromLookingAtTheNext() throws NoSuchAlgorithmException {
        Scratch scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        String cells = "one,0,today,somebody";
        String own = digits(cells);
        String line = cells + "," + own + "," + digits("0".repeat(12) + own);
        scratch.file("job/journal.csv", HEADER, line);
        scratch.file("job/records/a.html", "<html/>");
        Program program =
                Program.here(
                        "verify",
                        scratch.path("job/records/a.html"),
                        scratch.path("gone.html"),
                        scratch.path("nor-this.html"));
        assertEquals(1, program.status());
        Expect.complained(
                program, "is no line of this program's", "gone.html is not there", "nor-this.html");
        assertFalse(program.err().contains("at halfwidth."), program.err());
    }
}
