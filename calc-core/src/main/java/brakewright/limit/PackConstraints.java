package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Cell;
import brakewright.spec.Effort;
import brakewright.spec.Input;
import brakewright.spec.Margins;
import brakewright.spec.Protection;
import brakewright.spec.PulseRating;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Collects what limits the current of one pack, from its parts that are described. */
final class PackConstraints {

    private final PackModel model;
    private final Cell cell;
    private final Effort effort;
    private final double deckC;
    private final Margins margins;
    private final Protection protection;

    PackConstraints(PackModel model, Use use, Margins margins) {
        this.model = model;
        this.cell = model.pack().cell();
        this.effort = use.effort();
        this.deckC = use.climate().deckC();
        this.margins = margins;
        this.protection = model.pack().protection();
    }

    /**
     * What the pack may take.
     *
     * @param lasting how long the current lasts that is set
     * @param lastingOf how long a current of this pack lasts [s]
     */
    List<PackConstraint> taking(Lasting lasting, DoubleUnaryOperator lastingOf) {
        List<PackConstraint> all = new ArrayList<>();
        CellRating rating = chargeRating(lastingOf);
        all.add(rating);
        if (!cell.charging().isWhateverTheCharge()) {
            all.add(new CellChargeCurve(rating, cell.charging().shareByCharge()));
        }
        all.add(
                new CellCeiling(
                        ConstraintId.VOLTAGE_CEILING,
                        model,
                        cell.voltageMax(),
                        0.0,
                        Input.CELL_VOLTAGE_MAX,
                        lasting));
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
                                                Input.PROTECTION_OVERVOLTAGE_TRIP,
                                                lasting)));
        addTrip(
                all,
                ConstraintId.PROTECTION_CHARGE_TRIP,
                protection.chargeTrip(),
                Input.PROTECTION_CHARGE_TRIP);
        all.addAll(PartRating.wiring(model.pack().wiring(), deckC, margins, WiringInputs.OF_PACK));
        all.add(
                new TemperatureWindow(
                        rating, cell.charging()::shareAt, Input.CELL_CHARGE_TEMPERATURE));
        return all;
    }

    List<PackConstraint> giving() {
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
        all.addAll(PartRating.wiring(model.pack().wiring(), deckC, margins, WiringInputs.OF_PACK));
        all.add(
                new TemperatureWindow(
                        rating,
                        temperature -> cell.discharging().contains(temperature) ? 1.0 : 0.0,
                        Input.CELL_DISCHARGE_TEMPERATURE));
        return all;
    }

    /**
     * A maker's pulse rating counts where braking at the current of the lasting rating is over
     * before the pulse may last: what is less than that needs no pulse rating, what is more is over
     * sooner.
     */
    private CellRating chargeRating(DoubleUnaryOperator lastingOf) {
        CellRating always =
                new CellRating(
                        ConstraintId.CELL_CHARGE_RATING,
                        model,
                        cell.chargeCurrent(),
                        margins.cell(),
                        Input.CELL_CHARGE_CURRENT);
        OptionalDouble pulse =
                cell.pulse()
                        .filter(each -> lastingOf.applyAsDouble(always.current()) <= each.time())
                        .map(PulseRating::chargeCurrent)
                        .orElse(OptionalDouble.empty());
        return pulse.isPresent()
                ? new CellRating(
                        ConstraintId.CELL_CHARGE_RATING,
                        model,
                        pulse.getAsDouble(),
                        margins.cell(),
                        Input.CELL_CHARGE_PULSE)
                : always;
    }

    private CellRating dischargeRating() {
        OptionalDouble pulse =
                cell.pulse()
                        .filter(each -> effort.hardPull() <= each.time())
                        .map(PulseRating::dischargeCurrent)
                        .orElse(OptionalDouble.empty());
        return pulse.isPresent()
                ? new CellRating(
                        ConstraintId.CELL_DISCHARGE_RATING,
                        model,
                        pulse.getAsDouble(),
                        margins.cell(),
                        Input.CELL_DISCHARGE_PULSE)
                : new CellRating(
                        ConstraintId.CELL_DISCHARGE_RATING,
                        model,
                        cell.dischargeCurrent(),
                        margins.cell(),
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
}
