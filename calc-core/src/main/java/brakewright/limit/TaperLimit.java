package brakewright.limit;

import brakewright.numeric.Rounding;
import brakewright.spec.Taper;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A recommended taper: where it must have ended, and how wide it must be.
 *
 * @param id which taper
 * @param ends the bounds on the pack voltage at which nothing is left; the low-voltage taper must
 *     end at or above the greatest, the high-voltage taper at or below the least
 * @param band the narrowest band [V], as a constraint
 */
public record TaperLimit(LimitId id, List<Constraint> ends, Constraint band) {

    /** Copies the bounds. */
    public TaperLimit {
        ends = List.copyOf(ends);
    }

    /**
     * Returns the bound that decides where the taper ends.
     *
     * @return the constraint
     */
    public Constraint binding() {
        Comparator<Constraint> byVoltage = Comparator.comparingDouble(Constraint::limit);
        return id == LimitId.LOW_VOLTAGE_TAPER
                ? ends.stream().max(byVoltage).orElseThrow()
                : ends.stream().min(byVoltage).orElseThrow();
    }

    /**
     * Returns the recommended taper.
     *
     * @return the taper; empty where no current is permitted that it could fade, or no band above
     *     zero volts is wide enough
     */
    public Optional<Taper> value() {
        double end = binding().limit();
        double begin = id == LimitId.LOW_VOLTAGE_TAPER ? end + band.limit() : end - band.limit();
        return begin > 0.0 && end > 0.0 && begin != end
                ? Optional.of(new Taper(begin, end))
                : Optional.empty();
    }

    /**
     * Returns whether a taper ends where it must.
     *
     * @param taper the taper that is set
     * @return true if it ends at the recommended voltage or on its safe side
     */
    public boolean endsInTime(Taper taper) {
        double end = binding().limit();
        return id == LimitId.LOW_VOLTAGE_TAPER ? taper.ends() >= end : taper.ends() <= end;
    }

    /**
     * Returns whether a taper is wide enough.
     *
     * @param taper the taper that is set
     * @return true if its band is at least the narrowest
     */
    public boolean isWideEnough(Taper taper) {
        return taper.band() >= (1.0 - Rounding.OF_A_RESULT) * band.limit();
    }
}
