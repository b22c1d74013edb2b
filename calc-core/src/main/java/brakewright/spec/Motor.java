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
}
