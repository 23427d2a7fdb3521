package halfwidth.web;

import halfwidth.job.Visit;
import halfwidth.show.Html;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What stands around every view: the document, the way back to all pages, the other views. */
final class Frame {
    /** The three ways of looking at a sheet, and the sheet as it is kept. */
    private static final Map<String, String> VIEWS =
            new java.util.TreeMap<>(
                    Map.of(
                            "/fill", "Fill in",
                            "/adapt", "Adapt",
                            "/review", "Review",
                            "/record", "Record"));

    private final Html html = new Html();
    private final Notebook notebook;
    private final String title;

    private Frame(Notebook notebook, String title) {
        this.notebook = notebook;
        this.title = title;
    }

    /** A page about the whole job. */
    static String ofJob(Notebook notebook, String title, Consumer<Html> content) {
        Frame frame = new Frame(notebook, title);
        frame.open("job", List.of());
        frame.bar();
        frame.html.close();
        content.accept(frame.html);
        return frame.closed();
    }

    /**
     * A view of a visit.
     *
     * @param view its address, as in {@code /fill}
     */
    static String ofVisit(Notebook notebook, String view, Visit visit, Consumer<Html> content) {
        String name = visit.toString();
        Frame frame = new Frame(notebook, name);
        frame.open(view.substring(1), List.of(visit.page(), visit.name()));
        frame.bar();
        frame.views(view, visit);
        frame.html.close();
        frame.telling();
        content.accept(frame.html);
        frame.neighbours(notebook.pages().names(), visit.page());
        return frame.closed();
    }

    /** Where modules tell how long work stands and what went wrong. */
    private void telling() {
        html.open("section", "aria-label", "Messages", "class", "telling");
        html.element("p", "", "class", "notice", "id", "notice", "role", "status");
        html.open("div", "class", "busy", "id", "busy", "hidden", "hidden");
        html.element("p", "", "role", "status");
        html.element("button", "Stop", "type", "button").close().close().line();
    }

    private void open(String view, List<String> visit) {
        html.trusted("<!DOCTYPE html>\n").open("html", "lang", "en").open("head");
        html.single("meta", "charset", "utf-8");
        html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.single("meta", "name", "color-scheme", "content", "light dark");
        html.element("title", title + " – " + notebook.name());
        html.single("link", "rel", "icon", "href", own("mark.svg"));
        html.single("link", "rel", "stylesheet", "href", own("sheet.css"));
        html.single("link", "rel", "stylesheet", "href", own("screen.css"));
        if (view.equals("review")) {
            html.single("link", "rel", "stylesheet", "href", own("difference.css"));
        }
        if (view.equals("adapt")) {
            html.single("link", "rel", "stylesheet", "href", own("editor.css"));
        }
        if (List.of("fill", "adapt", "review", "job").contains(view)) {
            html.element("script", "", "type", "module", "src", own(view + ".js"));
        }
        html.close().line();
        String[] attributes = {
            "class", "screen " + view, "data-job", notebook.key(), "data-root", notebook.root()
        };
        html.open(
                "body",
                visit.isEmpty()
                        ? attributes
                        : Marks.with(
                                attributes, "data-page", visit.get(0), "data-visit", visit.get(1)));
        html.element("a", "To the sheet", "class", "skip", "href", "#sheet");
        html.open("div", "class", "bar", "role", "navigation", "aria-label", "Notebook").line();
    }

    private String own(String file) {
        return notebook.root() + "/own/" + file;
    }

    private void bar() {
        html.element("a", notebook.name(), "href", notebook.root() + "/", "class", "home");
        html.open("form", "action", notebook.root() + "/find", "role", "search");
        html.single(
                "input",
                "type",
                "search",
                "name",
                "words",
                "aria-label",
                "Find pages, fields and results",
                "placeholder",
                "Find");
        html.close().line();
    }

    private void views(String current, Visit visit) {
        html.open("ul", "class", "views-of");
        for (String view : List.of("/fill", "/adapt", "/review", "/record")) {
            html.open("li");
            String[] link = {"href", notebook.at(view, visit)};
            html.element(
                    "a",
                    VIEWS.get(view),
                    current.equals(view) || current.equals("/text") && view.equals("/adapt")
                            ? Marks.with(link, "aria-current", "page")
                            : link);
            html.close();
        }
        html.close().line();
    }

    private void neighbours(List<String> names, String page) {
        int at = names.indexOf(page);
        html.open("nav", "class", "neighbours", "aria-label", "Before and after");
        if (at > 0) {
            neighbour("Before: ", names.get(at - 1));
        }
        if (at >= 0 && at + 1 < names.size()) {
            neighbour("After: ", names.get(at + 1));
        }
        html.close().line();
    }

    private void neighbour(String words, String page) {
        html.element("a", words + page, "href", notebook.at("/fill", new Visit(page, "")));
    }

    private String closed() {
        html.close().close().line();
        return html.toString();
    }
}
