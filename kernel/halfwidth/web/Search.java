package halfwidth.web;

import halfwidth.job.Visit;
import halfwidth.page.Field;
import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.page.Result;
import halfwidth.show.Html;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Finds pages, fields, tables and results by words in what a person reads there. */
record Search(Notebook notebook) {
    private record Hit(String what, String text, String address) {}

    String html(String words) {
        List<String> wanted =
                Stream.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+"))
                        .filter(word -> !word.isEmpty())
                        .toList();
        List<Hit> hits = new ArrayList<>();
        if (!wanted.isEmpty()) {
            notebook.pages().names().forEach(name -> hits.addAll(within(name, wanted)));
        }
        return Frame.ofJob(notebook.name(), "Find", html -> write(html, words, hits));
    }

    private static void write(Html html, String words, List<Hit> hits) {
        html.open("main", "id", "sheet", "class", "list");
        html.element("h1", "Found for “" + words.strip() + "”");
        if (hits.isEmpty()) {
            html.element("p", "Nothing on any page, field or result has these words.");
        }
        html.open("ul", "class", "hits");
        for (Hit hit : hits) {
            html.open("li").element("a", hit.text(), "href", hit.address());
            html.element("span", hit.what(), "class", "name").close().line();
        }
        html.close().close().line();
    }

    private List<Hit> within(String name, List<String> wanted) {
        Page page;
        try {
            page = notebook.pages().find(name);
        } catch (PageRefused refusal) {
            return List.of(); // its own view says what is wrong with it
        }
        String address = Address.of("/fill", new Visit(name, ""));
        List<Hit> hits = new ArrayList<>();
        hits.add(new Hit("page " + name, page.title(), address));
        for (Field field : page.fields()) {
            String at = address + "#f-" + field.name();
            hits.add(new Hit("field " + field.name() + " of " + page.title(), field.label(), at));
        }
        for (Result result : page.results()) {
            String at = address + "#answers";
            hits.add(
                    new Hit("result " + result.name() + " of " + page.title(), result.label(), at));
        }
        hits.removeIf(hit -> !wanted.stream().allMatch(word -> has(hit, word)));
        return hits;
    }

    private static boolean has(Hit hit, String word) {
        return (hit.text() + " " + hit.what()).toLowerCase(Locale.ROOT).contains(word);
    }
}
