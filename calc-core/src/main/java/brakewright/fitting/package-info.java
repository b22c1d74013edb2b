/**
 * What the build file should say from now on, by a recorded ride.
 *
 * <p>The entry class is {@link brakewright.fitting.Fits}. Each value stands with its doubt and the
 * number of events that it rests on, or it is refused with the reason. What is not fitted is taken
 * as the vehicle is described: a wrong mass or efficiency ends in rolling resistance and drag.
 *
 * <pre>{@code
 * RecordedRows rows = RecordedRows.of("log", new double[] {0.0, 1.0, 2.0})   // s
 *         .with(Quantity.WHEEL_SPEED, new double[] {0.0, 2.0, 4.0});         // m/s
 * Repairs repairs = new Repairs();
 * Optional<Ride> ride = Ride.of(rows.recorded(repairs), 1.0, 0.0, repairs);  // s, m
 * for (Fit fit : ride.map(ridden -> Fits.of(board, ridden).all()).orElse(List.of())) {
 *     String said = fit instanceof Fit.Found found ? found.value() + " ± " + found.doubt() : "";
 * }
 * }</pre>
 */
@NullMarked
package brakewright.fitting;

import org.jspecify.annotations.NullMarked;
