package brakewright.machine;

import brakewright.spec.CurrentBasis;
import brakewright.spec.Motor;

/**
 * One motor, driven with currents of a given basis.
 *
 * <p>With {@code K = 60/(2π·Kv)} and the terminal-to-terminal resistance Rtt:
 *
 * <ul>
 *   <li>phase-peak: {@code kt = (√3/2)·K}, {@code Re = (3/4)·Rtt};
 *   <li>phase-rms: {@code kt = √2·(√3/2)·K}, {@code Re = 2·(3/4)·Rtt}, as the peak is √2 times the
 *       effective value;
 *   <li>dc-equivalent: {@code kt = K}, {@code Re = Rtt}.
 * </ul>
 *
 * <p>Torque is {@code kt·I}, copper loss {@code Re·I²}. For the same torque all bases give the same
 * loss. Kv is read as speed per peak line-to-line volt; a Kv measured from rectified mean voltage
 * lies 4.7 % higher (π/3) and one from its effective value 41 % (√2).
 *
 * <p>Source: torque of a permanent-magnet machine {@code T = (3/2)·p·λ·iq}, amplitude-invariant;
 * the voltage need from the phase equations {@code vd = −ωe·L·iq}, {@code vq = λ·ωe + R·iq}, e.g.
 * Fitzgerald, Kingsley, Umans, Electric Machinery.
 *
 * <p>Assumption: the controller can put the whole supply voltage between two lines (full
 * modulation); dead time and a ceiling on the duty cycle, a few per cent, are left out. The field
 * is never weakened. In the dc-equivalent basis the current is taken to commutate at once, so that
 * the inductance needs no voltage.
 */
public final class MotorModel {

    private final Motor motor;
    private final CurrentBasis basis;
    private final double voltageConstant;
    private final double torqueConstant;
    private final double lossShare;

    /**
     * Makes the model of a motor.
     *
     * @param motor the motor
     * @param basis what its current means
     */
    public MotorModel(Motor motor, CurrentBasis basis) {
        this.motor = motor;
        this.basis = basis;
        this.voltageConstant = 60.0 / (2.0 * Math.PI * motor.kvRpmPerVolt());
        switch (basis) {
            case PHASE_PEAK -> {
                this.torqueConstant = Math.sqrt(3.0) / 2.0 * voltageConstant;
                this.lossShare = 0.75;
            }
            case PHASE_RMS -> {
                this.torqueConstant = basis.phasePeak() * Math.sqrt(3.0) / 2.0 * voltageConstant;
                this.lossShare = 1.5;
            }
            case DC_EQUIVALENT -> {
                this.torqueConstant = voltageConstant;
                this.lossShare = 1.0;
            }
            default -> throw new AssertionError(basis);
        }
    }

    /**
     * Returns the voltage constant.
     *
     * @return K, peak line-to-line back-EMF over angular speed [V·s/rad]
     */
    public double voltageConstant() {
        return voltageConstant;
    }

    /**
     * Returns the torque constant in the basis of the current.
     *
     * @return kt [N·m/A]
     */
    public double torqueConstant() {
        return torqueConstant;
    }

    /**
     * Returns the resistance that turns the square of the current into copper loss.
     *
     * @param temperatureC the winding temperature [°C]
     * @return Re [Ω]
     */
    public double lossResistance(double temperatureC) {
        return lossShare * motor.resistanceAt20C() * Copper.resistanceFactor(temperatureC);
    }

    /**
     * Returns the resistance between two terminals.
     *
     * @param temperatureC the winding temperature [°C]
     * @return Rtt [Ω]
     */
    public double terminalResistance(double temperatureC) {
        return motor.resistanceAt20C() * Copper.resistanceFactor(temperatureC);
    }

    /**
     * What a phase puts in the way of its current at a speed. With the square Z² of its impedance
     * and the product B of back-EMF and resistance the voltage need of a sinusoidal current is
     * {@code V² = 3·Z²·Î² + 6·B·Î + (K·ω)²}.
     *
     * @param impedanceSquare {@code (Rtt/2)² + (p·ω·L)²} [Ω²]
     * @param backEmfTimesResistance {@code K·ω·Rtt/(2·√3)} [V·Ω]
     */
    public record Phase(double impedanceSquare, double backEmfTimesResistance) {}

    /**
     * Returns what a phase puts in the way of its current.
     *
     * @param angularSpeed of the motor [rad/s]
     * @param temperatureC the winding temperature [°C]
     * @return the parts of the voltage need
     */
    public Phase phase(double angularSpeed, double temperatureC) {
        double resistance = terminalResistance(temperatureC);
        double reactance = motor.polePairs() * angularSpeed * motor.inductance();
        return new Phase(
                resistance * resistance / 4.0 + reactance * reactance,
                voltageConstant * angularSpeed * resistance / (2.0 * Math.sqrt(3.0)));
    }

    /**
     * Returns the torque that friction and iron take off the shaft.
     *
     * <p>{@code T0 = K·I0 + c·ω}: the no-load current is a direct current and so counts with K in
     * every basis.
     *
     * @param angularSpeed of the motor [rad/s]
     * @return the drag torque [N·m]
     */
    public double dragTorque(double angularSpeed) {
        return voltageConstant * motor.noLoadCurrent() + motor.viscousDrag() * angularSpeed;
    }

    /**
     * Returns the supply voltage the motor needs to drive at a speed and current.
     *
     * <p>phase-peak: {@code √3·√((λ·ωe + Rtt/2·I)² + (ωe·L·I)²)} with {@code λ = K/(√3·p)} and
     * {@code ωe = p·ω}; phase-rms: the same with {@code √2·I}; dc-equivalent: {@code K·ω + Rtt·I}.
     *
     * @param angularSpeed of the motor [rad/s]
     * @param current in this model's basis [A]
     * @param temperatureC the winding temperature [°C]
     * @return the voltage [V]
     */
    public double voltageNeed(double angularSpeed, double current, double temperatureC) {
        double terminalResistance = terminalResistance(temperatureC);
        if (!basis.isSinusoidal()) {
            return voltageConstant * angularSpeed + terminalResistance * current;
        }
        double peak = basis.phasePeak() * current;
        double electricalSpeed = motor.polePairs() * angularSpeed;
        double inPhase =
                voltageConstant * angularSpeed / Math.sqrt(3.0) + terminalResistance / 2.0 * peak;
        double quadrature = electricalSpeed * motor.inductance() * peak;
        return Math.sqrt(3.0) * Math.hypot(inPhase, quadrature);
    }
}
