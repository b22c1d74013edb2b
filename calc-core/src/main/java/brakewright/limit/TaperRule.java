package brakewright.limit;

import brakewright.battery.PackModel;
import brakewright.spec.Build;
import brakewright.spec.Input;
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
    private final PackModel model;

    TaperRule(Build build) {
        this.build = build;
        this.model = new PackModel(build.pack());
    }

    /** The drive must have faded out at {@code S·max(u_floor, u_trip + m)}. */
    TaperLimit low(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        ends.add(
                end(
                        ConstraintId.VOLTAGE_FLOOR,
                        build.pack().cell().voltageMin(),
                        0.0,
                        "S·u_lim",
                        Input.CELL_VOLTAGE_MIN));
        build.pack()
                .protection()
                .cellUndervoltageTrip()
                .ifPresent(
                        trip ->
                                ends.add(
                                        end(
                                                ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP,
                                                trip,
                                                build.margins().overvoltage(),
                                                "S·(u_lim + m)",
                                                Input.PROTECTION_UNDERVOLTAGE_TRIP)));
        return new TaperLimit(
                LimitId.LOW_VOLTAGE_TAPER,
                ends,
                band(packCurrent, build.use().chargeTo(), Input.USE_CHARGE_TO));
    }

    /** The electric brake must have faded out at {@code S·min(u_max, u_trip − m)}. */
    TaperLimit high(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        ends.add(
                end(
                        ConstraintId.VOLTAGE_CEILING,
                        build.pack().cell().voltageMax(),
                        0.0,
                        "S·u_lim",
                        Input.CELL_VOLTAGE_MAX));
        build.pack()
                .protection()
                .cellOvervoltageTrip()
                .ifPresent(
                        trip ->
                                ends.add(
                                        end(
                                                ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                                                trip,
                                                -build.margins().overvoltage(),
                                                "S·(u_lim − m)",
                                                Input.PROTECTION_OVERVOLTAGE_TRIP)));
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
            ConstraintId id, double cellVoltage, double shift, String formula, Input input) {
        int series = build.pack().series();
        return new Constraint(
                id,
                series * (cellVoltage + shift),
                input,
                new Derivation(
                        formula,
                        "the voltage at which nothing may flow any more",
                        List.of(
                                Term.given("S", "cells in series", series, "", Input.PACK_SERIES),
                                Term.given("u_lim", "cell voltage", cellVoltage, "V", input),
                                Term.given(
                                        "m",
                                        "margin",
                                        Math.abs(shift),
                                        "V",
                                        Input.MARGINS_OVERVOLTAGE))));
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
