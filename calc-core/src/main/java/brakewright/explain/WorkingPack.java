package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.formula.Inputs;
import brakewright.formula.Origin;
import brakewright.formula.Reading;
import brakewright.formula.Rounded;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.BatterySteps;
import brakewright.limit.Lasting;
import brakewright.limit.PackTerms;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.List;

/** The steps to voltage and resistance of the packs at one charge state. */
final class WorkingPack {

    static final double PULSE = Cell.PULSE;
    static final double ENDLESS = Double.POSITIVE_INFINITY;

    private final Build build;
    private final BatteryModel model;
    private final BatterySteps shared;
    private final Inputs inputs;
    private final Steps steps;

    WorkingPack(Build build, Steps steps) {
        this.build = build;
        this.model = new BatteryModel(build.battery());
        this.shared = new BatterySteps(build.battery(), model);
        this.inputs = new Inputs(build);
        this.steps = steps;
    }

    /** Voltage and resistance, as terms and as the calculation has them. */
    record At(Term voltage, Term resistance, PackState state) {}

    BatteryModel model() {
        return model;
    }

    /** The charge state at one end of the charge in use. */
    static Term charge(Build build, boolean full) {
        return new Inputs(build).of(full ? Input.USE_CHARGE_FROM : Input.USE_CHARGE_TO);
    }

    Term temperature() {
        return inputs.of(Input.PACK_TEMPERATURE);
    }

    /** The state without steps. */
    PackState state(double charge, double seconds) {
        return PackState.of(model, charge, build.battery().temperatureC(), seconds);
    }

    At at(double charge, double seconds) {
        boolean endless = Double.isInfinite(seconds);
        Term voltage =
                shared.voltage(
                        steps,
                        "U",
                        "voltage at rest, " + Rounded.percent(charge) + " % charge",
                        charge);
        Term resistance =
                shared.resistance(
                        steps,
                        endless ? "resistance, endless pull" : "resistance, 10 s pulse",
                        charge,
                        build.battery().temperatureC(),
                        endless ? Lasting.endless(build, model) : Lasting.pulse(build, model));
        return new At(voltage, resistance, state(charge, seconds));
    }

    /** The least resistance of one pack in the first instant of a current. */
    Term least(String symbol, int place) {
        PackModel pack = model.packs().get(place);
        Cell cell = pack.pack().cell();
        WhichPack which = build.battery().which(place);
        return steps.add(
                which,
                computed(
                        symbol,
                        "resistance"
                                + which.map(number -> " of pack " + number).orElse("")
                                + ", first instant",
                        pack.leastResistance(),
                        Unit.OHM),
                "S·r·f_s·f_T·k/P",
                "ohmic share of the pulse resistance, joints and leads not counted on",
                List.of(
                        PackTerms.series(pack),
                        given(Input.CELL_RESISTANCE, cell.resistance()),
                        Reading.LEAST_BY_CHARGE.of(cell.resistanceByCharge().drawn().least()),
                        Reading.LEAST_BY_TEMPERATURE.of(pack.leastFactorByTemperature()),
                        leastShare(pack),
                        PackTerms.parallel(pack)));
    }

    /** The cell's own share where it is less than any cell is trusted to have. */
    private static Term leastShare(PackModel pack) {
        double own = pack.pack().cell().relaxation().onset().ohmicShare();
        return pack.leastOhmicShare() == own
                ? given(Input.CELL_OHMIC_SHARE, own)
                : new Term(
                        "k",
                        "ohmic share, at the least",
                        pack.leastOhmicShare(),
                        Unit.RATIO,
                        Origin.Found.ASSUMED);
    }

    /** The charge that all packs give from full to empty. */
    Term capacity() {
        if (model.packs().size() > 1) {
            return modelled(
                    "Q", "charge of all packs together", model.capacityAh(), Unit.AMPERE_HOUR);
        }
        PackModel pack = model.packs().get(0);
        return steps.add(
                computed("Q", "charge of the pack", model.capacityAh(), Unit.AMPERE_HOUR),
                "P·q",
                "cells in parallel add their charge",
                PackTerms.parallel(pack),
                given(Input.CELL_CAPACITY, pack.pack().cell().capacityAh()));
    }
}
