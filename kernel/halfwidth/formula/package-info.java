/**
 * Formulas as people write them. {@link halfwidth.formula.FormulaReader} reads a step's Java into
 * {@link halfwidth.formula.Term}s and says where to put a note of each number that the step uses;
 * {@link halfwidth.formula.PlainFormula} and {@link halfwidth.formula.MathFormula} write a term,
 * with names or with those numbers put in.
 */
package halfwidth.formula;
