/**
 * How a number is told: the terms of a formula, each with its symbol, its wording and its origin,
 * and the steps that lead from one to the next.
 *
 * <p>It holds no physics. Limits carry their steps, explanations collect them, and tests evaluate
 * every formula as it is written.
 *
 * <pre>{@code
 * for (Step step : Limits.of(board).motorBrake().binding().steps()) {
 *     System.out.println(step.result().symbol() + " = " + step.derivation().formula());
 * }
 * }</pre>
 */
@NullMarked
package brakewright.formula;

import org.jspecify.annotations.NullMarked;
