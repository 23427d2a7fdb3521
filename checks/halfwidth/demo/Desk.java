package halfwidth.demo;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;

/** Where the crew fills in pages: writes a visit's files, then runs the page on these files. */
final class Desk implements AutoCloseable {
    /** On a busy machine a page may take minutes. */
    private static final Budget PATIENT = new Budget(Duration.ofMinutes(10), 512, 200_000);

    private final Path folder;
    private final Pages pages = new Pages(Path.of("notebooks"));
    private final Workshop workshop = Workshop.withoutSpare(PATIENT);
    private final Map<String, OpenPage> open = new LinkedHashMap<>();
    private final Map<String, Visit> visits = new LinkedHashMap<>();

    Desk(Path folder) {
        this.folder = folder;
    }

    /** Starts a sheet for a page that is visited once. */
    Sheet sheet(String page) {
        return new Sheet(this, page, page);
    }

    /** Starts a sheet for one of several visits of a page. */
    Sheet sheet(String page, String visit) {
        return new Sheet(this, page, page + "/" + visit);
    }

    Visit run(Sheet sheet) {
        Path place = folder.resolve(sheet.place());
        sheet.write(place);
        Page page = pages.find(sheet.page());
        Filled filled = Filled.none(page).withInputs(place.resolve("inputs.csv"));
        for (String table : sheet.tables()) {
            filled = filled.withReadings(table, place.resolve(table + ".csv"));
        }
        OpenPage ready = open.computeIfAbsent(page.name(), name -> workshop.open(Script.of(page)));
        Visit visit = new Visit(sheet.place(), page, ready.run(Values.of(filled)));
        visits.put(sheet.place(), visit);
        return visit;
    }

    Visit visit(String place) {
        return visits.get(place);
    }

    Map<String, Visit> visits() {
        return visits;
    }

    /** Gives the workers of the pages on the desk up; a page is opened anew when it is needed. */
    void clear() {
        open.values().forEach(OpenPage::close);
        open.clear();
    }

    @Override
    public void close() {
        clear();
        workshop.close();
    }
}
