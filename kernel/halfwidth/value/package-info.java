/**
 * What people type and how it is understood: {@link halfwidth.value.Entry} reads numbers with their
 * {@link halfwidth.value.Unit}, DDM by tone, choices, texts and dates. What is ambiguous is
 * refused, never guessed.
 */
package halfwidth.value;
