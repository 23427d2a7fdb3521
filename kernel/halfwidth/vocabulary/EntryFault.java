package halfwidth.vocabulary;

/** A page's refusal of what was entered, with the field or cell that it concerns. */
public final class EntryFault extends IllegalArgumentException {
    private final transient EntryPlace place;

    EntryFault(EntryPlace place, String message) {
        super(message);
        this.place = place;
    }

    /** The field or cell. */
    public EntryPlace place() {
        return place;
    }
}
