package halfwidth.bounds;

import java.util.List;

/**
 * Why classes compiled from one statement are not to be loaded.
 *
 * @param calls what they use that a page may not, in the order of the code, such as {@code
 *     java.nio.file.Files.write}
 * @param className the class in which the first of them stands
 * @param line the line of that class's source where it stands; -1 where no line is known
 * @param advice what a page does instead
 */
public record Refusal(List<String> calls, String className, int line, String advice) {
    public Refusal {
        calls = List.copyOf(calls);
    }
}
