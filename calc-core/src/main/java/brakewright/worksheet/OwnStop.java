package brakewright.worksheet;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import java.util.OptionalDouble;

/**
 * The stop of either side from its own highest speed, on level dry road.
 *
 * @param charge the charge state at its beginning [1]
 * @param distance from the moment the brakes act [m]; empty where it does not stop
 */
public record OwnStop(double charge, Both<OptionalDouble> distance) {

    static OwnStop at(double charge, Both<Worksheet> sheets) {
        return new OwnStop(charge, sheets.map(sheet -> distance(sheet, charge)));
    }

    /**
     * Returns by how much the proposal shortens the stop.
     *
     * @return the difference [m], negative where it lengthens it; empty where either does not stop
     */
    public OptionalDouble gain() {
        return distance.present().isPresent() && distance.proposed().isPresent()
                ? OptionalDouble.of(
                        distance.present().getAsDouble() - distance.proposed().getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble distance(Worksheet sheet, double charge) {
        StopOutcome outcome =
                new Stop(sheet.build(), sheet.operation().brake(), Surroundings.of(sheet.build()))
                        .from(sheet.operation().topSpeed(), charge);
        return outcome instanceof StopOutcome.Stopped stopped
                ? OptionalDouble.of(stopped.distance())
                : OptionalDouble.empty();
    }
}
