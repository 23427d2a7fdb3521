package halfwidth.web;

import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.page.PageRefused;
import halfwidth.show.Html;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** All pages in the order of the job with their visits, and how each of them stands in words. */
record Overview(Notebook notebook, Html html) {

    void write() {
        html.open("header").element("h1", "The job");
        html.open("dl", "class", "heading");
        notebook.job().heading().forEach(this::fact);
        html.close();
        Stream.concat(notebook.job().warnings().stream(), notebook.job().notices().stream())
                .forEach(warning -> html.element("p", warning, "class", "warning"));
        if (!notebook.job().isWritable()) {
            html.element("p", "This job is open to read only.", "class", "warning");
        }
        html.close().line();
        html.open("main", "id", "sheet", "class", "list");
        Map<Visit, Standing> standings = notebook.standings();
        String stage = null;
        for (String name : notebook.pages().names()) {
            String folder = name.contains("/") ? name.substring(0, name.indexOf('/')) : "";
            if (!folder.equals(stage)) {
                if (stage != null) {
                    html.close().close();
                }
                open(folder);
                stage = folder;
            }
            page(name, standings);
        }
        if (stage != null) {
            html.close().close();
        }
        html.close().line();
    }

    private void fact(String name, String value) {
        html.open("div").element("dt", name).element("dd", value).close();
    }

    private void open(String stage) {
        String title =
                stage.isEmpty()
                        ? "Others"
                        : Character.toUpperCase(stage.charAt(0)) + stage.substring(1);
        html.element("h2", title);
        html.open("table", "class", "pages").open("thead").open("tr");
        for (String head : List.of("Page", "How it stands")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
    }

    private void page(String name, Map<Visit, Standing> standings) {
        List<Visit> visits =
                standings.keySet().stream().filter(visit -> visit.page().equals(name)).toList();
        Visit plain = new Visit(name, "");
        boolean single = visits.isEmpty() || visits.equals(List.of(plain));
        html.open("tr").open("th", "scope", "row");
        if (single) {
            html.element("a", title(name), "href", notebook.at("/fill", plain));
        } else {
            html.text(title(name));
        }
        html.element("span", name, "class", "name");
        if (notebook.adapted().adapted(name)) {
            html.element("span", "the job’s own copy", "class", "small");
        }
        html.close();
        html.open("td");
        if (single) {
            standing(plain, standings.get(plain));
        } else {
            html.open("ul", "class", "visits");
            for (Visit visit : visits) {
                String named = visit.name().isEmpty() ? "without a name" : visit.name();
                html.open("li").element("a", named, "href", notebook.at("/fill", visit)).text(" ");
                standing(visit, standings.get(visit));
                html.close();
            }
            html.close();
        }
        html.close().close().line();
    }

    private void standing(Visit visit, Standing standing) {
        Marks.standing(html, standing == null ? "not started" : notebook.words(standing, visit));
        if (standing != null) {
            notebook.job()
                    .next(visit, standing)
                    .ifPresent(next -> html.element("span", next, "class", "why"));
        }
        if (standing != null && !standing.because().isEmpty()) {
            html.element("span", String.join("; ", standing.because()), "class", "why");
        }
        if (standing != null) {
            boolean back = !standing.approval().sentBack().isEmpty();
            standing.approval()
                    .words()
                    .forEach(
                            words ->
                                    html.element(
                                            "span", words, "class", back ? "why back" : "why"));
        }
    }

    private String title(String name) {
        try {
            return notebook.pages().find(name).title();
        } catch (PageRefused refusal) {
            return name + " (its file cannot be read)";
        }
    }
}
