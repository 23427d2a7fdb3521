package halfwidth.search;

import halfwidth.page.Page;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Looks for words in pages. Neither case nor accents matter, and every word must be found: in a
 * thing's name or text, or else in its page's title or name, so that "feed velocity" finds the
 * velocity factor on the page about feeds.
 */
public final class Search {
    private final List<Entry> entries;

    private Search(List<Entry> entries) {
        this.entries = entries;
    }

    /** Makes pages searchable, in their order. */
    public static Search of(List<Page> pages) {
        return new Search(pages.stream().flatMap(PageEntries::of).toList());
    }

    /** What has all of the words, the best fit first, then in the order of the pages. */
    public List<Hit> find(String words) {
        List<String> wanted = Words.of(words);
        if (wanted.isEmpty()) {
            return List.of();
        }
        return entries.stream()
                .flatMap(entry -> scored(entry, wanted))
                .sorted(Comparator.comparingInt(Scored::score).reversed())
                .map(scored -> scored.entry().hit())
                .toList();
    }

    private record Scored(Entry entry, int score) {}

    private static Stream<Scored> scored(Entry entry, List<String> wanted) {
        int score = entry.score(wanted);
        return score > 0 ? Stream.of(new Scored(entry, score)) : Stream.empty();
    }
}
