package brakewright.heat;

import brakewright.braking.BrakesInMotion;
import brakewright.limit.MotorHeatBalance;
import brakewright.machine.Copper;
import brakewright.machine.MotorModel;
import brakewright.spec.Build;
import brakewright.spec.MotorHeat;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Winding and case of one motor, warmed step by step by the library's integrator: the two heat
 * balances of the design, written down once more.
 */
final class TwoBodies {

    private static final double ACCURACY = 1e-10;

    /** Slower than this the vehicle stands [m/s]. */
    private static final double STANDING = 1e-6;

    private final MotorHeat heat;
    private final double resistance;
    private final double airC;
    private final double caseLoss;
    private final double[] temperatures;
    private double hottest;

    private TwoBodies(MotorHeat heat, double resistance, double airC, double caseLoss) {
        this.heat = heat;
        this.resistance = resistance;
        this.airC = airC;
        this.caseLoss = caseLoss;
        this.temperatures = new double[] {airC, airC};
        this.hottest = airC;
    }

    /** A cold motor whose thermal figures are known. */
    static TwoBodies of(Build build) {
        return new TwoBodies(
                build.motor().heat().orElseThrow(),
                new MotorModel(build.motor(), build.controllers().basis()).lossResistance(20.0),
                build.use().climate().ambientC(),
                MotorHeatBalance.caseLoss(build, build.use().speedMax()));
    }

    /** The hottest winding at the end of anything so far [°C]. */
    double hottest() {
        return hottest;
    }

    /** A current for a time. */
    void warm(double current, double seconds) {
        warm(time -> current, seconds);
    }

    private void warm(DoubleUnaryOperator current, double seconds) {
        integrate(
                (time, state, rates) -> rise(current.applyAsDouble(time), state, rates),
                0.0,
                temperatures,
                seconds);
        hottest = Math.max(hottest, temperatures[0]);
    }

    /** A stop with the brake current as it flows: over time until built up, then over speed. */
    void stop(BrakesInMotion brakes, double speed, double charge) {
        double buildUp = 0.2;
        double[] state = {temperatures[0], temperatures[1], speed, charge};
        integrate(
                (time, now, rates) -> {
                    BrakesInMotion.Moment moment = brakes.at(now[2], now[3], time / buildUp);
                    rise(moment.motorCurrent(), now, rates);
                    rates[2] = -moment.deceleration();
                    rates[3] = moment.chargeRate();
                },
                0.0,
                state,
                buildUp);
        double[] bySpeed = {state[0], state[1], state[3]};
        integrate(
                (here, now, rates) -> {
                    BrakesInMotion.Moment moment = brakes.at(here, now[2], 1.0);
                    rise(moment.motorCurrent(), now, rates);
                    rates[2] = moment.chargeRate();
                    for (int i = 0; i < rates.length; i++) {
                        rates[i] /= -moment.deceleration();
                    }
                },
                state[2],
                bySpeed,
                STANDING);
        temperatures[0] = bySpeed[0];
        temperatures[1] = bySpeed[1];
        hottest = Math.max(hottest, temperatures[0]);
    }

    private void rise(double current, double[] now, double[] rates) {
        double between = (now[0] - now[1]) / heat.windingToCase();
        double copper = resistance * Copper.resistanceFactor(now[0]) * current * current;
        rates[0] = (copper - between) / heat.windingHeatCapacity();
        rates[1] =
                (between - (now[1] - airC) / heat.caseToAir() + caseLoss) / heat.caseHeatCapacity();
    }

    private interface Rates {

        void write(double place, double[] state, double[] rates);
    }

    private static void integrate(Rates rates, double from, double[] state, double to) {
        new DormandPrince853Integrator(1e-12, 1e3, ACCURACY, ACCURACY)
                .integrate(
                        new FirstOrderDifferentialEquations() {
                            @Override
                            public int getDimension() {
                                return state.length;
                            }

                            @Override
                            public void computeDerivatives(
                                    double place, double[] now, double[] slope) {
                                rates.write(place, now, slope);
                            }
                        },
                        from,
                        state,
                        to,
                        state);
    }
}
