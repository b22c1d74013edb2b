package brakewright.machine;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.spec.MotorHeat;
import brakewright.spec.Require;
import brakewright.spec.Unit;
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
     * By how much winding and case are warmer than the air.
     *
     * @param windingK [K]
     * @param caseK [K]
     */
    public record Rises(double windingK, double caseK) {}

    /**
     * Returns the highest temperature that the winding bears.
     *
     * @return the winding limit [°C]
     */
    public double windingLimitC() {
        return windingLimitC;
    }

    /**
     * Returns by how much the winding may be warmer than the air.
     *
     * @return the rise [K]
     */
    public double limitRiseK() {
        return windingLimitC - airC;
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
        Require.number("motor current", current, Unit.AMPERE);
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
        return response(start, current).at(time);
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
        return Optional.of(temperatures(balance(current)));
    }

    /**
     * Returns the rises at which a constant current would change nothing any more.
     *
     * @param current [A]
     * @return the rises; where the winding runs away that of the winding is negative, and no start
     *     leads there
     */
    public Rises balance(double current) {
        double lossAtAir = lossResistanceAt20C * Copper.resistanceFactor(airC) * current * current;
        double lossPerKelvin =
                lossResistanceAt20C * Copper.TEMPERATURE_COEFFICIENT_AT_20_C * current * current;
        double both = heat.windingToCase() + heat.caseToAir();
        double windingRiseK =
                (lossAtAir * both + caseLoss * heat.caseToAir()) / (1.0 - lossPerKelvin * both);
        double copperLoss = lossAtAir + lossPerKelvin * windingRiseK;
        return new Rises(windingRiseK, (copperLoss + caseLoss) * heat.caseToAir());
    }

    /**
     * Returns how winding and case answer to a constant current.
     *
     * @param start the temperatures at the beginning
     * @param current [A]
     * @return the response
     */
    public WindingResponse response(Temperatures start, double current) {
        return new WindingResponse(
                this,
                current,
                WindingRates.of(heat, lossResistanceAt20C, current),
                start,
                lossResistanceAt20C
                        * Copper.resistanceFactor(airC)
                        * (current * current)
                        / heat.windingHeatCapacity(),
                caseLoss / heat.caseHeatCapacity());
    }

    /**
     * Returns the temperatures that rises stand for.
     *
     * @param rises above the air
     * @return of winding and case
     */
    public Temperatures temperatures(Rises rises) {
        return new Temperatures(airC + rises.windingK(), airC + rises.caseK());
    }

    /**
     * Returns how much warmer than the air winding and case are.
     *
     * @param temperatures of both
     * @return their rises
     */
    public Rises rises(Temperatures temperatures) {
        return new Rises(temperatures.windingC() - airC, temperatures.caseC() - airC);
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
        return response(start, current).timeToReach(limitRiseK());
    }

    /**
     * Returns the highest current that keeps the winding within its limit for a time.
     *
     * @param start the temperatures at the beginning
     * @param time how long it flows [s], positive
     * @return the current [A]; 0 if the winding is too hot already
     */
    public double highestCurrentFor(Temperatures start, double time) {
        double limitRiseK = limitRiseK();
        DoubleUnaryOperator excess =
                current -> response(start, current).peakUntil(time) - limitRiseK;
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
                Accuracy.INNERMOST,
                Accuracy.MODEL);
    }
}
