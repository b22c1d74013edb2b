package brakewright.machine;

import brakewright.numeric.Root;
import brakewright.spec.MotorHeat;
import brakewright.spec.Require;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * The temperatures of a motor's winding and case, from two heat balances that are linear in
 * temperature and therefore solved exactly.
 *
 * <pre>
 * Cw·dTw/dt = Re(Tw)·I² − (Tw − Tc)/Rwc
 * Cc·dTc/dt = (Tw − Tc)/Rwc − (Tc − Ta)/Rca + Pfe
 * </pre>
 *
 * <p>With the copper's resistance rising as {@code Re(Tw) = Re20·(1 + α·(Tw − 20 °C))} the system
 * is {@code z' = A·z + h} for the rises z above the surrounding air. Both off-diagonal elements of
 * A are positive, so its eigenvalues are real and distinct. Where {@code α·Re20·I²·(Rwc + Rca) ≥ 1}
 * no steady state exists: heat grows faster than it can leave.
 *
 * <p>Source: the two-body thermal network in motor makers' data (winding-housing and
 * housing-ambient resistance and time constant), e.g. maxon motor data sheets; the solution is
 * elementary.
 */
public final class WindingHeat {

    private static final double RELATIVE_ACCURACY = 1e-12;
    private static final double ABSOLUTE_ACCURACY = 1e-9;
    private static final double CURRENT_CEILING = 1e6;

    private final MotorHeat heat;
    private final double lossResistanceAt20C;
    private final double airC;
    private final double windingLimitC;
    private final double caseLoss;

    /**
     * Sets up the heat balance.
     *
     * @param heat the thermal figures
     * @param lossResistanceAt20C Re at 20 °C [Ω]
     * @param windingLimitC highest winding temperature [°C]
     * @param airC the surrounding air [°C]
     * @param caseLoss loss that arises outside the winding, in iron and bearings [W]
     */
    public WindingHeat(
            MotorHeat heat,
            double lossResistanceAt20C,
            double windingLimitC,
            double airC,
            double caseLoss) {
        this.heat = heat;
        this.lossResistanceAt20C = lossResistanceAt20C;
        this.windingLimitC = windingLimitC;
        this.airC = airC;
        this.caseLoss = caseLoss;
    }

    /**
     * Temperatures of winding and case.
     *
     * @param windingC [°C]
     * @param caseC [°C]
     */
    public record Temperatures(double windingC, double caseC) {

        /**
         * Returns whether the winding is lost.
         *
         * @return true from the temperature on at which copper melts
         */
        public boolean isMolten() {
            return !(windingC < Copper.MELTING_C);
        }
    }

    /**
     * Returns the highest temperature that the winding bears.
     *
     * @return the winding limit [°C]
     */
    public double windingLimitC() {
        return windingLimitC;
    }

    /**
     * Returns the state of a motor that has stood in the air for long.
     *
     * @return both temperatures at that of the air
     */
    public Temperatures cold() {
        return new Temperatures(airC, airC);
    }

    /**
     * Returns whether a current heats the winding without end.
     *
     * @param current [A]
     * @return true if no steady state exists
     * @throws IllegalArgumentException if the current is NaN
     */
    public boolean runsAway(double current) {
        Require.number("motor current", current, "A");
        return Copper.TEMPERATURE_COEFFICIENT_AT_20_C
                        * lossResistanceAt20C
                        * current
                        * current
                        * (heat.windingToCase() + heat.caseToAir())
                >= 1.0;
    }

    /**
     * Returns the temperatures after a time at a constant current.
     *
     * @param start the temperatures at the beginning
     * @param current [A]
     * @param time [s], not negative
     * @return the temperatures then; of a runaway they may be more than a computer can hold, and no
     *     numbers
     */
    public Temperatures after(Temperatures start, double current, double time) {
        return new Response(start, current).at(time);
    }

    /**
     * Returns the temperatures that a constant current leads to in the end.
     *
     * @param current [A]
     * @return the steady temperatures; empty where the winding runs away
     */
    public Optional<Temperatures> steady(double current) {
        if (runsAway(current)) {
            return Optional.empty();
        }
        double lossAtAir = lossResistanceAt20C * Copper.resistanceFactor(airC) * current * current;
        double lossPerKelvin =
                lossResistanceAt20C * Copper.TEMPERATURE_COEFFICIENT_AT_20_C * current * current;
        double both = heat.windingToCase() + heat.caseToAir();
        double windingRiseK =
                (lossAtAir * both + caseLoss * heat.caseToAir()) / (1.0 - lossPerKelvin * both);
        double copperLoss = lossAtAir + lossPerKelvin * windingRiseK;
        double caseRiseK = (copperLoss + caseLoss) * heat.caseToAir();
        return Optional.of(new Temperatures(airC + windingRiseK, airC + caseRiseK));
    }

    /**
     * Returns the current whose steady state just reaches the winding limit.
     *
     * <p>{@code I = √((Tlim − Ta − Pfe·Rca)/(Re(Tlim)·(Rwc + Rca)))}.
     *
     * @return the continuous current [A]; 0 where the case loss alone reaches the limit
     */
    public double continuousCurrent() {
        double riseK = windingLimitC - airC - caseLoss * heat.caseToAir();
        if (riseK <= 0.0) {
            return 0.0;
        }
        double hotResistance = lossResistanceAt20C * Copper.resistanceFactor(windingLimitC);
        return Math.sqrt(riseK / (hotResistance * (heat.windingToCase() + heat.caseToAir())));
    }

    /**
     * Returns how long a current may flow until the winding reaches its limit.
     *
     * @param start the temperatures at the beginning
     * @param current [A]
     * @return the time [s], 0 if the limit is reached already; empty if it never is
     */
    public OptionalDouble timeToLimit(Temperatures start, double current) {
        return new Response(start, current).timeToReach(windingLimitC - airC);
    }

    /**
     * Returns the highest current that keeps the winding within its limit for a time.
     *
     * @param start the temperatures at the beginning
     * @param time how long it flows [s], positive
     * @return the current [A]; 0 if the winding is too hot already
     */
    public double highestCurrentFor(Temperatures start, double time) {
        double limitRiseK = windingLimitC - airC;
        DoubleUnaryOperator excess =
                current -> new Response(start, current).peakUntil(time) - limitRiseK;
        if (excess.applyAsDouble(0.0) >= 0.0) {
            return 0.0;
        }
        double high = 1.0;
        while (excess.applyAsDouble(high) < 0.0 && high < CURRENT_CEILING) {
            high *= 2.0;
        }
        return Root.between(
                excess,
                high / 2.0 < 1.0 ? 0.0 : high / 2.0,
                high,
                RELATIVE_ACCURACY,
                ABSOLUTE_ACCURACY);
    }

    /**
     * The response to one constant current: {@code z(t) = e^(At)·z0 + ∫e^(Aτ)dτ·h}, written with
     * the projections on the two eigenvectors. The eigenvalue nearer to zero is the determinant
     * over the other, and of the distances of a from both the smaller is bc over the larger:
     * differences of nearly equal numbers would tell little of a very light winding.
     */
    private final class Response {

        private final double windingStartK;
        private final double caseStartK;
        private final double fast;
        private final double slow;
        private final double slowAmplitudeStart;
        private final double fastAmplitudeStart;
        private final double slowAmplitudeDrive;
        private final double fastAmplitudeDrive;
        private final double caseFromSlow;
        private final double caseFromFast;
        private final double current;

        Response(Temperatures start, double current) {
            this.current = current;
            windingStartK = start.windingC() - airC;
            caseStartK = start.caseC() - airC;
            double square = current * current;
            double windingCapacity = heat.windingHeatCapacity();
            double caseCapacity = heat.caseHeatCapacity();
            double between = 1.0 / heat.windingToCase();
            double outward = 1.0 / heat.caseToAir();
            double lossPerKelvin =
                    Copper.TEMPERATURE_COEFFICIENT_AT_20_C * lossResistanceAt20C * square;
            double a = (lossPerKelvin - between) / windingCapacity;
            double b = between / windingCapacity;
            double c = between / caseCapacity;
            double d = -(between + outward) / caseCapacity;
            double windingDrive =
                    lossResistanceAt20C * Copper.resistanceFactor(airC) * square / windingCapacity;
            double caseDrive = caseLoss / caseCapacity;

            double determinant =
                    (between * outward - lossPerKelvin * (between + outward))
                            / (windingCapacity * caseCapacity);
            double mean = (a + d) / 2.0;
            double apart = (a - d) / 2.0;
            double half = Math.sqrt(apart * apart + b * c);
            double farther = mean + Math.copySign(half, mean);
            double nearer = determinant / farther;
            slow = Math.max(farther, nearer);
            fast = Math.min(farther, nearer);
            double more = Math.abs(apart) + half;
            double less = b * c / more;
            double aboveFast = apart >= 0.0 ? more : less;
            double belowSlow = apart >= 0.0 ? less : more;
            double split = 2.0 * half;
            slowAmplitudeStart = (aboveFast * windingStartK + b * caseStartK) / split;
            fastAmplitudeStart = (belowSlow * windingStartK - b * caseStartK) / split;
            slowAmplitudeDrive = (aboveFast * windingDrive + b * caseDrive) / split;
            fastAmplitudeDrive = (belowSlow * windingDrive - b * caseDrive) / split;
            caseFromSlow = belowSlow / b;
            caseFromFast = -aboveFast / b;
        }

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
            return scaled(slowAmplitudeStart, Math.exp(slow * time))
                    + scaled(slowAmplitudeDrive, growth(slow, time));
        }

        private double fastPart(double time) {
            return scaled(fastAmplitudeStart, Math.exp(fast * time))
                    + scaled(fastAmplitudeDrive, growth(fast, time));
        }

        /** What is not there does not grow, however large the factor. */
        private static double scaled(double amplitude, double factor) {
            return amplitude == 0.0 ? 0.0 : amplitude * factor;
        }

        /** ∫₀ᵗ e^(λτ)dτ. */
        private static double growth(double rate, double time) {
            return rate == 0.0 ? time : Math.expm1(rate * time) / rate;
        }

        /**
         * The winding's rise has at most one extremum: where both exponentials of its slope meet.
         */
        private OptionalDouble extremum() {
            double slowSlope = slow * slowAmplitudeStart + slowAmplitudeDrive;
            double fastSlope = fast * fastAmplitudeStart + fastAmplitudeDrive;
            double ratio = -fastSlope / slowSlope;
            if (!(ratio > 1.0) || Double.isInfinite(ratio)) {
                return OptionalDouble.empty();
            }
            return OptionalDouble.of(Math.log(ratio) / (slow - fast));
        }

        double peakUntil(double time) {
            double peak = Math.max(windingStartK, windingRise(time));
            OptionalDouble turn = extremum();
            if (turn.isPresent() && turn.getAsDouble() < time) {
                peak = Math.max(peak, windingRise(turn.getAsDouble()));
            }
            return peak;
        }

        OptionalDouble timeToReach(double riseK) {
            if (Math.max(windingStartK, windingRise(0.0)) >= riseK) {
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
                    steady(current).map(end -> end.windingC() - airC <= riseK).orElse(false);
            if (endsBelow) {
                return OptionalDouble.empty();
            }
            double step = Math.min(-1.0 / fast, 1.0 / Math.abs(slow));
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
                    time -> windingRise(time) - riseK,
                    from,
                    to,
                    RELATIVE_ACCURACY,
                    ABSOLUTE_ACCURACY);
        }
    }
}
