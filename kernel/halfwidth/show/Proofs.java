package halfwidth.show;

import halfwidth.run.Run;

/** How many of a page's numeric steps have a unit that was proved. */
public final class Proofs {
    private Proofs() {}

    /** In words, as in {@code 24 of 26 numeric steps}; of a run that kept its workings. */
    public static String words(Run run) {
        long proved = run.worked().values().stream().filter(one -> one.proof().proved()).count();
        return "%s of %s".formatted(proved, Counted.of(run.worked().size(), "numeric step"));
    }
}
