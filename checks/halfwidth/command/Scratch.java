package halfwidth.command;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Files for a test, in a folder whose name has a space and, where names may, a letter of its own.
 */
record Scratch(Path folder) {

    static Scratch within(Path temporary) {
        // Under the POSIX locale no Java program can name a file beyond ASCII.
        Charset names = Charset.forName(System.getProperty("sun.jnu.encoding"));
        String name = names.newEncoder().canEncode('ü') ? "Prüf raum" : "Pruef raum";
        try {
            return new Scratch(Files.createDirectories(temporary.resolve(name)));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** Writes a file of these lines and returns its path. */
    Path file(String name, String... lines) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.writeString(file, String.join("\n", lines) + "\n");
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The records in the folder {@code job}, in no order. */
    List<Path> records() {
        return recordsOf(folder.resolve("job"));
    }

    /** The records of a job, in no order; none where none was written. */
    static List<Path> recordsOf(Path job) {
        Path records = job.resolve("records");
        if (!Files.exists(records)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(records)) {
            return files.filter(file -> file.toString().endsWith(".html")).toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    String text(String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    String path(String name) {
        return folder.resolve(name).toString();
    }

    /** Writes a page that doubles a length, with one more step and the check that is given. */
    Path page(String name, String step, String check) {
        return file(
                "notebooks/" + name + ".md",
                "# Trial",
                "",
                "Doubles a length.",
                "",
                "```csv inputs",
                "name,unit,kind,example,default,least,most,label",
                "length,mm,number,5,,0,100,Length",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,least,most,source,uncertainty,label",
                "twice,mm,1,,12,invented for this test,,Twice the length",
                "```",
                "",
                "```java",
                "double twice = 2 * length; // mm",
                step,
                "```",
                "",
                "```java check",
                check,
                "```");
    }
}
