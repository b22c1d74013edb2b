package brakewright.explain;

import static brakewright.formula.Term.assumed;
import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.formula.Reading;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** The steps to voltage and resistance of the packs at one charge state. */
final class WorkingPack {

    private static final int PARTS = 4;

    static final double PULSE = Cell.PULSE;
    static final double ENDLESS = Double.POSITIVE_INFINITY;
    static final String JOINED = "Kirchhoff's laws for packs joined";

    private static final String MODEL =
            "pulse-power method, DOE/ID-11069 (2003); voltage behind a resistance";
    private static final String SUSTAINED =
            "first-order equivalent circuit, e.g. Plett, Battery Management Systems 1 (2015), ch. 2";

    private final Build build;
    private final BatteryModel model;
    private final Steps steps;

    WorkingPack(Build build, Steps steps) {
        this.build = build;
        this.model = new BatteryModel(build.battery());
        this.steps = steps;
    }

    /**
     * Voltage and resistance, as terms and as the calculation has them.
     *
     * @param voltage at rest
     * @param resistance of everything
     * @param packs without the wiring that is common to them
     * @param each one after the other
     * @param state as the calculation has it
     */
    record At(Term voltage, Term resistance, Term packs, List<Term> each, PackState state) {}

    BatteryModel model() {
        return model;
    }

    /** The charge state at one end of the charge in use. */
    static Term charge(Build build, boolean full) {
        return full
                ? given(Input.USE_CHARGE_FROM, build.use().chargeFrom())
                : given(Input.USE_CHARGE_TO, build.use().chargeTo());
    }

    Term temperature() {
        return given(Input.PACK_TEMPERATURE, build.battery().temperatureC());
    }

    /** The state without steps. */
    PackState state(double charge, double seconds) {
        return PackState.of(model, charge, build.battery().temperatureC(), seconds);
    }

    At at(double charge, double seconds) {
        Term voltage = voltage("U", "voltage at rest, " + percent(charge) + " % charge", charge);
        return resistance(voltage, charge, seconds);
    }

    private Term voltage(String symbol, String meaning, double charge) {
        boolean summed = model.packs().size() > 1 && build.battery().joining() == Joining.SERIES;
        Term whole = computed(symbol, meaning, model.openCircuitVoltage(charge), "V");
        if (!summed) {
            PackModel first = model.packs().get(0);
            return steps.add(
                    model.packs().size() == 1 ? 0 : 1,
                    whole,
                    "S·u",
                    MODEL,
                    List.of(series(first), cellVoltage(first, model.chargeOf(0, charge))));
        }
        List<Term> all = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        for (int place = 0; place < model.packs().size(); place++) {
            PackModel pack = model.packs().get(place);
            double own = model.chargeOf(place, charge);
            String name = symbol + (place + 1);
            all.add(
                    steps.add(
                            place + 1,
                            computed(
                                    name,
                                    "voltage of pack " + (place + 1),
                                    pack.openCircuitVoltage(own),
                                    "V"),
                            "S·u",
                            MODEL,
                            List.of(series(pack), cellVoltage(pack, own))));
            sum.append(place == 0 ? "" : " + ").append(name);
        }
        return steps.add(whole, sum.toString(), JOINED, all.toArray(Term[]::new));
    }

    private At resistance(Term voltage, double charge, double seconds) {
        PackState state = state(charge, seconds);
        if (model.packs().size() == 1) {
            Term only = one("R", "resistance", 0, charge, seconds);
            return new At(voltage, only, only, List.of(only), state);
        }
        List<Term> all = new ArrayList<>();
        StringBuilder sum = new StringBuilder();
        boolean series = build.battery().joining() == Joining.SERIES;
        for (int place = 0; place < model.packs().size(); place++) {
            all.add(
                    one(
                            "R" + (place + 1),
                            "resistance of pack " + (place + 1),
                            place,
                            charge,
                            seconds));
            sum.append(place == 0 ? "" : " + ").append(series ? "R" : "1/R").append(place + 1);
        }
        Term trunk = given(Input.TRUNK_RESISTANCE, build.battery().trunkResistance());
        double whole = state.resistance();
        Term packs =
                steps.add(
                        computed("R_p", "resistance of the packs", whole - trunk.value(), "Ω"),
                        series ? sum.toString() : "1/(" + sum + ")",
                        JOINED,
                        all.toArray(Term[]::new));
        Term together =
                steps.add(
                        computed("R", "resistance", whole, "Ω"), "R_p + R_t", JOINED, packs, trunk);
        return new At(voltage, together, packs, all, state);
    }

    /** The resistance of one pack at the charge state it has when all together have another. */
    Term one(String symbol, String meaning, int place, double charge, double seconds) {
        return own(symbol, meaning, place, model.chargeOf(place, charge), seconds);
    }

    /** The resistance of one pack at its own charge state. */
    Term own(String symbol, String meaning, int place, double ownCharge, double seconds) {
        PackModel pack = model.packs().get(place);
        Cell cell = pack.pack().cell();
        double cells = build.battery().temperatureC();
        List<Term> terms =
                new ArrayList<>(
                        List.of(
                                series(pack),
                                given(Input.CELL_RESISTANCE, cell.resistance()),
                                given(
                                        Input.CELL_RESISTANCE_BY_CHARGE,
                                        cell.resistanceByCharge().at(ownCharge)),
                                given(
                                        Input.CELL_RESISTANCE_BY_TEMPERATURE,
                                        cell.resistanceByTemperature().at(cells))));
        boolean endless = Double.isInfinite(seconds);
        if (endless) {
            terms.add(given(Input.CELL_SUSTAINED_RISE, cell.relaxation().rise()));
        }
        terms.add(given(Input.PACK_PARALLEL, pack.pack().parallel()));
        terms.add(given(Input.PACK_JOINT_RESISTANCE, pack.pack().jointResistance()));
        return steps.add(
                model.packs().size() == 1 ? 0 : place + 1,
                computed(
                        symbol,
                        meaning + (endless ? ", endless pull" : ", 10 s pulse"),
                        pack.resistance(ownCharge, cells, seconds),
                        "Ω"),
                "S·r·f_s·f_T" + (endless ? "·(1 + x_r)" : "") + "/P + R_j",
                endless ? SUSTAINED : MODEL,
                terms);
    }

    /** The least resistance of one pack in the first instant of a current. */
    Term least(String symbol, int place) {
        PackModel pack = model.packs().get(place);
        Cell cell = pack.pack().cell();
        return steps.add(
                place + 1,
                computed(
                        symbol,
                        "resistance of pack " + (place + 1) + ", first instant",
                        pack.leastResistance(),
                        "Ω"),
                "S·r·f_s·f_T·k/P",
                "ohmic share of the pulse resistance, joints and leads not counted on",
                List.of(
                        series(pack),
                        given(Input.CELL_RESISTANCE, cell.resistance()),
                        Reading.LEAST_BY_CHARGE.of(cell.resistanceByCharge().least()),
                        Reading.LEAST_BY_TEMPERATURE.of(cell.resistanceByTemperature().least()),
                        assumed("k", "ohmic share, at the least", PackModel.OHMIC_SHARE, ""),
                        given(Input.PACK_PARALLEL, pack.pack().parallel())));
    }

    static Term series(PackModel pack) {
        return given(Input.PACK_SERIES, pack.pack().series());
    }

    private static Term cellVoltage(PackModel pack, double charge) {
        return given(Input.CELL_OPEN_CIRCUIT_VOLTAGE, pack.cellOpenCircuitVoltage(charge));
    }

    /** The charge that all packs give from full to empty. */
    Term capacity() {
        if (model.packs().size() > 1) {
            return modelled("Q", "charge of all packs together", model.capacityAh(), "Ah");
        }
        PackModel pack = model.packs().get(0);
        return steps.add(
                computed("Q", "charge of the pack", model.capacityAh(), "Ah"),
                "P·q",
                "cells in parallel add their charge",
                given(Input.PACK_PARALLEL, pack.pack().parallel()),
                given(Input.CELL_CAPACITY, pack.pack().cell().capacityAh()));
    }

    /** The mean of a quantity over a span of charge, quarter by quarter. */
    Term mean(Term quantity, double from, double to, DoubleUnaryOperator at) {
        List<Term> means = new ArrayList<>();
        double sum = 0.0;
        for (int part = 0; part < PARTS; part++) {
            double upper = from + (to - from) * part / PARTS;
            double lower = from + (to - from) * (part + 1) / PARTS;
            double mean = WorkingIntegral.mean(model.knots(), upper, lower, at);
            sum += mean;
            means.add(
                    modelled(
                            quantity.symbol() + (part + 1),
                            "mean, " + percent(upper) + " to " + percent(lower) + " % charge",
                            mean,
                            quantity.unit()));
        }
        Term mean =
                steps.add(
                        computed(
                                quantity.symbol(),
                                "mean of " + quantity.meaning(),
                                sum / PARTS,
                                quantity.unit()),
                        "(" + String.join(" + ", means.stream().map(Term::symbol).toList()) + ")/4",
                        "mean over the charge that flows",
                        means.toArray(Term[]::new));
        steps.note(WorkingIntegral.HOW);
        return mean;
    }

    static String percent(double charge) {
        double tenths = Math.rint(1000.0 * charge) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
