package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;

import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.machine.Copper;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.MotorHeat;

/**
 * The steps to how winding and case of one motor warm at one constant current: the rise above the
 * air is {@code z + C_s·e^(l_s·t) + C_f·e^(l_f·t)}.
 */
final class WorkingNetwork {

    static final String TWO_BODIES =
            "two-body thermal network as in motor makers' data sheets, solved exactly";

    private final Steps steps;
    private final String suffix;

    private final Term a;
    private final Term b;
    private final Term slow;
    private final Term fast;

    /** Sets up the network for what a current heats, in watts per kelvin, and a name for it. */
    WorkingNetwork(Build build, Steps steps, Term perKelvin, String suffix) {
        MotorHeat heat = build.motor().heat().orElseThrow();
        this.steps = steps;
        this.suffix = suffix;
        Term betweenWinding = betweenWinding(build);
        Term toAir = toAir(build);
        Term windingCapacity = given(Input.MOTOR_WINDING_HEAT_CAPACITY, heat.windingHeatCapacity());
        Term caseCapacity = given(Input.MOTOR_CASE_HEAT_CAPACITY, heat.caseHeatCapacity());
        this.a =
                rate(
                        "A",
                        "winding from itself",
                        (perKelvin.value() - 1.0 / heat.windingToCase())
                                / heat.windingHeatCapacity(),
                        "(" + perKelvin.symbol() + " − 1/R_wc)/C_w",
                        perKelvin,
                        betweenWinding,
                        windingCapacity);
        this.b =
                rate(
                        "B",
                        "winding from case",
                        1.0 / (heat.windingToCase() * heat.windingHeatCapacity()),
                        "1/(R_wc·C_w)",
                        betweenWinding,
                        windingCapacity);
        Term c =
                rate(
                        "C",
                        "case from winding",
                        1.0 / (heat.windingToCase() * heat.caseHeatCapacity()),
                        "1/(R_wc·C_c)",
                        betweenWinding,
                        caseCapacity);
        Term d =
                rate(
                        "D",
                        "case from itself",
                        -(1.0 / heat.windingToCase() + 1.0 / heat.caseToAir())
                                / heat.caseHeatCapacity(),
                        "−(1/R_wc + 1/R_ca)/C_c",
                        betweenWinding,
                        toAir,
                        caseCapacity);
        double mean = (a.value() + d.value()) / 2.0;
        double half =
                Math.sqrt(
                        (a.value() - d.value()) * (a.value() - d.value()) / 4.0
                                + b.value() * c.value());
        this.slow = root("l_s", "slow rate of change", mean + half, "+", c, d);
        this.fast = root("l_f", "fast rate of change", mean - half, "−", c, d);
    }

    static Term betweenWinding(Build build) {
        return given(
                Input.MOTOR_WINDING_TO_CASE, build.motor().heat().orElseThrow().windingToCase());
    }

    static Term toAir(Build build) {
        return given(Input.MOTOR_CASE_TO_AIR, build.motor().heat().orElseThrow().caseToAir());
    }

    static Term limit(Build build) {
        return given(Input.MOTOR_WINDING_LIMIT, build.motor().windingLimitC());
    }

    private Term rate(String symbol, String meaning, double value, String formula, Term... terms) {
        return steps.add(
                computed(symbol + suffix, meaning, value, "1/s"), formula, TWO_BODIES, terms);
    }

    private Term root(String symbol, String meaning, double value, String sign, Term c, Term d) {
        String sum = "(" + a.symbol() + " + " + d.symbol() + ")/2 ";
        String root =
                "√(("
                        + a.symbol()
                        + " − "
                        + d.symbol()
                        + ")²/4 + "
                        + b.symbol()
                        + "·"
                        + c.symbol()
                        + ")";
        return rate(symbol, meaning, value, sum + sign + " " + root, a, d, b, c);
    }

    Term a() {
        return a;
    }

    Term b() {
        return b;
    }

    Term slow() {
        return slow;
    }

    Term fast() {
        return fast;
    }

    /** What copper loses more for every kelvin, at a current. */
    static Term perKelvin(Steps steps, String symbol, Term at20C, Term current) {
        double value =
                Copper.TEMPERATURE_COEFFICIENT_AT_20_C
                        * at20C.value()
                        * current.value()
                        * current.value();
        return steps.add(
                computed(symbol, "copper loss more for each kelvin", value, "W/K"),
                "0.00393·R_e20·" + current.symbol() + "²",
                "IEC 60028:1925, temperature coefficient of copper",
                at20C,
                current);
    }

    /** The two amplitudes from the rises at the beginning and those in the end. */
    Term[] amplitudes(String name, Term windingStart, Term caseStart, Term winding, Term shell) {
        double w = windingStart.value() - winding.value();
        double c = caseStart.value() - shell.value();
        double slowly =
                ((a.value() - fast.value()) * w + b.value() * c) / (slow.value() - fast.value());
        String start = "(" + windingStart.symbol() + " − " + winding.symbol() + ")";
        Term first =
                steps.add(
                        computed("C_s" + name, "slow part at the beginning", slowly, "K"),
                        "(("
                                + a.symbol()
                                + " − "
                                + fast.symbol()
                                + ")·"
                                + start
                                + " + "
                                + b.symbol()
                                + "·("
                                + caseStart.symbol()
                                + " − "
                                + shell.symbol()
                                + "))/("
                                + slow.symbol()
                                + " − "
                                + fast.symbol()
                                + ")",
                        TWO_BODIES,
                        a,
                        fast,
                        windingStart,
                        winding,
                        b,
                        caseStart,
                        shell,
                        slow);
        Term second =
                steps.add(
                        computed("C_f" + name, "fast part at the beginning", w - slowly, "K"),
                        windingStart.symbol() + " − " + winding.symbol() + " − " + first.symbol(),
                        TWO_BODIES,
                        windingStart,
                        winding,
                        first);
        return new Term[] {first, second};
    }

    /**
     * When the winding's rise reaches a value; the time was found by search. It is worked out once
     * more from the part that changes most at that time, given the other.
     */
    Term reaches(Term time, Term rise, Term winding, Term[] parts) {
        boolean slowly =
                Math.abs(slope(parts[0], slow, time)) >= Math.abs(slope(parts[1], fast, time));
        Term part = slowly ? parts[0] : parts[1];
        Term other = slowly ? parts[1] : parts[0];
        Term rate = slowly ? slow : fast;
        Term otherRate = slowly ? fast : slow;
        String left =
                rise.symbol()
                        + " − "
                        + winding.symbol()
                        + " − "
                        + grown(other, otherRate, time.symbol());
        steps.add(
                time,
                "ln((" + left + ")/" + part.symbol() + ")/" + rate.symbol(),
                TWO_BODIES,
                rise,
                winding,
                other,
                otherRate,
                time,
                part,
                rate);
        steps.note(
                "Found by search; put back into the rise of the winding, "
                        + winding.symbol()
                        + " + "
                        + grown(parts[0], slow, "t")
                        + " + "
                        + grown(parts[1], fast, "t")
                        + ", it gives "
                        + rise.symbol()
                        + ".");
        return time;
    }

    /** The winding's rise after a time [K]. */
    double rise(Term time, Term winding, Term[] parts) {
        return winding.value()
                + parts[0].value() * Math.exp(slow.value() * time.value())
                + parts[1].value() * Math.exp(fast.value() * time.value());
    }

    private static String grown(Term part, Term rate, String time) {
        return part.symbol() + "·exp(" + rate.symbol() + "·" + time + ")";
    }

    private static double slope(Term part, Term rate, Term time) {
        return part.value() * rate.value() * Math.exp(rate.value() * time.value());
    }

    /** The case's rise after a time. */
    Term caseRise(String symbol, Term time, Term shell, Term[] parts) {
        double t = time.value();
        double value =
                shell.value()
                        + (slow.value() - a.value())
                                / b.value()
                                * parts[0].value()
                                * Math.exp(slow.value() * t)
                        + (fast.value() - a.value())
                                / b.value()
                                * parts[1].value()
                                * Math.exp(fast.value() * t);
        return steps.add(
                computed(symbol, "rise of the case then", value, "K"),
                shell.symbol()
                        + " + ("
                        + led(slow, parts[0], time)
                        + " + "
                        + led(fast, parts[1], time)
                        + ")/"
                        + b.symbol(),
                TWO_BODIES,
                shell,
                slow,
                a,
                parts[0],
                time,
                fast,
                parts[1],
                b);
    }

    private String led(Term rate, Term part, Term time) {
        return "(" + rate.symbol() + " − " + a.symbol() + ")·" + grown(part, rate, time.symbol());
    }
}
