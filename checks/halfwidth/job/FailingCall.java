package halfwidth.job;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Makes one call to a disk fail, or all from it on. */
final class FailingCall implements DiskCalls {
    private static final Set<Kind> TAKING_SPACE =
            Set.of(Kind.OPEN, Kind.WRITE, Kind.FORCE, Kind.MOVE, Kind.CREATE_FOLDER);

    /** In what way. */
    enum Fault {
        NO_SPACE,
        NO_SPACE_FROM_THERE_ON,
        ERROR,
        ERROR_FROM_THERE_ON,
        HALF_A_WRITE,
        HALF_A_WRITE_THEN_NO_SPACE,
        OUT_OF_MEMORY;

        /** Whether a call of this kind may fail so. */
        boolean strikes(Kind kind) {
            return switch (this) {
                case NO_SPACE, NO_SPACE_FROM_THERE_ON -> TAKING_SPACE.contains(kind);
                case HALF_A_WRITE, HALF_A_WRITE_THEN_NO_SPACE -> kind == Kind.WRITE;
                default -> true;
            };
        }

        private boolean stays() {
            return this == NO_SPACE_FROM_THERE_ON || this == ERROR_FROM_THERE_ON;
        }
    }

    private final Fault fault;
    private final int number;
    private final List<Kind> calls = new ArrayList<>();

    /**
     * @param number the call's, from 1
     */
    FailingCall(Fault fault, int number) {
        this.fault = fault;
        this.number = number;
    }

    /** Every call so far. */
    List<Kind> calls() {
        return calls;
    }

    @Override
    public Reach before(Kind kind, Path path) throws IOException {
        calls.add(kind);
        boolean now = fault.stays() ? calls.size() >= number : calls.size() == number;
        if (!now || !fault.strikes(kind)) {
            return Reach.ALL;
        }
        return switch (fault) {
            case NO_SPACE, NO_SPACE_FROM_THERE_ON -> throw new IOException("No space left");
            case ERROR, ERROR_FROM_THERE_ON -> throw new IOException("Input/output error");
            case HALF_A_WRITE -> Reach.HALF;
            case HALF_A_WRITE_THEN_NO_SPACE -> Reach.HALF_THEN_FAILS;
            case OUT_OF_MEMORY -> throw new OutOfMemoryError("as if");
        };
    }
}
