package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Controllers;
import brakewright.spec.Input;
import brakewright.spec.Margins;
import brakewright.spec.Protection;
import brakewright.spec.PulseRating;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Collects what limits the current of a pack, from the parts that are described. */
final class PackConstraints {

    private final Build build;
    private final PackModel model;
    private final Cell cell;
    private final Margins margins;
    private final Protection protection;

    PackConstraints(Build build) {
        this.build = build;
        this.model = new PackModel(build.pack());
        this.cell = build.pack().cell();
        this.margins = build.margins();
        this.protection = build.pack().protection();
    }

    PackLimit taking() {
        List<PackConstraint> all = new ArrayList<>();
        CellRating rating = chargeRating();
        all.add(rating);
        all.add(
                new CellCeiling(
                        ConstraintId.VOLTAGE_CEILING,
                        model,
                        cell.voltageMax(),
                        0.0,
                        Input.CELL_VOLTAGE_MAX));
        protection
                .cellOvervoltageTrip()
                .ifPresent(
                        trip ->
                                all.add(
                                        new CellCeiling(
                                                ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                                                model,
                                                trip,
                                                margins.overvoltage(),
                                                Input.PROTECTION_OVERVOLTAGE_TRIP)));
        addTrip(
                all,
                ConstraintId.PROTECTION_CHARGE_TRIP,
                protection.chargeTrip(),
                Input.PROTECTION_CHARGE_TRIP);
        all.add(
                new ControllerVoltage(
                        model, build.controllers().voltageRating(), margins.controllerVoltage()));
        addParts(all);
        all.add(
                new TemperatureWindow(
                        rating, cell.charging()::shareAt, Input.CELL_CHARGE_TEMPERATURE));
        return PackLimit.taking(all, cell.openCircuitVoltage(), cell.resistanceByCharge());
    }

    PackLimit giving() {
        List<PackConstraint> all = new ArrayList<>();
        CellRating rating = dischargeRating();
        all.add(rating);
        all.add(
                new CellFloor(
                        ConstraintId.VOLTAGE_FLOOR,
                        model,
                        cell.voltageMin(),
                        0.0,
                        Input.CELL_VOLTAGE_MIN));
        protection
                .cellUndervoltageTrip()
                .ifPresent(
                        trip ->
                                all.add(
                                        new CellFloor(
                                                ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP,
                                                model,
                                                trip,
                                                margins.overvoltage(),
                                                Input.PROTECTION_UNDERVOLTAGE_TRIP)));
        addTrip(
                all,
                ConstraintId.PROTECTION_DISCHARGE_TRIP,
                protection.dischargeTrip(),
                Input.PROTECTION_DISCHARGE_TRIP);
        addParts(all);
        all.add(
                new TemperatureWindow(
                        rating,
                        temperature -> cell.discharging().contains(temperature) ? 1.0 : 0.0,
                        Input.CELL_DISCHARGE_TEMPERATURE));
        return PackLimit.giving(all, cell.openCircuitVoltage(), cell.resistanceByCharge());
    }

    /** A maker's pulse rating counts where braking is over before the pulse may last. */
    private CellRating chargeRating() {
        OptionalDouble pulse =
                cell.pulse()
                        .filter(each -> build.use().effort().hardBrake() <= each.time())
                        .map(PulseRating::chargeCurrent)
                        .orElse(OptionalDouble.empty());
        return pulse.isPresent()
                ? new CellRating(
                        ConstraintId.CELL_CHARGE_RATING,
                        model,
                        pulse.getAsDouble(),
                        Input.CELL_CHARGE_PULSE)
                : new CellRating(
                        ConstraintId.CELL_CHARGE_RATING,
                        model,
                        cell.chargeCurrent(),
                        Input.CELL_CHARGE_CURRENT);
    }

    private CellRating dischargeRating() {
        OptionalDouble pulse =
                cell.pulse()
                        .filter(each -> build.use().effort().hardPull() <= each.time())
                        .map(PulseRating::dischargeCurrent)
                        .orElse(OptionalDouble.empty());
        return pulse.isPresent()
                ? new CellRating(
                        ConstraintId.CELL_DISCHARGE_RATING,
                        model,
                        pulse.getAsDouble(),
                        Input.CELL_DISCHARGE_PULSE)
                : new CellRating(
                        ConstraintId.CELL_DISCHARGE_RATING,
                        model,
                        cell.dischargeCurrent(),
                        Input.CELL_DISCHARGE_CURRENT);
    }

    private void addTrip(
            List<PackConstraint> all, ConstraintId id, OptionalDouble trip, Input input) {
        trip.ifPresent(
                value ->
                        all.add(
                                new PartRating(
                                        id, value, 1, margins.trip(), input, Input.MARGINS_TRIP)));
    }

    private void addParts(List<PackConstraint> all) {
        Controllers controllers = build.controllers();
        all.add(
                new PartRating(
                        ConstraintId.CONTROLLER_PACK_RATING,
                        controllers.packCurrentRating(),
                        controllers.count(),
                        margins.rating(),
                        Input.CONTROLLER_PACK_CURRENT_RATING,
                        Input.MARGINS_RATING));
        Wiring wiring = build.pack().wiring();
        wiring.fuseRating()
                .ifPresent(
                        value ->
                                all.add(
                                        new PartRating(
                                                ConstraintId.MAIN_FUSE,
                                                value,
                                                1,
                                                margins.fuse(),
                                                Input.WIRING_FUSE,
                                                Input.MARGINS_FUSE)));
        addPart(all, ConstraintId.MAIN_WIRE, wiring.wireAmpacity(), Input.WIRING_WIRE_AMPACITY);
        addPart(all, ConstraintId.MAIN_PLUG, wiring.plugRating(), Input.WIRING_PLUG_RATING);
    }

    private void addPart(
            List<PackConstraint> all, ConstraintId id, OptionalDouble rating, Input input) {
        rating.ifPresent(
                value ->
                        all.add(
                                new PartRating(
                                        id,
                                        value,
                                        1,
                                        margins.rating(),
                                        input,
                                        Input.MARGINS_RATING)));
    }
}
