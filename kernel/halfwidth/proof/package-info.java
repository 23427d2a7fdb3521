/**
 * Proves the units of a page's steps. {@link halfwidth.proof.PageProof} has the compiler attribute
 * the page's statements and works each one out with amounts in place of numbers: the units of
 * inputs, columns and comments, and those that the Javadoc of the physics states. What a library
 * method does to units is found by its class and signature in {@link halfwidth.proof.KnownMethods};
 * whatever is not there is not proved. A unit that does not follow is refused; what cannot be
 * worked out is left unproved, with the reason.
 */
package halfwidth.proof;
