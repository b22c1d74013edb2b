package brakewright.worksheet;

import brakewright.limit.ConstraintId;
import brakewright.limit.PackConstraint;
import brakewright.operation.FirstStop;
import brakewright.operation.TaperReach;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Taper;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What makes the first stop after a full charge safe: first the temperature of the cells, where
 * their window forbids it, then charge, current or taper.
 *
 * @param warmToC the cells must be at least so warm; empty where no cold in use forbids the stop
 *     [°C]
 * @param coolToC the cells must be at most so warm; empty where no heat in use forbids it [°C]
 * @param stop the worst stop that is left once the cells have that temperature; empty where all are
 *     safe then
 * @param isVoltage whether a voltage binds at that stop, and nothing else: then a high-voltage
 *     taper helps
 * @param taper the high-voltage taper that helps; empty where none does
 * @param taperFrom the charge state from which on that taper weakens the brake [1]; empty where it
 *     does at none in use, or there is no such taper
 */
public record FirstStopHelp(
        OptionalDouble warmToC,
        OptionalDouble coolToC,
        Optional<FirstStop> stop,
        boolean isVoltage,
        Optional<Taper> taper,
        OptionalDouble taperFrom) {

    /**
     * Looks for help.
     *
     * @param sheet the vehicle
     * @return the help; without anything where every first stop is safe
     */
    static FirstStopHelp of(Worksheet sheet) {
        OptionalDouble warm = OptionalDouble.empty();
        OptionalDouble cool = OptionalDouble.empty();
        Optional<FirstStop> worst = Optional.empty();
        for (FirstStop stop : sheet.firstStops()) {
            FirstStop left = stop;
            double target = temperature(sheet, stop);
            if (target > stop.cellsC()) {
                warm = OptionalDouble.of(Math.max(target, warm.orElse(target)));
            } else if (target < stop.cellsC()) {
                cool = OptionalDouble.of(Math.min(target, cool.orElse(target)));
            }
            if (target != stop.cellsC()) {
                left = FirstStop.of(sheet.build(), sheet.limits(), sheet.operation(), target);
            }
            if (!left.isSafe() && (worst.isEmpty() || excess(left) > excess(worst.get()))) {
                worst = Optional.of(left);
            }
        }
        boolean isVoltage = worst.filter(stop -> isVoltageAlone(sheet, stop)).isPresent();
        Optional<Taper> taper =
                isVoltage ? sheet.limits().highVoltageTaper().value() : Optional.empty();
        return new FirstStopHelp(
                warm,
                cool,
                worst,
                isVoltage,
                taper,
                taper.isPresent()
                        ? TaperReach.from(sheet.build(), sheet.operation().brake(), taper.get())
                        : OptionalDouble.empty());
    }

    private static double excess(FirstStop stop) {
        return stop.packCurrent() - stop.mayTake();
    }

    /** The nearest temperature at which no cell's window forbids what this stop sends back. */
    private static double temperature(Worksheet sheet, FirstStop stop) {
        return exceeded(sheet, stop).stream()
                .filter(each -> each.id() == ConstraintId.TEMPERATURE_WINDOW)
                .map(each -> temperature(sheet, each, stop))
                .max(Comparator.comparingDouble(each -> Math.abs(each - stop.cellsC())))
                .orElse(stop.cellsC());
    }

    private static double temperature(Worksheet sheet, PackConstraint window, FirstStop stop) {
        ChargingWindow cell = sheet.build().battery().pack(window.pack()).cell().charging();
        if (stop.cellsC() > cell.highestC()) {
            return cell.highestC();
        }
        return stop.packCurrent() <= window.limitAt(stop.charge(), cell.lowestC())
                ? cell.lowestC()
                : cell.lowestC() + cell.coldBandK();
    }

    private static boolean isVoltageAlone(Worksheet sheet, FirstStop stop) {
        return exceeded(sheet, stop).stream().allMatch(PackConstraint::variesWithCharge);
    }

    private static List<PackConstraint> exceeded(Worksheet sheet, FirstStop stop) {
        return sheet.limits().packRegen().constraints().stream()
                .filter(each -> stop.packCurrent() > each.limitAt(stop.charge(), stop.cellsC()))
                .toList();
    }
}
