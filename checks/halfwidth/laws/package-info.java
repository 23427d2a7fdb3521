/**
 * Laws: tests of what holds for any values of a range. A method marked {@link
 * halfwidth.laws.Law @Law} draws its values and is run many times over, by JUnit and nothing else.
 * A failure names the values and a seed; {@code -Dhalfwidth.seed=} with it repeats that one try.
 */
package halfwidth.laws;
