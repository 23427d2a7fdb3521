package halfwidth.command;

import picocli.CommandLine.TypeConversionException;

/**
 * A field and what is typed into it.
 *
 * @param typed may be empty or hold further equals signs
 */
record Assignment(String field, String typed) {

    /** From {@code name=value}. */
    static Assignment of(String option) {
        int equals = option.indexOf('=');
        if (equals < 1) {
            throw new TypeConversionException(
                    "'" + option + "' has no name or no equals sign; type it as in target=0.5");
        }
        return new Assignment(option.substring(0, equals).strip(), option.substring(equals + 1));
    }
}
