package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Where tapers must end and how wide they must be.
 *
 * <p>A taper reduces a current as the voltage moves, and the current moves the voltage: {@code ΔV =
 * R·ΔI} and {@code ΔI = Iset/(band)·ΔV}. The product {@code Iset·R/band} is the gain of that loop;
 * above 1 the power surges. The band must therefore be at least {@code Iset·R}.
 *
 * <p>Source: small-gain condition (G. Zames, IEEE Transactions on Automatic Control 11, 1966; from
 * memory).
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
                band(
                        asked(
                                packCurrent,
                                build.settings().packDischargeCurrent(),
                                Input.SETTINGS_PACK_DISCHARGE_CURRENT),
                        Term.given(
                                "s",
                                "emptiest in use",
                                build.use().chargeTo(),
                                "",
                                Input.USE_CHARGE_TO),
                        Input.USE_CHARGE_TO));
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
                                "(1 − m)·V_r",
                                "own choice, the rating less a margin",
                                List.of(
                                        Term.given(
                                                "m",
                                                "margin",
                                                build.margins().controllerVoltage(),
                                                "",
                                                Input.MARGINS_CONTROLLER_VOLTAGE),
                                        Term.given(
                                                "V_r",
                                                "controller voltage rating",
                                                build.controllers().voltageRating(),
                                                "V",
                                                Input.CONTROLLER_VOLTAGE_RATING)))));
        return new TaperLimit(
                LimitId.HIGH_VOLTAGE_TAPER,
                ends,
                band(
                        asked(
                                packCurrent,
                                build.settings().packRegenCurrent(),
                                Input.SETTINGS_PACK_REGEN_CURRENT),
                        Term.given(
                                "s",
                                "fullest in use",
                                build.use().chargeFrom(),
                                "",
                                Input.USE_CHARGE_FROM),
                        Input.USE_CHARGE_FROM));
    }

    private Constraint end(
            int place, ConstraintId id, double cellVoltage, double shift, Input input) {
        int series = model.packs().get(place).pack().series();
        double end = model.voltageWhere(place, cellVoltage + shift);
        double others = end - series * (cellVoltage + shift);
        List<Term> terms = new ArrayList<>();
        terms.add(Term.given("S", "cells in series", series, "", Input.PACK_SERIES));
        terms.add(Term.given("u_lim", "cell voltage", cellVoltage, "V", input));
        if (shift != 0.0) {
            terms.add(PackTerms.margin(Math.abs(shift)));
        }
        String formula = shift == 0.0 ? "S·u_lim" : shift > 0.0 ? "S·(u_lim + m)" : "S·(u_lim − m)";
        boolean inSeries = !build.battery().isOnePack() && others != 0.0;
        if (inSeries) {
            terms.add(Term.computed("U_o", "the other packs there", others, "V"));
        }
        return new Constraint(
                id,
                end,
                input,
                List.of(),
                List.of(),
                new Derivation(
                        inSeries ? formula + " + U_o" : formula,
                        "own choice, nothing flows any more at the bound of a cell",
                        terms),
                build.battery().isOnePack() ? 0 : place + 1);
    }

    /** The current that must fade: what is set, or where nothing is, what is recommended. */
    private Step asked(double packCurrent, OptionalDouble set, Input setting) {
        if (set.isEmpty()) {
            return new Step(
                    Term.computed("I_set", "recommended pack current", packCurrent, "A"),
                    new Derivation("I_p", "its own limit", List.of(recommended(packCurrent))));
        }
        return new Step(
                Term.computed("I_set", "pack current that is set", packCurrent, "A"),
                new Derivation(
                        "n·I_c",
                        "controllers add their currents",
                        List.of(
                                Term.given(
                                        "n",
                                        "controllers",
                                        build.controllers().count(),
                                        "",
                                        Input.CONTROLLER_COUNT),
                                Term.given(
                                        "I_c",
                                        "set at each of them",
                                        set.getAsDouble(),
                                        "A",
                                        setting))));
    }

    private static Term recommended(double packCurrent) {
        return Term.computed("I_p", "its limit, explained by its name", packCurrent, "A");
    }

    private Constraint band(Step asked, Term charge, Input decisive) {
        Term coldest =
                Term.given(
                        "T",
                        "coldest cells in use",
                        build.use().climate().coldestPackC(),
                        "°C",
                        Input.USE_PACK_TEMPERATURE);
        Steps steps = new Steps().with(List.of(asked));
        Term resistance =
                new BatterySteps(build.battery(), model)
                        .resistance(
                                steps, "resistance, 10 s pulse", charge.value(), coldest.value());
        return new Constraint(
                        ConstraintId.LOOP_GAIN,
                        asked.result().value() * resistance.value(),
                        decisive,
                        steps.all(),
                        new Derivation(
                                "I_set·R",
                                "small-gain condition, I_set·R/band ≤ 1 (Zames 1966, from memory)",
                                List.of(asked.result(), resistance)))
                .under(charge, coldest);
    }
}
