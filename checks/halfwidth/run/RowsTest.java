package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.show.WorkedRows;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A few rows of what is computed row by row, each with what it is the row of. */
class RowsTest {
    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = new Bench(Budget.USUAL);
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    /** The lines that show the rows of the last step of some code. */
    private static List<String> rows(String code) {
        try (OpenPage page = bench.open(Bench.page(List.of(), code))) {
            Run run = page.work(Bench.values());
            Run.Ran last = run.steps().get(run.steps().size() - 1);
            return WorkedRows.of(run, last).stream().flatMap(r -> r.text().stream()).toList();
        }
    }

    @Test
    void aRuleOfANumberSaysWhichNumber() {
        assertEquals(
                List.of(
                        "For each n, of 4 rows: n·n − 5",
                        "row 1, the first, n = 0: 0·0 − 5 = -5",
                        "row 4, which gives the result and the last, n = 3: 3·3 − 5 = 4"),
                rows(
                        """
                        import java.util.stream.IntStream;
                        double most = IntStream.range(0, 4).mapToDouble(n -> n * n - 5).max().getAsDouble(); // 1
                        """));
    }

    @Test
    void aRuleOfARecordSaysWhatIsInIt() {
        assertEquals(
                List.of(
                        "For each mark, of 2 rows: 2·along(mark)",
                        "row 1, the first, mark = (name near, along 3): 2·3 = 6",
                        "row 2, which gives the result and the last, mark = (name far, along 5):"
                                + " 2·5 = 10 m"),
                rows(
                        """
                        record Mark(String name, double along) {}
                        List<Mark> marks = List.of(new Mark("near", 3), new Mark("far", 5));
                        double most = marks.stream().mapToDouble(mark -> 2 * mark.along()).max().getAsDouble(); // m
                        """));
    }

    /** A table hands out one object for all its rows. */
    @Test
    void aRuleOfATablesRowSaysWhichRow() {
        assertEquals(
                List.of(
                        "For each row, of 2 rows: 2·getDouble(row, \"x\")",
                        "row 1, the first, row = row 1: 2·3 = 6",
                        "row 2, which gives the result and the last, row = row 2: 2·5 = 10 m"),
                rows(
                        """
                        Table table = Table.create(DoubleColumn.create("x", 3, 5));
                        double most = table.stream().mapToDouble(row -> 2 * row.getDouble("x")).max().getAsDouble(); // m
                        """));
    }

    @Test
    void aTurnOfALoopSaysWhichTurn() {
        assertEquals(
                List.of(
                        "For each i, of 3 rows: added to sum = i/2.0",
                        "row 1, the first, i = 0: added to sum = 0/2.0 = 0",
                        "row 3, farthest from 0 and the last, i = 2: added to sum = 2/2.0 = 1"),
                rows(
                        """
                        double halves(int n) {
                            double sum = 0;
                            for (int i = 0; i < n; i++) {
                                sum += i / 2.0;
                            }
                            return sum;
                        }
                        double all = halves(3); // 1
                        """));
    }
}
