package halfwidth.job;

import java.util.List;

/**
 * What came of a run of a whole page.
 *
 * @param names what it waits for, where it waits
 */
public record Outcome(Word word, List<String> names) {
    /** The worst that holds, from the first to the last. */
    public enum Word {
        FAILED("failed"),
        WAITING("waiting for"),
        /** Nothing may be done before what an action names is settled. */
        HELD("held"),
        NOT_MET("not met"),
        /** It says what is to be done next. */
        TO_DO("to do"),
        NOT_JUDGED("not judged"),
        MET("met"),
        /** It ran, has no limits to meet and leaves nothing to do. */
        RAN("ran");

        private final String words;

        Word(String words) {
            this.words = words;
        }
    }

    public Outcome {
        names = List.copyOf(names);
    }

    /** An outcome without names. */
    public static Outcome of(Word word) {
        return new Outcome(word, List.of());
    }

    /** For people: {@code met}, or {@code waiting for frequency, cuts}. */
    public String words() {
        return names.isEmpty() ? word.words : word.words + " " + String.join(", ", names);
    }

    /** Reads what {@link #words()} wrote. */
    static Outcome read(String words) {
        for (Word word : Word.values()) {
            if (words.equals(word.words)) {
                return of(word);
            }
            if (words.startsWith(word.words + " ")) {
                String names = words.substring(word.words.length() + 1);
                return new Outcome(word, List.of(names.split(", ")));
            }
        }
        throw new IllegalArgumentException("outcome " + words + " must be one that runs have");
    }
}
