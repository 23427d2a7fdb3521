package halfwidth.web;

import halfwidth.job.Fingerprint;
import halfwidth.method.MethodSources;
import halfwidth.page.Page;
import halfwidth.run.Step;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/**
 * The library methods that pages call, looked up once for each text of a page: the compiler that
 * resolves the calls takes a second and 25 MB at each look.
 */
final class Methods {
    /** All pages of a job, and some that are being changed. */
    private static final int REMEMBERED = 40;

    private final Map<String, MethodSources> known = new LinkedHashMap<>(16, .75f, true);
    private final BiFunction<Page, List<Step>, MethodSources> lookUp;

    Methods() {
        this(MethodSources::of);
    }

    Methods(BiFunction<Page, List<Step>, MethodSources> lookUp) {
        this.lookUp = lookUp;
    }

    /**
     * @param steps all of the page, those in checks too
     */
    synchronized MethodSources of(Page page, List<Step> steps) {
        String text = Fingerprint.of(page.text());
        MethodSources found = known.computeIfAbsent(text, unseen -> lookUp.apply(page, steps));
        if (known.size() > REMEMBERED) {
            known.remove(known.keySet().iterator().next());
        }
        return found;
    }
}
