package halfwidth.job;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Small pages for these tests: a width that is measured, and pages that take values from others.
 */
final class JobPages {
    /** Inputs of several kinds and a table; gives the result {@code width}. */
    static final Page WIDTH = page("sweep/width", "");

    private JobPages() {}

    /**
     * A page with an input {@code taken} from another, a length, a remark and a table of readings.
     *
     * @param from what {@code taken} takes its value from; "" for nothing
     */
    static Page page(String name, String from) {
        return Pages.parse(name, Path.of(name + ".md"), text(from));
    }

    private static String text(String from) {
        return String.join(
                "\n",
                "# Trial",
                "",
                "```csv inputs",
                "name,unit,kind,example,default,from,least,most,label",
                "taken,°,number,4,," + from + ",0,20,Taken from another page",
                "length,m,number,300,,,0,10000,Length",
                "remark,,text,none,,,,,Remark",
                "```",
                "",
                "```csv readings sweep gathered",
                "azimuth [°],near [DDM],mark",
                "1,0,A",
                "```",
                "",
                "```java",
                "double width = taken + 0.5; // °",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "width,°,2,Width",
                "```",
                "");
    }

    /** Writes pages into a folder and returns it as the worked pages. */
    static Pages written(Path folder, Page... pages) {
        try {
            for (Page page : pages) {
                Path file = folder.resolve(page.name() + ".md");
                Files.createDirectories(file.getParent());
                Files.writeString(file, page.text());
            }
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return new Pages(folder);
    }
}
