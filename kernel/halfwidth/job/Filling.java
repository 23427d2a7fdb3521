package halfwidth.job;

import halfwidth.page.Filled;
import java.util.List;

/**
 * A page with what a job has for one visit of it.
 *
 * @param filled the values: typed ones before those from other pages, these before defaults
 * @param remarks what could not be taken over and why, and what is to be chosen, in words
 */
public record Filling(Filled filled, List<String> remarks) {
    public Filling {
        remarks = List.copyOf(remarks);
    }
}
