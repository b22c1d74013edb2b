package brakewright.machine;

import brakewright.machine.WindingHeat.Rises;
import brakewright.machine.WindingHeat.Temperatures;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import java.util.OptionalDouble;

/**
 * How winding and case answer to one constant current: {@code z(t) = e^(Mt)·z0 + ∫e^(Mτ)dτ·h},
 * written with the projections on the two eigenvectors.
 */
public final class WindingResponse {

    private final WindingHeat heat;
    private final double current;
    private final WindingRates rates;
    private final Rises start;
    private final double airC;
    private final double slowAmplitudeStart;
    private final double fastAmplitudeStart;
    private final double slowAmplitudeDrive;
    private final double fastAmplitudeDrive;
    private final double caseFromSlow;
    private final double caseFromFast;

    /** With the two parts of h [K/s]. */
    WindingResponse(
            WindingHeat heat,
            double current,
            WindingRates rates,
            Temperatures start,
            double windingDrive,
            double caseDrive) {
        this.heat = heat;
        this.current = current;
        this.rates = rates;
        this.start = heat.rises(start);
        this.airC = heat.cold().caseC();
        slowAmplitudeStart = rates.slowly(this.start.windingK(), this.start.caseK());
        fastAmplitudeStart = rates.fastly(this.start.windingK(), this.start.caseK());
        slowAmplitudeDrive = rates.slowly(windingDrive, caseDrive);
        fastAmplitudeDrive = rates.fastly(windingDrive, caseDrive);
        caseFromSlow = rates.belowSlow() / rates.windingByCase();
        caseFromFast = -rates.aboveFast() / rates.windingByCase();
    }

    /**
     * The two parts of the winding's rise about its balance z: {@code z + slow·e^(l_s·t) +
     * fast·e^(l_f·t)}.
     *
     * @param slow that changes slowly [K]
     * @param fast that changes fast [K]
     */
    public record Amplitudes(double slow, double fast) {}

    /**
     * Returns how fast the rises change.
     *
     * @return the rates
     */
    public WindingRates rates() {
        return rates;
    }

    /**
     * Returns where nothing would change any more, see {@link WindingHeat#balance}.
     *
     * @return the rises
     */
    public Rises balance() {
        return heat.balance(current);
    }

    /**
     * Returns the parts of the winding's rise at the beginning, counted from its balance.
     *
     * @return both amplitudes
     */
    public Amplitudes amplitudes() {
        Rises balance = balance();
        double winding = start.windingK() - balance.windingK();
        double slow = rates.slowly(winding, start.caseK() - balance.caseK());
        return new Amplitudes(slow, winding - slow);
    }

    /**
     * Returns whether the slow part changes the winding more than the fast one.
     *
     * @param time since the beginning [s]
     * @return true if it does
     */
    public boolean isRuledSlowly(double time) {
        Amplitudes parts = amplitudes();
        return Math.abs(parts.slow() * rates.slow() * Math.exp(rates.slow() * time))
                >= Math.abs(parts.fast() * rates.fast() * Math.exp(rates.fast() * time));
    }

    /**
     * Returns the rises after a time, by the parts about the balance.
     *
     * @param time [s], not negative
     * @return both rises
     */
    public Rises risesAt(double time) {
        Amplitudes parts = amplitudes();
        Rises balance = balance();
        double slow = parts.slow() * Math.exp(rates.slow() * time);
        double fast = parts.fast() * Math.exp(rates.fast() * time);
        return new Rises(
                balance.windingK() + slow + fast,
                balance.caseK() + caseFromSlow * slow + caseFromFast * fast);
    }

    /**
     * Returns the rise of the winding that just becomes a given one after a time.
     *
     * @param riseK that it becomes [K]
     * @param time until then [s]
     * @param caseK rise of the case at the beginning [K]
     * @return that of the winding at the beginning, with the growths over the time
     */
    public Beforehand before(double riseK, double time, double caseK) {
        Rises balance = balance();
        double slow = rates.slow();
        double fast = rates.fast();
        double a = rates.windingByItself();
        double slowGrowth = Math.exp(slow * time);
        double fastGrowth = Math.exp(fast * time);
        double value =
                balance.windingK()
                        + ((riseK - balance.windingK()) * (slow - fast)
                                        - rates.windingByCase()
                                                * (caseK - balance.caseK())
                                                * (slowGrowth - fastGrowth))
                                / ((a - fast) * slowGrowth - (a - slow) * fastGrowth);
        return new Beforehand(value, slowGrowth, fastGrowth);
    }

    /**
     * What leads to a rise.
     *
     * @param windingK rise of the winding at the beginning [K]
     * @param slowGrowth {@code e^(l_s·t)} [1]
     * @param fastGrowth {@code e^(l_f·t)} [1]
     */
    public record Beforehand(double windingK, double slowGrowth, double fastGrowth) {}

    Temperatures at(double time) {
        double slowPart = slowPart(time);
        double fastPart = fastPart(time);
        return new Temperatures(
                airC + slowPart + fastPart,
                airC + caseFromSlow * slowPart + caseFromFast * fastPart);
    }

    private double windingRise(double time) {
        return slowPart(time) + fastPart(time);
    }

    private double slowPart(double time) {
        return scaled(slowAmplitudeStart, Math.exp(rates.slow() * time))
                + scaled(slowAmplitudeDrive, WindingRates.growth(rates.slow(), time));
    }

    private double fastPart(double time) {
        return scaled(fastAmplitudeStart, Math.exp(rates.fast() * time))
                + scaled(fastAmplitudeDrive, WindingRates.growth(rates.fast(), time));
    }

    /** What is not there does not grow, however large the factor. */
    private static double scaled(double amplitude, double factor) {
        return amplitude == 0.0 ? 0.0 : amplitude * factor;
    }

    /** The winding's rise has at most one extremum: where both exponentials of its slope meet. */
    private OptionalDouble extremum() {
        double slowSlope = rates.slow() * slowAmplitudeStart + slowAmplitudeDrive;
        double fastSlope = rates.fast() * fastAmplitudeStart + fastAmplitudeDrive;
        double ratio = -fastSlope / slowSlope;
        if (!(ratio > 1.0) || Double.isInfinite(ratio)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.log(ratio) / (rates.slow() - rates.fast()));
    }

    double peakUntil(double time) {
        double peak = Math.max(start.windingK(), windingRise(time));
        OptionalDouble turn = extremum();
        if (turn.isPresent() && turn.getAsDouble() < time) {
            peak = Math.max(peak, windingRise(turn.getAsDouble()));
        }
        return peak;
    }

    OptionalDouble timeToReach(double riseK) {
        if (Math.max(start.windingK(), windingRise(0.0)) >= riseK) {
            return OptionalDouble.of(0.0);
        }
        double from = 0.0;
        OptionalDouble turn = extremum();
        if (turn.isPresent()) {
            if (windingRise(turn.getAsDouble()) >= riseK) {
                return OptionalDouble.of(crossing(riseK, 0.0, turn.getAsDouble()));
            }
            from = turn.getAsDouble();
        }
        boolean endsBelow =
                heat.steady(current).map(end -> end.windingC() - airC <= riseK).orElse(false);
        if (endsBelow) {
            return OptionalDouble.empty();
        }
        double step = Math.min(-1.0 / rates.fast(), 1.0 / Math.abs(rates.slow()));
        double to = from + step;
        while (windingRise(to) < riseK) {
            from = to;
            step *= 2.0;
            to += step;
            if (Double.isInfinite(to)) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(crossing(riseK, from, to));
    }

    private double crossing(double riseK, double from, double to) {
        return Root.between(
                time -> windingRise(time) - riseK, from, to, Accuracy.INNERMOST, Accuracy.MODEL);
    }
}
