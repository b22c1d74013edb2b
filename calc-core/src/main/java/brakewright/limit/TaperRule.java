package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import java.util.ArrayList;
import java.util.List;

/**
 * Where tapers must end and how wide they must be.
 *
 * <p>A taper reduces a current as the voltage moves, and the current moves the voltage: {@code ΔV =
 * R·ΔI} and {@code ΔI = Iset/(band)·ΔV}. The product {@code Iset·R/band} is the gain of that loop;
 * above 1 the power surges. The band must therefore be at least {@code Iset·R}.
 *
 * <p>Source: small-gain condition of a first-order loop.
 */
final class TaperRule {

    private final Build build;
    private final BatteryModel model;

    TaperRule(Build build) {
        this.build = build;
        this.model = new BatteryModel(build.battery());
    }

    /** The drive must have faded out at {@code S·max(u_floor, u_trip + m)}. */
    TaperLimit low(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            Pack pack = model.packs().get(place).pack();
            ends.add(
                    end(
                            place,
                            ConstraintId.VOLTAGE_FLOOR,
                            pack.cell().voltageMin(),
                            0.0,
                            Input.CELL_VOLTAGE_MIN));
            if (pack.protection().cellUndervoltageTrip().isPresent()) {
                ends.add(
                        end(
                                place,
                                ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP,
                                pack.protection().cellUndervoltageTrip().getAsDouble(),
                                build.margins().overvoltage(),
                                Input.PROTECTION_UNDERVOLTAGE_TRIP));
            }
        }
        return new TaperLimit(
                LimitId.LOW_VOLTAGE_TAPER,
                ends,
                band(packCurrent, build.use().chargeTo(), Input.USE_CHARGE_TO));
    }

    /** The electric brake must have faded out at {@code S·min(u_max, u_trip − m)}. */
    TaperLimit high(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            Pack pack = model.packs().get(place).pack();
            ends.add(
                    end(
                            place,
                            ConstraintId.VOLTAGE_CEILING,
                            pack.cell().voltageMax(),
                            0.0,
                            Input.CELL_VOLTAGE_MAX));
            if (pack.protection().cellOvervoltageTrip().isPresent()) {
                ends.add(
                        end(
                                place,
                                ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                                pack.protection().cellOvervoltageTrip().getAsDouble(),
                                -build.margins().overvoltage(),
                                Input.PROTECTION_OVERVOLTAGE_TRIP));
            }
        }
        ends.add(
                new Constraint(
                        ConstraintId.CONTROLLER_VOLTAGE_RATING,
                        (1.0 - build.margins().controllerVoltage())
                                * build.controllers().voltageRating(),
                        Input.CONTROLLER_VOLTAGE_RATING,
                        new Derivation(
                                "(1 − m)·V_rated",
                                "the controller's rating; the margin as given",
                                List.of(
                                        Term.given(
                                                "m",
                                                "margin",
                                                build.margins().controllerVoltage(),
                                                "",
                                                Input.MARGINS_CONTROLLER_VOLTAGE),
                                        Term.given(
                                                "V_rated",
                                                "controller voltage rating",
                                                build.controllers().voltageRating(),
                                                "V",
                                                Input.CONTROLLER_VOLTAGE_RATING)))));
        return new TaperLimit(
                LimitId.HIGH_VOLTAGE_TAPER,
                ends,
                band(packCurrent, build.use().chargeFrom(), Input.USE_CHARGE_FROM));
    }

    private Constraint end(
            int place, ConstraintId id, double cellVoltage, double shift, Input input) {
        int series = model.packs().get(place).pack().series();
        double end = model.voltageWhere(place, cellVoltage + shift);
        double others = end - series * (cellVoltage + shift);
        List<Term> terms =
                new ArrayList<>(
                        List.of(
                                Term.given("S", "cells in series", series, "", Input.PACK_SERIES),
                                Term.given("u_lim", "cell voltage", cellVoltage, "V", input),
                                Term.given(
                                        "m",
                                        "margin",
                                        Math.abs(shift),
                                        "V",
                                        Input.MARGINS_OVERVOLTAGE)));
        String formula = shift == 0.0 ? "S·u_lim" : shift > 0.0 ? "S·(u_lim + m)" : "S·(u_lim − m)";
        boolean inSeries = !build.battery().isOnePack() && others != 0.0;
        if (inSeries) {
            terms.add(Term.computed("U_o", "the other packs there", others, "V"));
        }
        return new Constraint(
                id,
                end,
                input,
                new Derivation(
                        inSeries ? formula + " + U_o" : formula,
                        "the voltage at which nothing may flow any more",
                        terms),
                build.battery().isOnePack() ? 0 : place + 1);
    }

    private Constraint band(double packCurrent, double charge, Input decisive) {
        double coldest = build.use().climate().coldestPackC();
        double resistance = model.resistance(charge, coldest);
        return new Constraint(
                ConstraintId.LOOP_GAIN,
                packCurrent * resistance,
                decisive,
                new Derivation(
                        "I_set·R(s,T)",
                        "small-gain condition: I_set·R/band ≤ 1",
                        List.of(
                                Term.computed("I_set", "pack current", packCurrent, "A"),
                                Term.computed(
                                        "R(s,T)",
                                        "pack resistance there, coldest pack",
                                        resistance,
                                        "Ω"))));
    }
}
