/**
 * The math behind a step: {@link halfwidth.method.MethodSources} tells which methods of the physics
 * library a step calls, with their source and what is written about them.
 */
package halfwidth.method;
