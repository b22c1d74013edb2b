package brakewright.spec;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the controllers are told. An empty value is one that is not set.
 *
 * @param motorDriveCurrent per motor, in the controllers' current basis [A], not negative
 * @param motorBrakeCurrent per motor, in the controllers' current basis [A], not negative
 * @param packDischargeCurrent per controller [A], not negative
 * @param packRegenCurrent per controller [A], not negative
 * @param lowVoltageTaper fades the drive as the pack empties; begins above its end
 * @param highVoltageTaper fades the electric brake as the pack fills; begins below its end
 * @param speedCap [m/s], positive
 */
public record Settings(
        OptionalDouble motorDriveCurrent,
        OptionalDouble motorBrakeCurrent,
        OptionalDouble packDischargeCurrent,
        OptionalDouble packRegenCurrent,
        Optional<Taper> lowVoltageTaper,
        Optional<Taper> highVoltageTaper,
        OptionalDouble speedCap) {

    /** Nothing is set. */
    public static final Settings NONE =
            new Settings(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty());

    /**
     * Validates the settings.
     *
     * @throws IllegalArgumentException if a number is outside its range or a taper runs the wrong
     *     way
     */
    public Settings {
        Require.notNegative("motor drive current", motorDriveCurrent, Unit.AMPERE);
        Require.notNegative("motor brake current", motorBrakeCurrent, Unit.AMPERE);
        Require.notNegative("pack discharge current", packDischargeCurrent, Unit.AMPERE);
        Require.notNegative("pack regen current", packRegenCurrent, Unit.AMPERE);
        if (lowVoltageTaper.isPresent()) {
            Taper low = lowVoltageTaper.get();
            Require.ascending(
                    "low-voltage taper, end to begin", low.ends(), low.begins(), Unit.VOLT);
        }
        if (highVoltageTaper.isPresent()) {
            Taper high = highVoltageTaper.get();
            Require.ascending(
                    "high-voltage taper, begin to end", high.begins(), high.ends(), Unit.VOLT);
        }
        Require.positive("speed cap", speedCap, Unit.METRE_PER_SECOND);
    }

    /**
     * Returns these settings with what another set leaves empty kept, and the rest replaced.
     *
     * @param other the settings that take precedence
     * @return the combined settings
     */
    public Settings overlaidBy(Settings other) {
        return new Settings(
                first(other.motorDriveCurrent, motorDriveCurrent),
                first(other.motorBrakeCurrent, motorBrakeCurrent),
                first(other.packDischargeCurrent, packDischargeCurrent),
                first(other.packRegenCurrent, packRegenCurrent),
                other.lowVoltageTaper.or(() -> lowVoltageTaper),
                other.highVoltageTaper.or(() -> highVoltageTaper),
                first(other.speedCap, speedCap));
    }

    /**
     * Returns these settings with another motor drive current.
     *
     * @param value per motor [A], not negative
     * @return a changed copy
     */
    public Settings withMotorDriveCurrent(double value) {
        return new Settings(
                OptionalDouble.of(value),
                motorBrakeCurrent,
                packDischargeCurrent,
                packRegenCurrent,
                lowVoltageTaper,
                highVoltageTaper,
                speedCap);
    }

    /**
     * Returns these settings with another motor brake current.
     *
     * @param value per motor [A], not negative
     * @return a changed copy
     */
    public Settings withMotorBrakeCurrent(double value) {
        return new Settings(
                motorDriveCurrent,
                OptionalDouble.of(value),
                packDischargeCurrent,
                packRegenCurrent,
                lowVoltageTaper,
                highVoltageTaper,
                speedCap);
    }

    /**
     * Returns these settings with another pack discharge current.
     *
     * @param value per controller [A], not negative
     * @return a changed copy
     */
    public Settings withPackDischargeCurrent(double value) {
        return new Settings(
                motorDriveCurrent,
                motorBrakeCurrent,
                OptionalDouble.of(value),
                packRegenCurrent,
                lowVoltageTaper,
                highVoltageTaper,
                speedCap);
    }

    /**
     * Returns these settings with another pack regen current.
     *
     * @param value per controller [A], not negative
     * @return a changed copy
     */
    public Settings withPackRegenCurrent(double value) {
        return new Settings(
                motorDriveCurrent,
                motorBrakeCurrent,
                packDischargeCurrent,
                OptionalDouble.of(value),
                lowVoltageTaper,
                highVoltageTaper,
                speedCap);
    }

    private static OptionalDouble first(OptionalDouble preferred, OptionalDouble fallback) {
        return preferred.isPresent() ? preferred : fallback;
    }

    /**
     * Returns these settings with another low voltage taper.
     *
     * @param replacement the taper that fades the drive; empty for none
     * @return a changed copy
     */
    public Settings withLowVoltageTaper(Optional<Taper> replacement) {
        return new Settings(
                motorDriveCurrent,
                motorBrakeCurrent,
                packDischargeCurrent,
                packRegenCurrent,
                replacement,
                highVoltageTaper,
                speedCap);
    }

    /**
     * Returns these settings with another high voltage taper.
     *
     * @param replacement the taper that fades regen; empty for none
     * @return a changed copy
     */
    public Settings withHighVoltageTaper(Optional<Taper> replacement) {
        return new Settings(
                motorDriveCurrent,
                motorBrakeCurrent,
                packDischargeCurrent,
                packRegenCurrent,
                lowVoltageTaper,
                replacement,
                speedCap);
    }

    /**
     * Returns these settings with another speed cap.
     *
     * @param replacement the cap [m/s]; empty for none
     * @return a changed copy
     */
    public Settings withSpeedCap(OptionalDouble replacement) {
        return new Settings(
                motorDriveCurrent,
                motorBrakeCurrent,
                packDischargeCurrent,
                packRegenCurrent,
                lowVoltageTaper,
                highVoltageTaper,
                replacement);
    }
}
