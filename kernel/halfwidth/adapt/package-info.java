/**
 * Changing a page for one job: {@link halfwidth.adapt.Draft} puts what an engineer typed in the
 * place of a step or a block and tells what is wrong with it, {@link halfwidth.adapt.AdaptedPages}
 * keeps the copy in the job folder, and {@link halfwidth.adapt.Difference} sets it beside the page
 * as shipped.
 */
package halfwidth.adapt;
