/**
 * Runs a page: {@code Workshop} hands its steps to a supervised worker JVM, where JShell compiles
 * each of them once and a new value only invokes them again, in order.
 */
package halfwidth.run;
