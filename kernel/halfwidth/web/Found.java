package halfwidth.web;

import halfwidth.job.Visit;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.search.Hit;
import halfwidth.search.Search;
import halfwidth.show.Html;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What has the words that somebody looks for, with where it leads. */
record Found(Notebook notebook) {

    String html(String words) {
        List<Hit> hits = Search.of(readable()).find(words);
        return Frame.ofJob(notebook, "Find", html -> write(html, words, hits));
    }

    /** A page that cannot be read is not searched; its own view says what is wrong with it. */
    private List<Page> readable() {
        List<Page> pages = new ArrayList<>();
        for (String name : notebook.pages().names()) {
            try {
                pages.add(notebook.pages().find(name));
            } catch (PageRefused refusal) {
                continue;
            }
        }
        return pages;
    }

    private void write(Html html, String words, List<Hit> hits) {
        html.open("main", "id", "sheet", "class", "list");
        html.element("h1", "Found for “" + words.strip() + "”");
        if (hits.isEmpty()) {
            html.element("p", "Nothing on any page, field or result has these words.");
        }
        html.open("ul", "class", "hits");
        hits.forEach(hit -> hit(html, hit));
        html.close().close().line();
    }

    private void hit(Html html, Hit hit) {
        String at =
                switch (hit.kind()) {
                    case FIELD -> "#f-" + hit.name();
                    case RESULT -> "#answers";
                    case READINGS -> "#count-" + hit.name();
                    case PAGE, HEADING -> "";
                };
        String address = notebook.at("/fill", new Visit(hit.page(), "")) + at;
        html.open("li").element("a", hit.text(), "href", address);
        String what = hit.kind().name().toLowerCase(Locale.ROOT) + " of " + hit.title();
        html.element("span", what, "class", "name").close().line();
    }
}
