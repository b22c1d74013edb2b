package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.battery.WorstGroup;
import brakewright.formula.Derivation;
import brakewright.formula.Inputs;
import brakewright.formula.Reading;
import brakewright.formula.Step;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Pack;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;

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
    private final Inputs inputs;
    private final BatteryModel model;

    TaperRule(Build build, BatteryModel model) {
        this.build = build;
        this.inputs = new Inputs(build);
        this.model = model;
    }

    /** The drive must have faded out at {@code S·max(u_floor, u_trip + m)}, see {@link #floor}. */
    TaperLimit low(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            Pack pack = model.packs().get(place).pack();
            ends.add(floor(place, pack));
            if (pack.protection().cellUndervoltageTrip().isPresent()) {
                ends.add(
                        end(
                                place,
                                WorstGroup.End.EMPTIEST,
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
                        SetCurrent.step(
                                build,
                                packCurrent,
                                build.settings().packDischargeCurrent(),
                                Input.SETTINGS_PACK_DISCHARGE_CURRENT),
                        inputs.of(Input.USE_CHARGE_TO),
                        Input.USE_CHARGE_TO));
    }

    /**
     * Some makers permit 2 V: there a cell without a protection that opens before is empty for
     * good, so the taper ends at the usual cut-off of its chemistry.
     */
    private Constraint floor(int place, Pack pack) {
        double lowest = pack.cell().voltageMin();
        boolean isTooLow =
                pack.protection().cellUndervoltageTrip().isEmpty()
                        && pack.cell().taperFloor() > lowest;
        return isTooLow
                ? end(
                        place,
                        WorstGroup.End.EMPTIEST,
                        ConstraintId.VOLTAGE_FLOOR,
                        pack.cell().taperFloor(),
                        0.0,
                        Input.CELL_TAPER_FLOOR)
                : end(
                        place,
                        WorstGroup.End.EMPTIEST,
                        ConstraintId.VOLTAGE_FLOOR,
                        lowest,
                        0.0,
                        Input.CELL_VOLTAGE_MIN);
    }

    /** The electric brake must have faded out at {@code S·min(u_max, u_trip − m)}. */
    TaperLimit high(double packCurrent) {
        List<Constraint> ends = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            Pack pack = model.packs().get(place).pack();
            ends.add(
                    end(
                            place,
                            WorstGroup.End.FULLEST,
                            ConstraintId.VOLTAGE_CEILING,
                            pack.cell().voltageMax(),
                            0.0,
                            Input.CELL_VOLTAGE_MAX));
            if (pack.protection().cellOvervoltageTrip().isPresent()) {
                ends.add(
                        end(
                                place,
                                WorstGroup.End.FULLEST,
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
                                inputs.of(Input.MARGINS_CONTROLLER_VOLTAGE),
                                inputs.of(Input.CONTROLLER_VOLTAGE_RATING))));
        return new TaperLimit(
                LimitId.HIGH_VOLTAGE_TAPER,
                ends,
                band(
                        SetCurrent.step(
                                build,
                                packCurrent,
                                build.settings().packRegenCurrent(),
                                Input.SETTINGS_PACK_REGEN_CURRENT),
                        inputs.of(Input.USE_CHARGE_FROM),
                        Input.USE_CHARGE_FROM));
    }

    private Constraint end(
            int place,
            WorstGroup.End worst,
            ConstraintId id,
            double cellVoltage,
            double shift,
            Input input) {
        PackModel pack = model.packs().get(place);
        double bound = cellVoltage + shift;
        double end = model.voltageWhere(place, worst, bound);
        List<Term> bounds = new ArrayList<>(List.of(Term.given(input, cellVoltage)));
        if (shift != 0.0) {
            bounds.add(PackTerms.margin(Math.abs(shift)));
        }
        Constraint constraint =
                new Constraint(
                        id,
                        end,
                        input,
                        pack.worst(worst).isMean() ? List.of() : bounds,
                        Working.when(() -> endWords(pack, worst, end, bounds, shift)),
                        build.battery().which(place));
        return new GroupTerms(pack, worst).where(constraint, bound);
    }

    private Working.Words endWords(
            PackModel pack, WorstGroup.End worst, double end, List<Term> bounds, double shift) {
        Term limit = bounds.get(0);
        double mean = pack.worst(worst).meanVoltageWhere(limit.value() + shift);
        double others = end - pack.pack().series() * mean;
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.series(pack));
        String formula = limit.symbol() + (shift == 0.0 ? "" : shift > 0.0 ? " + m" : " − m");
        if (pack.worst(worst).isMean()) {
            terms.addAll(bounds);
            formula = shift == 0.0 ? formula : "(" + formula + ")";
        } else {
            terms.add(Reading.MEAN_AT_REST.of(mean));
            formula = "u_m";
        }
        boolean inSeries = !build.battery().isOnePack() && others != 0.0;
        if (inSeries) {
            terms.add(Term.modelled("U_o", "the other packs there", others, Unit.VOLT));
        }
        return new Working.Words(
                List.of(),
                new Derivation(
                        "S·" + formula + (inSeries ? " + U_o" : ""),
                        "own choice, nothing flows any more at the bound of a cell",
                        terms));
    }

    private Constraint band(Step asked, Term charge, Input decisive) {
        Term coldest = inputs.of(Input.USE_PACK_TEMPERATURE);
        return new Constraint(
                ConstraintId.LOOP_GAIN,
                asked.result().value() * model.resistance(charge.value(), coldest.value()),
                decisive,
                List.of(charge, coldest),
                Working.when(() -> bandWords(asked, charge.value(), coldest.value())),
                WhichPack.WHOLE);
    }

    private Working.Words bandWords(Step asked, double charge, double coldestC) {
        Steps steps = new Steps().with(List.of(asked));
        Term resistance =
                new BatterySteps(build.battery(), model)
                        .resistance(
                                steps,
                                "resistance, 10 s pulse",
                                charge,
                                coldestC,
                                Lasting.pulse(build, model));
        return new Working.Words(
                steps,
                new Derivation(
                        "I_set·R",
                        "small-gain condition, I_set·R/band ≤ 1 (Zames 1966, from memory)",
                        asked.result(),
                        resistance));
    }
}
