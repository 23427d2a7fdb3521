package halfwidth.show;

import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.util.Base64;

/** Where the picture of a plot is to be had. */
@FunctionalInterface
public interface Pictures {
    /** In the sheet itself, so that it stands alone. */
    Pictures WITHIN =
            (step, picture) ->
                    picture.png().length == 0
                            ? ""
                            : "data:image/png;base64,"
                                    + Base64.getEncoder().encodeToString(picture.png());

    /** The address of a step's picture; "" if there is none and its description must do. */
    String source(Step step, Shown.Picture picture);
}
