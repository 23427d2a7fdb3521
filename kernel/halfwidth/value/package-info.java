/**
 * What people type and how it is understood: numbers with units, DDM by tone, choices, texts and
 * dates. What is ambiguous is refused, never guessed.
 */
package halfwidth.value;
