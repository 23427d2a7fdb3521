package halfwidth.command;

import halfwidth.adapt.AdaptedPages;
import halfwidth.approval.PageDifference;
import halfwidth.record.Verification;
import java.nio.file.Path;
import java.util.Optional;

/** Which text of its page a record was made with. */
record PageText(String words, Optional<PageDifference> difference) {

    /**
     * Compares a record's page with the one that is shipped.
     *
     * @param notebooks the folder of the shipped pages, if it was found
     */
    static PageText of(Verification verified, Optional<Path> notebooks) {
        String name = verified.visit().page();
        String text = verified.filled().page().text();
        Path folder = notebooks.orElse(Path.of("notebooks"));
        Optional<PageDifference> difference = AdaptedPages.difference(folder, name, text);
        if (difference.isEmpty()) {
            return new PageText("the page as shipped with this version", difference);
        }
        String words =
                notebooks.isPresent()
                        ? difference.get().words()
                        : "no shipped pages were found to compare it with";
        return verified.saysShipped()
                ? new PageText(
                        "the page as shipped with Halfwidth %s, which is not this version's: %s"
                                .formatted(verified.about().get("program"), words),
                        Optional.empty())
                : new PageText("an adapted page: " + words, difference);
    }
}
