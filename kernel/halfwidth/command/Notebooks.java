package halfwidth.command;

import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.ProgramFiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/** The option that says where the pages are. */
final class Notebooks {
    @Option(
            names = "--notebooks",
            paramLabel = "DIR",
            description =
                    "The folder of the worked pages; by default the nearest folder of that name at"
                            + " or above this folder, then at or above the program.")
    private Path folder;

    /**
     * Finds the pages.
     *
     * @throws Refused if there is no such folder
     */
    Pages pages() {
        return new Pages(
                found().orElseThrow(
                                () ->
                                        new Refused(
                                                "No folder named notebooks was found; name it with"
                                                        + " --notebooks DIR.")));
    }

    /**
     * Finds the folder of the pages; empty if there is none.
     *
     * @throws Refused if the one that is named is not there
     */
    Optional<Path> found() {
        if (folder != null && !Files.isDirectory(folder)) {
            throw new Refused("There is no folder " + folder + "; name the one with the pages.");
        }
        return Optional.ofNullable(folder)
                .or(() -> above(Path.of("").toAbsolutePath()))
                .or(() -> above(ProgramFiles.program()));
    }

    /**
     * Finds a page by its name.
     *
     * @throws Refused if there is none of that name, naming those that are near
     */
    Page page(String name) {
        return page(pages(), name);
    }

    /**
     * Finds a page by its name among these.
     *
     * @throws Refused if there is none of that name, naming those that are near
     */
    static Page page(Pages pages, String name) {
        try {
            return pages.find(name);
        } catch (IllegalArgumentException unknown) {
            throw new Refused(unknown.getMessage());
        }
    }

    private static Optional<Path> above(Path start) {
        return Stream.iterate(start, path -> path != null, Path::getParent)
                .map(path -> path.resolve("notebooks"))
                .filter(Files::isDirectory)
                .findFirst();
    }
}
