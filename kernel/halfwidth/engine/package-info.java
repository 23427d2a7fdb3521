/**
 * What runs inside a worker JVM: {@link halfwidth.engine.WorkerMain} compiles a page's statements
 * with JShell, each once, and invokes their compiled entry points in order whenever values change.
 * A run always starts from the state a fresh engine would have. Pages themselves use {@link
 * halfwidth.engine.Agreement} in their checks.
 */
package halfwidth.engine;
