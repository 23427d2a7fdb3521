package halfwidth.value;

import java.io.Serializable;

/**
 * One entry as typed and as understood.
 *
 * @param typed exactly what was typed
 * @param value {@code Double} (in the field's unit), {@code Integer}, {@code String} or {@code
 *     LocalDate}, by the field's kind
 * @param understood how it is read back to the person, with its unit, as in {@code 0.155 DDM (155
 *     in the 150)}
 */
public record Entry(String typed, Serializable value, String understood) {}
