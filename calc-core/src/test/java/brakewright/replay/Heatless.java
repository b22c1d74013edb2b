package brakewright.replay;

import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Motor;
import java.util.Optional;
import java.util.OptionalDouble;

/** A vehicle of whose heat nothing is known, so that windings and cells stay as they are. */
final class Heatless {

    private Heatless() {}

    static Build of(Build build) {
        Motor motor = build.motor();
        return Builds.withCells(
                Builds.withMotor(
                        build,
                        new Motor(
                                motor.kvRpmPerVolt(),
                                motor.resistanceAt20C(),
                                motor.polePairs(),
                                motor.inductance(),
                                motor.noLoadCurrent(),
                                motor.viscousDrag(),
                                motor.currentRating(),
                                motor.windingLimitC(),
                                Optional.empty())),
                Heatless::of);
    }

    private static Cell of(Cell cell) {
        return new Cell(
                cell.capacityAh(),
                cell.dischargeCurrent(),
                cell.chargeCurrent(),
                cell.voltageMax(),
                cell.voltageMin(),
                cell.resistance(),
                cell.openCircuitVoltage(),
                cell.resistanceByCharge(),
                cell.resistanceByTemperature(),
                cell.relaxation(),
                OptionalDouble.empty(),
                cell.charging(),
                cell.discharging(),
                cell.pulse(),
                cell.taperFloor());
    }
}
