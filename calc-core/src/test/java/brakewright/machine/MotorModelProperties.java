package brakewright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.AnyBuild;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Motor;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** The motor model against the instantaneous sum over three sinusoidal phases. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class MotorModelProperties {

    private static final int POINTS = 3600;
    private static final double SUMMED = 1e-6;
    private static final double ROUNDING = 1e-12;

    @Property
    void theSameTorqueCostsTheSameCopperLossInBothBases(
            @ForAll Motor motor,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150.0) double direct,
            @ForAll @Scale(9) @DoubleRange(min = -20.0, max = 150.0) double windingC) {
        MotorModel six = new MotorModel(motor, CurrentBasis.DC_EQUIVALENT);
        MotorModel peak = new MotorModel(motor, CurrentBasis.PHASE_PEAK);
        double phase = six.torqueConstant() * direct / peak.torqueConstant();
        double loss = six.lossResistance(windingC) * direct * direct;
        assertThat(phase).isCloseTo(2.0 / Math.sqrt(3.0) * direct, within(ROUNDING * phase));
        assertThat(peak.lossResistance(windingC) * phase * phase)
                .isCloseTo(loss, within(ROUNDING * loss));
    }

    /** The effective value of a sine is 1/√2 of its peak: told so, the same motor does the same. */
    @Property
    void anEffectiveCurrentIsTheSameMotorToldByLess(
            @ForAll Motor motor,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 800.0) double angularSpeed,
            @ForAll @Scale(9) @DoubleRange(min = -20.0, max = 150.0) double windingC) {
        MotorModel peak = new MotorModel(motor, CurrentBasis.PHASE_PEAK);
        MotorModel effective = new MotorModel(motor, CurrentBasis.PHASE_RMS);
        double less = current / Math.sqrt(2.0);
        double torque = peak.torqueConstant() * current;
        double loss = peak.lossResistance(windingC) * current * current;
        double need = peak.voltageNeed(angularSpeed, current, windingC);
        assertThat(effective.torqueConstant() * less).isCloseTo(torque, within(ROUNDING * torque));
        assertThat(effective.lossResistance(windingC) * less * less)
                .isCloseTo(loss, within(ROUNDING * loss));
        assertThat(effective.voltageNeed(angularSpeed, less, windingC))
                .isCloseTo(need, within(ROUNDING * need));
    }

    @Property(tries = 100)
    void thePowerOfAllPhasesIsTorqueTimesSpeed(
            @ForAll Motor motor,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 1.0, max = 800.0) double angularSpeed) {
        MotorModel model = new MotorModel(motor, CurrentBasis.PHASE_PEAK);
        ThreePhases phases = new ThreePhases(motor, angularSpeed, current);
        double power = model.torqueConstant() * current * angularSpeed;
        assertThat(power).isCloseTo(phases.meanPower(), within(SUMMED * power));
    }

    @Property(tries = 100)
    void theHeatOfAllPhasesIsTheCopperLoss(
            @ForAll Motor motor,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 1.0, max = 800.0) double angularSpeed) {
        MotorModel model = new MotorModel(motor, CurrentBasis.PHASE_PEAK);
        ThreePhases phases = new ThreePhases(motor, angularSpeed, current);
        double loss = model.lossResistance(20.0) * current * current;
        assertThat(loss).isCloseTo(phases.meanCopperLoss(), within(SUMMED * loss));
    }

    /** Over {@value #POINTS} points of a turn a peak is missed by at most half a step, 4e-7. */
    @Property(tries = 100)
    void theVoltageNeedIsThePeakBetweenTwoTerminals(
            @ForAll Motor motor,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 150.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 1.0, max = 800.0) double angularSpeed) {
        MotorModel model = new MotorModel(motor, CurrentBasis.PHASE_PEAK);
        ThreePhases phases = new ThreePhases(motor, angularSpeed, current);
        double need = model.voltageNeed(angularSpeed, current, 20.0);
        assertThat(need).isCloseTo(phases.peakLineToLine(), within(SUMMED * need));
    }

    @Property
    void fasterOrHarderNeverNeedsLessVoltage(
            @ForAll Motor motor,
            @ForAll CurrentBasis basis,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 150.0) double current,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 800.0) double angularSpeed,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 50.0) double more) {
        MotorModel model = new MotorModel(motor, basis);
        double need = model.voltageNeed(angularSpeed, current, 20.0);
        double least = need * (1.0 - ROUNDING);
        assertThat(model.voltageNeed(angularSpeed + more, current, 20.0))
                .isGreaterThanOrEqualTo(least);
        assertThat(model.voltageNeed(angularSpeed, current + more, 20.0))
                .isGreaterThanOrEqualTo(least);
    }

    @Property
    void dragIsThatOfTheFreeCurrentAndGrowsWithSpeed(
            @ForAll Motor motor,
            @ForAll CurrentBasis basis,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 800.0) double angularSpeed) {
        MotorModel model = new MotorModel(motor, basis);
        double expected =
                60.0 / (2.0 * Math.PI * motor.kvRpmPerVolt()) * motor.noLoadCurrent()
                        + motor.viscousDrag() * angularSpeed;
        assertThat(model.dragTorque(angularSpeed)).isCloseTo(expected, within(ROUNDING * expected));
    }

    /** A machine in the time domain: back-EMF and current of each phase are sines in step. */
    private record ThreePhases(Motor motor, double angularSpeed, double current) {

        double meanPower() {
            double sum = 0.0;
            for (int point = 0; point < POINTS; point++) {
                for (int phase = 0; phase < 3; phase++) {
                    sum += backEmf(point, phase) * sine(point, phase) * current;
                }
            }
            return sum / POINTS;
        }

        double meanCopperLoss() {
            double sum = 0.0;
            for (int point = 0; point < POINTS; point++) {
                for (int phase = 0; phase < 3; phase++) {
                    double flowing = sine(point, phase) * current;
                    sum += flowing * flowing * motor.resistanceAt20C() / 2.0;
                }
            }
            return sum / POINTS;
        }

        double peakLineToLine() {
            double peak = 0.0;
            for (int point = 0; point < POINTS; point++) {
                peak = Math.max(peak, voltage(point, 0) - voltage(point, 1));
            }
            return peak;
        }

        /** v = R·i + L·di/dt + e. */
        private double voltage(int point, int phase) {
            double slope = motor.polePairs() * angularSpeed * current * cosine(point, phase);
            return motor.resistanceAt20C() / 2.0 * current * sine(point, phase)
                    + motor.inductance() * slope
                    + backEmf(point, phase);
        }

        /**
         * Between two terminals the peak is √3 times that of a phase, by definition ω·60/(2π·Kv).
         */
        private double backEmf(int point, int phase) {
            double lineToLine = angularSpeed * 60.0 / (2.0 * Math.PI) / motor.kvRpmPerVolt();
            return lineToLine / Math.sqrt(3.0) * sine(point, phase);
        }

        private static double sine(int point, int phase) {
            return Math.sin(2.0 * Math.PI * ((double) point / POINTS - phase / 3.0));
        }

        private static double cosine(int point, int phase) {
            return Math.cos(2.0 * Math.PI * ((double) point / POINTS - phase / 3.0));
        }
    }
}
