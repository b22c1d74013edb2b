package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Battery;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;

/** The steps to voltage and resistance of all packs together. */
public final class BatterySteps {

    /** A source. */
    public static final String JOINED = PackTerms.KIRCHHOFF + " for packs joined";

    private static final String MODEL =
            "pulse-power method, DOE/ID-11069 (2003): a voltage behind a resistance";

    private final Battery battery;
    private final BatteryModel model;

    /**
     * Prepares the steps of packs.
     *
     * @param battery the packs
     * @param model of them
     */
    public BatterySteps(Battery battery, BatteryModel model) {
        this.battery = battery;
        this.model = model;
    }

    /**
     * Adds the steps to the open-circuit voltage.
     *
     * @param steps that are added to
     * @param symbol of the voltage
     * @param meaning what it is
     * @param charge of all packs together [1]
     * @return the voltage
     */
    public Term voltage(Steps steps, String symbol, String meaning, double charge) {
        Term whole = Term.computed(symbol, meaning, model.openCircuitVoltage(charge), Unit.VOLT);
        if (battery.isOnePack() || battery.joining() == Joining.PARALLEL) {
            return own(steps, whole, 0, charge);
        }
        List<Term> all = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            double voltage =
                    model.packs().get(place).openCircuitVoltage(model.chargeOf(place, charge));
            String name = symbol + (place + 1);
            all.add(
                    own(
                            steps,
                            Term.computed(
                                    name, "voltage of pack " + (place + 1), voltage, Unit.VOLT),
                            place,
                            charge));
        }
        return steps.add(WhichPack.WHOLE, whole, String.join(" + ", symbols(all)), JOINED, all);
    }

    private Term own(Steps steps, Term result, int place, double charge) {
        PackModel pack = model.packs().get(place);
        return steps.add(
                battery.which(place),
                result,
                "S·u",
                MODEL,
                List.of(
                        PackTerms.series(pack),
                        PackTerms.openCircuitVoltage(pack, model.chargeOf(place, charge))));
    }

    /**
     * Adds the steps to the resistance that a current meets.
     *
     * @param steps that are added to
     * @param meaning what it is
     * @param charge of all packs together [1]
     * @param temperatureC of the cells [°C]
     * @param lasting how long the current flows
     * @return the resistance R; that of one of several packs is called R with its number
     */
    public Term resistance(
            Steps steps, String meaning, double charge, double temperatureC, Lasting lasting) {
        Term whole =
                Term.computed(
                        "R",
                        meaning,
                        model.resistance(charge, temperatureC, lasting.seconds()),
                        Unit.OHM);
        if (battery.isOnePack() && battery.trunkResistance() == 0.0) {
            return own(steps, whole, 0, charge, temperatureC, lasting);
        }
        List<Term> terms = new ArrayList<>();
        for (int place = 0; place < model.packs().size(); place++) {
            double resistance =
                    model.packs()
                            .get(place)
                            .resistance(
                                    model.chargeOf(place, charge), temperatureC, lasting.seconds());
            String name = "resistance of pack " + (place + 1);
            terms.add(
                    own(
                            steps,
                            Term.computed("R" + (place + 1), name, resistance, Unit.OHM),
                            place,
                            charge,
                            temperatureC,
                            lasting));
        }
        String sum =
                battery.joining() == Joining.SERIES
                        ? String.join(" + ", symbols(terms))
                        : "1/(1/" + String.join(" + 1/", symbols(terms)) + ")";
        terms.add(Term.given(Input.TRUNK_RESISTANCE, battery.trunkResistance()));
        return steps.add(WhichPack.WHOLE, whole, sum + " + R_t", JOINED, terms);
    }

    private Term own(
            Steps steps,
            Term result,
            int place,
            double charge,
            double temperatureC,
            Lasting lasting) {
        PackModel pack = model.packs().get(place);
        double ownCharge = model.chargeOf(place, charge);
        double factor = pack.factorByCharge(ownCharge);
        double more = pack.moreInTheCold(ownCharge, temperatureC);
        List<Term> terms = new ArrayList<>();
        terms.add(PackTerms.series(pack));
        terms.addAll(PackTerms.cellResistance(pack, factor, more, temperatureC));
        terms.addAll(lasting.terms(steps, pack.pack().cell(), pack.rise(ownCharge, factor + more)));
        terms.add(PackTerms.parallel(pack));
        terms.add(Term.given(Input.PACK_JOINT_RESISTANCE, pack.pack().jointResistance()));
        return steps.add(
                battery.which(place),
                result,
                "S·"
                        + PackTerms.resistanceFormula(more)
                        + lasting.formula(pack.pack().cell())
                        + "/P + R_j",
                MODEL + lasting.source(pack.pack().cell()),
                terms);
    }

    private static List<String> symbols(List<Term> terms) {
        return terms.stream().map(Term::symbol).toList();
    }
}
