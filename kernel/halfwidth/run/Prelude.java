package halfwidth.run;

import java.util.List;
import java.util.Set;

/**
 * The imports every page starts with. Few, since each costs time in every compilation; a page may
 * add its own.
 */
public final class Prelude {
    /** The imports, as they stand in Java. */
    public static final List<String> IMPORTS =
            List.of(
                    "import static java.lang.Math.*;",
                    "import static halfwidth.engine.Agreement.agrees;",
                    "import static halfwidth.vocabulary.Requirement.*;",
                    "import java.util.*;",
                    "import tech.tablesaw.api.*;",
                    "import halfwidth.plot.*;",
                    "import halfwidth.vocabulary.Action;");

    /** The names of methods that the imports name one by one, which a page must not replace. */
    public static final Set<String> METHODS = Set.of("agrees");

    private Prelude() {}
}
