/**
 * What the build file should say from now on, by a recorded ride.
 *
 * <p>The entry class is {@link brakewright.fitting.Fits}. Each value stands with its doubt and the
 * number of events that it rests on, or it is refused with the reason. What is not fitted is taken
 * as the vehicle is described: a wrong mass or efficiency ends in rolling resistance and drag.
 *
 * <pre>{@code
 * Recording recording = new Recording(
 *         List.of(Piece.of("log", new int[] {2, 3},
 *                 Map.of(Quantity.TIME, new double[] {0.0, 1.0}))), List.of(), 1.5);
 * Optional<Ride> ride = Ride.of(recording, 2.0, 0.0, new Repairs());   // s, m
 * for (Fit fit : ride.map(ridden -> Fits.of(board, ridden).all()).orElse(List.of())) {
 *     String said = fit instanceof Fit.Found found ? found.value() + " ± " + found.doubt() : "";
 * }
 * }</pre>
 */
@NullMarked
package brakewright.fitting;

import org.jspecify.annotations.NullMarked;
