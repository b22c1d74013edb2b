package brakewright.worksheet;

import brakewright.machine.WindingHeat;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import java.util.OptionalDouble;

/**
 * How long a motor must rest after it has reached its winding limit, until it bears another pull.
 * The longer the rest, the longer the next pull; a cold motor bears the longest.
 *
 * @param pulling the heat balance in motion
 * @param resting the heat balance at rest
 * @param current of the pull [A]
 * @param pull how long it is to last [s]
 */
record Recovery(WindingHeat pulling, WindingHeat resting, double current, double pull) {

    /** Assumption: our own choice; rest of more than some months is no rest. */
    private static final double LONGEST = 1e7;

    /**
     * Finds the rest.
     *
     * @param cold how long the current is borne from cold [s]
     * @return the rest [s]; empty where the pull is not borne even from cold
     */
    OptionalDouble after(double cold) {
        if (cold <= pull) {
            return OptionalDouble.empty();
        }
        double caseC = pulling.after(pulling.cold(), current, cold).caseC();
        WindingHeat.Temperatures hot = new WindingHeat.Temperatures(pulling.windingLimitC(), caseC);
        if (shortfall(hot, 0.0) <= 0.0) {
            return OptionalDouble.of(0.0);
        }
        double longest = 1.0;
        while (shortfall(hot, longest) > 0.0) {
            longest *= 2.0;
            if (longest > LONGEST) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(
                Root.between(rest -> shortfall(hot, rest), 0.0, longest, Accuracy.MODEL));
    }

    private double shortfall(WindingHeat.Temperatures hot, double rest) {
        return pull
                - pulling.timeToLimit(resting.after(hot, 0.0, rest), current).orElse(pull + 1.0);
    }
}
