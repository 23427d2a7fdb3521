package halfwidth.method;

import halfwidth.page.Page;
import halfwidth.run.Step;
import java.util.List;
import java.util.Map;

/**
 * The library methods that each step of a page calls. The JDK's compiler resolves the names, so
 * that an overloaded or inherited method is the right one; a method passed by name ({@code
 * CutRow::netCut}) and a constructor count as called.
 */
public final class MethodSources {
    private final Map<Integer, List<MethodSource>> byStep;

    private MethodSources(Map<Integer, List<MethodSource>> byStep) {
        this.byStep = byStep;
    }

    /**
     * Looks a page's calls up. Takes about a second the first time; keep it as long as the page
     * stays the same.
     *
     * @param steps all of the page, those in checks too
     */
    public static MethodSources of(Page page, List<Step> steps) {
        return new MethodSources(CallFinder.calls(PageClass.of(page, steps)));
    }

    /**
     * What a step calls, each once, in the order of the calls. Where an argument fits no method of
     * the name, each of that name is given; a step that cannot be parsed has none.
     */
    public List<MethodSource> calledBy(Step step) {
        return byStep.getOrDefault(step.index(), List.of());
    }
}
