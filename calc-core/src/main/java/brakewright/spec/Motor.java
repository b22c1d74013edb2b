package brakewright.spec;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One motor: a permanent-magnet machine with three phases.
 *
 * @param kvRpmPerVolt no-load speed per volt between terminals, peak of the line-to-line voltage
 *     [rpm/V], positive
 * @param resistanceAt20C between two terminals at 20 °C [Ω], positive
 * @param polePairs magnet pole pairs, at least one
 * @param inductance of one phase, half of what is measured between two terminals [H], not negative
 * @param noLoadCurrent current that turns the motor unloaded [A], not negative
 * @param viscousDrag part of the drag torque that grows with speed [N·m·s/rad], not negative
 * @param currentRating the maker's continuous current, in the controller's current basis [A]; empty
 *     where none is given
 * @param windingLimitC highest winding temperature [°C], from 40 to 250
 * @param heat the thermal figures; empty where they are not known
 */
public record Motor(
        double kvRpmPerVolt,
        double resistanceAt20C,
        int polePairs,
        double inductance,
        double noLoadCurrent,
        double viscousDrag,
        OptionalDouble currentRating,
        double windingLimitC,
        Optional<MotorHeat> heat) {

    /**
     * Validates the motor.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Motor {
        Require.positive("motor Kv", kvRpmPerVolt, Unit.RPM_PER_VOLT);
        Require.positive("motor resistance", resistanceAt20C, Unit.OHM);
        Require.atLeastOne("pole pairs", polePairs);
        Require.notNegative("motor inductance", inductance, Unit.HENRY);
        Require.notNegative("no-load current", noLoadCurrent, Unit.AMPERE);
        Require.notNegative("viscous drag", viscousDrag, Unit.NEWTON_METRE_SECOND_PER_RADIAN);
        Require.positive("motor current rating", currentRating, Unit.AMPERE);
        Require.within("winding limit", windingLimitC, 40.0, 250.0, Unit.CELSIUS);
    }

    /**
     * Returns this motor with another winding.
     *
     * @param replacement no-load speed per volt [rpm/V], positive
     * @return a changed copy
     */
    public Motor withKvRpmPerVolt(double replacement) {
        Copy copy = new Copy(this);
        copy.kvRpmPerVolt = replacement;
        return copy.made();
    }

    /**
     * Returns this motor with another resistance.
     *
     * @param replacement between two terminals at 20 °C [Ω], positive
     * @return a changed copy
     */
    public Motor withResistanceAt20C(double replacement) {
        Copy copy = new Copy(this);
        copy.resistanceAt20C = replacement;
        return copy.made();
    }

    /**
     * Returns this motor with another current without load.
     *
     * @param replacement [A], not negative
     * @return a changed copy
     */
    public Motor withNoLoadCurrent(double replacement) {
        Copy copy = new Copy(this);
        copy.noLoadCurrent = replacement;
        return copy.made();
    }

    /**
     * Returns this motor with another drag that grows with speed.
     *
     * @param replacement [N·m·s/rad], not negative
     * @return a changed copy
     */
    public Motor withViscousDrag(double replacement) {
        Copy copy = new Copy(this);
        copy.viscousDrag = replacement;
        return copy.made();
    }

    /**
     * Returns this motor with another rating.
     *
     * @param replacement the maker's continuous current [A]; empty where none is given
     * @return a changed copy
     */
    public Motor withCurrentRating(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.currentRating = replacement;
        return copy.made();
    }

    /**
     * Returns this motor with other thermal figures.
     *
     * @param replacement the figures; empty where they are not known
     * @return a changed copy
     */
    public Motor withHeat(Optional<MotorHeat> replacement) {
        Copy copy = new Copy(this);
        copy.heat = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private double kvRpmPerVolt;
        private double resistanceAt20C;
        private final int polePairs;
        private final double inductance;
        private double noLoadCurrent;
        private double viscousDrag;
        private OptionalDouble currentRating;
        private final double windingLimitC;
        private Optional<MotorHeat> heat;

        Copy(Motor from) {
            this.kvRpmPerVolt = from.kvRpmPerVolt;
            this.resistanceAt20C = from.resistanceAt20C;
            this.polePairs = from.polePairs;
            this.inductance = from.inductance;
            this.noLoadCurrent = from.noLoadCurrent;
            this.viscousDrag = from.viscousDrag;
            this.currentRating = from.currentRating;
            this.windingLimitC = from.windingLimitC;
            this.heat = from.heat;
        }

        Motor made() {
            return new Motor(
                    kvRpmPerVolt,
                    resistanceAt20C,
                    polePairs,
                    inductance,
                    noLoadCurrent,
                    viscousDrag,
                    currentRating,
                    windingLimitC,
                    heat);
        }
    }
}
