package halfwidth.engine;

import halfwidth.run.Message;
import halfwidth.run.Run;

/** Runs the open page, each time as if for the first time. */
interface Replays {
    /**
     * @param brief whether the values of steps are wanted only as far as they are small
     */
    Run run(Message.Go go, boolean brief);
}
