/**
 * Proves the units of a page's steps. {@link halfwidth.proof.PageProof} has the compiler attribute
 * the page's statements and works each one out with amounts in place of numbers: the units of
 * inputs, columns and comments, and those that the Javadoc of the physics states. A unit that does
 * not follow is refused; what cannot be worked out is left unproved, with the reason.
 */
package halfwidth.proof;
