package halfwidth.web;

import halfwidth.job.Change;
import halfwidth.job.Fact;
import halfwidth.job.Fingerprint;
import halfwidth.job.Line;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.show.Counted;
import halfwidth.show.Html;
import halfwidth.show.HtmlSheet;
import halfwidth.show.ResultsCsv;
import halfwidth.show.Sheet;
import halfwidth.show.Traced;
import halfwidth.spreadsheet.CsvFor;
import halfwidth.spreadsheet.SpreadsheetFile;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the fill-in view asks for and sends. */
record FillAnswers(Notebook notebook) {
    /** More remarks than this are folded away, so that they do not push the sheet down. */
    private static final int FEW = 2;

    /** Of more values than this only how many is told. */
    private static final int MANY = 6;

    private static final DateTimeFormatter WHEN =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    /** The whole page, with what is known without computing. */
    Reply page(Request request, Visit visit) {
        Scene scene = notebook.scene(visit, Notebook.Effort.NONE, List.of());
        String parts = parts(scene);
        return Reply.html(
                Frame.ofVisit(
                        notebook,
                        "/fill",
                        visit,
                        html -> {
                            hands(html, visit);
                            html.trusted(parts);
                        }));
    }

    /** The other visits of this page, a new one, and the last entry taken back. */
    private void hands(Html html, Visit visit) {
        html.open("section", "class", "hands", "aria-label", "Visits");
        List<Visit> visits =
                notebook.job().visits().stream()
                        .filter(other -> other.page().equals(visit.page()))
                        .filter(other -> !other.equals(visit))
                        .toList();
        for (Visit other : visits) {
            String name = other.name().isEmpty() ? "the sheet without a name" : other.name();
            html.element("a", name, "href", notebook.at("/fill", other));
        }
        html.open("form", "method", "get");
        html.open("label").text("Another sheet, named ");
        html.single("input", "type", "text", "name", "visit", "required", "required");
        html.close().element("button", "Begin").close();
        html.element("button", "Take the last entry back", "type", "button", "data-do", "undo");
        html.close().line();
    }

    /** The sheet as it is now; nothing if the window has just that. */
    Reply parts(Request request, Visit visit) {
        boolean first = request.form().find("first").isPresent();
        Notebook.Effort effort = first ? Notebook.Effort.ANEW : Notebook.Effort.ONCE;
        String parts = parts(notebook.scene(visit, effort, List.of()));
        String seen = request.form().find("seen").orElse("");
        return !seen.isEmpty() && parts.contains(seen) ? Reply.nothing() : Reply.html(parts);
    }

    private String parts(Scene scene) {
        return parts(scene, "");
    }

    /**
     * The sheet.
     *
     * @param told what is to be told besides; it is no part of what a window compares
     */
    private String parts(Scene scene, String told) {
        Html content = new Html();
        new FillView(scene, content).write();
        Html html = new Html();
        String hash = Fingerprint.of(content.toString());
        html.open("div", "id", "parts", "data-hash", hash, "data-told", told);
        html.open("section", "aria-label", "How it stands", "id", "stands", "data-part", "");
        html.open("p", "class", "stands").text("This sheet: ");
        Marks.standing(html, scene.standing());
        html.close();
        new SentBackNotes(scene, html).open("/fill");
        remarks(html, scene.remarks());
        html.close();
        return html.trusted(content.toString()).close().toString();
    }

    private static void remarks(Html html, List<String> remarks) {
        if (remarks.size() <= FEW) {
            remarks.forEach(remark -> html.element("p", remark, "class", "remark"));
            return;
        }
        html.open("details", "class", "remark");
        String summary = remarks.size() + " remarks on the values, the first: " + remarks.get(0);
        html.element("summary", summary);
        remarks.forEach(remark -> html.element("p", remark));
        html.close();
    }

    /** Enters what was typed, and answers with the sheet that comes of it. */
    Reply enter(Request request, Visit visit) {
        List<Trouble> troubles = notebook.enter(visit, changes(request.form()));
        return Reply.html(parts(notebook.scene(visit, Notebook.Effort.ONCE, troubles)));
    }

    private static List<Change> changes(Form form) {
        List<Change> changes = new ArrayList<>();
        List<Place> places = places(form, "typed", "seen");
        for (int i = 0; i < places.size(); i++) {
            Change change = Change.to(places.get(i), form.all("typed").get(i));
            changes.add(change.seeing(form.all("seen").get(i)));
        }
        return changes;
    }

    /** The places that a form names, with as many values of each of these kinds. */
    private static List<Place> places(Form form, String... kinds) {
        List<String> names = form.all("name");
        for (String list : Stream.concat(Stream.of("row", "column"), Stream.of(kinds)).toList()) {
            if (form.all(list).size() != names.size()) {
                throw new Refusal(400, "There must be as many values of " + list + " as names.");
            }
        }
        return IntStream.range(0, names.size())
                .mapToObj(
                        i -> place(names.get(i), form.all("row").get(i), form.all("column").get(i)))
                .toList();
    }

    private static Place place(String name, String row, String column) {
        if (!row.matches("\\d{1,6}")) {
            throw new Refusal(400, "The row " + row + " must be a whole number.");
        }
        return new Place(name, Integer.parseInt(row), column);
    }

    /** How something would be understood, which is not entered yet. */
    Reply read(Request request, Visit visit) {
        Form form = request.form();
        Place place = place(form.get("name"), form.get("row"), form.get("column"));
        return Reply.text(
                200, Entering.understood(notebook.page(visit.page()), place, form.get("typed")));
    }

    /** Enters a table from the bytes of a file, unless it is no longer what the window shows. */
    Reply load(Request request, Visit visit) {
        Page page = notebook.page(visit.page());
        String table = request.form().get("table");
        Filled before = notebook.job().filled(page, visit.name()).filled();
        SpreadsheetFile file =
                SpreadsheetFile.of(request.form().get("file"), request.form().bytes("bytes"));
        Filled after = before.withReadings(table, file);
        Map<Place, String> seen = new HashMap<>();
        List<Place> places = places(request.form(), "seen");
        for (int i = 0; i < places.size(); i++) {
            seen.put(places.get(i), request.form().all("seen").get(i));
        }
        notebook.job().keep(after, visit.name(), seen);
        return Reply.html(
                parts(notebook.scene(visit, Notebook.Effort.ONCE, List.of()), loaded(file)));
    }

    /** What was decided in reading a file; "" if nothing was. */
    private static String loaded(SpreadsheetFile file) {
        return file.remarks().isEmpty()
                ? ""
                : "Loaded: %s.".formatted(String.join(", ", file.remarks()));
    }

    /**
     * What would be taken back on this visit: the number that tells it from others, how many values
     * it is, and in words, each on a line; nothing if there is nothing.
     */
    Reply last(Request request, Visit visit) {
        List<Line> last = notebook.job().lastEntered(Optional.of(visit));
        if (last.isEmpty()) {
            return Reply.nothing();
        }
        Line first = last.get(0);
        return Reply.text(
                200,
                "%s\n%s\n%s entered together %s by %s: %s"
                        .formatted(
                                first.number(),
                                last.size(),
                                Counted.of(last.size(), "value"),
                                WHEN.format(first.time()),
                                first.who(),
                                words(last)));
    }

    /** Takes it back, if it is what the window asked about. */
    Reply undo(Request request, Visit visit) {
        List<Line> undone = notebook.job().undo(visit, request.form().number("first"));
        return Reply.html(
                parts(
                        notebook.scene(visit, Notebook.Effort.ONCE, List.of()),
                        "Taken back: " + words(undone)));
    }

    private static String words(List<Line> lines) {
        String words =
                lines.stream()
                        .limit(MANY)
                        .map(FillAnswers::words)
                        .collect(Collectors.joining("; "));
        return lines.size() <= MANY
                ? words
                : "%s; and %s more".formatted(words, lines.size() - MANY);
    }

    private static String words(Line line) {
        if (line.fact() instanceof Fact.Value value) {
            String typed = value.typed() + value.reason();
            return value.place() + (typed.isEmpty() ? " blank" : " = " + typed);
        }
        Fact.Choice choice = (Fact.Choice) line.fact();
        return choice.input() + " from the visit " + choice.from();
    }

    Reply stop(Request request, Visit visit) {
        notebook.stop(visit.page());
        return Reply.nothing();
    }

    Reply progress(Request request, Visit visit) {
        return notebook.progress(visit.page())
                .map(words -> Reply.text(200, words))
                .orElseGet(Reply::nothing);
    }

    private Scene asked(Request request, Visit visit, Notebook.Effort effort) {
        return request.query().find("with").filter("example"::equals).isPresent()
                ? notebook.example(visit, effort)
                : notebook.scene(visit, effort, List.of());
    }

    Reply plot(Request request, Visit visit) {
        int step = request.query().number("step");
        Filled filled = asked(request, visit, Notebook.Effort.ONCE).sheet().filled();
        return Reply.of("image/png", notebook.draw(filled, step, Desk.ON_SCREEN));
    }

    Reply csv(Request request, Visit visit) {
        String table = request.query().get("table");
        Scene scene = asked(request, visit, Notebook.Effort.ONCE);
        String name = visit.page() + "-" + visit.name() + "-" + table + ".csv";
        return Reply.file(name, "text/csv; charset=utf-8", ReadingsCsv.of(scene, table));
    }

    /** The results as CSV: for a spreadsheet, with decimal commas where it is asked so. */
    Reply results(Request request, Visit visit) {
        boolean commas = request.query().find("decimal").filter("comma"::equals).isPresent();
        Traced traced = notebook.traced(asked(request, visit, Notebook.Effort.ONCE));
        String csv = ResultsCsv.of(traced, commas ? CsvFor.DECIMAL_COMMA : CsvFor.DECIMAL_POINT);
        String name = visit.page() + "-" + visit.name() + "-results.csv";
        return Reply.file(name, "text/csv; charset=utf-8", csv.getBytes(StandardCharsets.UTF_8));
    }

    /** The sheet that stands alone, to be printed and kept. */
    Reply record(Request request, Visit visit) {
        Scene scene = asked(request, visit, Notebook.Effort.WORKED);
        Sheet drawn =
                scene.sheet()
                        .drawn(step -> notebook.draw(scene.sheet().filled(), step, Desk.ON_PAPER));
        String html = HtmlSheet.of(drawn);
        return Reply.html(html).withPolicy(HtmlSheet.policy(html));
    }
}
