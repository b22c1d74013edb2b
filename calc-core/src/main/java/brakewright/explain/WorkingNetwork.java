package brakewright.explain;

import static brakewright.formula.Term.computed;

import brakewright.formula.Inputs;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.limit.NetworkFormulas;
import brakewright.machine.WindingHeat;
import brakewright.machine.WindingRates;
import brakewright.machine.WindingResponse;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.Locale;

/**
 * The steps to how winding and case of one motor warm at one constant current: the rise above the
 * air is {@code z + C_s·e^(l_s·t) + C_f·e^(l_f·t)}.
 */
final class WorkingNetwork {

    static final String TWO_BODIES =
            "two-body thermal network as in motor makers' data sheets, solved exactly";

    private final Steps steps;
    private final Term a;
    private final Term b;
    private final Term slow;
    private final Term fast;

    /** Rises of winding and case. */
    record Pair(Term winding, Term shell) {}

    /** The parts of the winding's rise at the beginning. */
    record Parts(WindingResponse response, Term slow, Term fast) {}

    /** Sets up the network for what a current heats, in watts per kelvin, and a name for it. */
    WorkingNetwork(Inputs inputs, Steps steps, WindingRates rates, Term perKelvin, String suffix) {
        this.steps = steps;
        Term toCase = inputs.of(Input.MOTOR_WINDING_TO_CASE);
        Term winding = inputs.of(Input.MOTOR_WINDING_HEAT_CAPACITY);
        Term shell = inputs.of(Input.MOTOR_CASE_HEAT_CAPACITY);
        a =
                rate(
                        "A" + suffix,
                        "winding from itself",
                        rates.windingByItself(),
                        NetworkFormulas.windingByItself(perKelvin.symbol()),
                        perKelvin,
                        toCase,
                        winding);
        b =
                rate(
                        "B" + suffix,
                        "winding from case",
                        rates.windingByCase(),
                        "1/(R_wc·C_w)",
                        toCase,
                        winding);
        Term c =
                rate(
                        "C" + suffix,
                        "case from winding",
                        rates.caseByWinding(),
                        "1/(R_wc·C_c)",
                        toCase,
                        shell);
        Term d =
                rate(
                        "D" + suffix,
                        "case from itself",
                        rates.caseByItself(),
                        NetworkFormulas.CASE_BY_ITSELF,
                        toCase,
                        inputs.of(Input.MOTOR_CASE_TO_AIR),
                        shell);
        String between = b.symbol() + "·" + c.symbol();
        String rising = NetworkFormulas.rate(a.symbol(), d.symbol(), '+', between);
        String falling = NetworkFormulas.rate(a.symbol(), d.symbol(), '−', between);
        String ls = "l_s" + suffix;
        String lf = "l_f" + suffix;
        slow = rate(ls, "slow rate of change", rates.slow(), rising, a, d, b, c);
        fast = rate(lf, "fast rate of change", rates.fast(), falling, a, d, b, c);
    }

    private Term rate(String symbol, String meaning, double value, String formula, Term... terms) {
        return steps.add(
                computed(symbol, meaning, value, Unit.PER_SECOND), formula, TWO_BODIES, terms);
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

    /** The two amplitudes from the rises at the beginning and those in the end. */
    Parts amplitudes(String name, WindingResponse response, Pair start, Pair end) {
        WindingResponse.Amplitudes found = response.amplitudes();
        Term first =
                steps.add(
                        computed(
                                "C_s" + name,
                                "slow part at the beginning",
                                found.slow(),
                                Unit.KELVIN),
                        String.format(
                                Locale.ROOT,
                                "((%1$s − %3$s)·(%4$s − %5$s) + %2$s·(%6$s − %7$s))/(%8$s − %3$s)",
                                a.symbol(),
                                b.symbol(),
                                fast.symbol(),
                                start.winding().symbol(),
                                end.winding().symbol(),
                                start.shell().symbol(),
                                end.shell().symbol(),
                                slow.symbol()),
                        TWO_BODIES,
                        a,
                        fast,
                        start.winding(),
                        end.winding(),
                        b,
                        start.shell(),
                        end.shell(),
                        slow);
        Term second =
                steps.add(
                        computed(
                                "C_f" + name,
                                "fast part at the beginning",
                                found.fast(),
                                Unit.KELVIN),
                        start.winding().symbol()
                                + " − "
                                + end.winding().symbol()
                                + " − "
                                + first.symbol(),
                        TWO_BODIES,
                        start.winding(),
                        end.winding(),
                        first);
        return new Parts(response, first, second);
    }

    /**
     * When the winding's rise reaches a value; the time was found by search. It is worked out once
     * more from the part that changes most at that time, given the other.
     */
    void reaches(Term time, Term rise, Term winding, Parts parts) {
        boolean slowly = parts.response().isRuledSlowly(time.value());
        Term part = slowly ? parts.slow() : parts.fast();
        Term other = slowly ? parts.fast() : parts.slow();
        Term rate = slowly ? slow : fast;
        Term otherRate = slowly ? fast : slow;
        String left = rise.symbol() + " − " + winding.symbol() + " − ";
        steps.add(
                time,
                "ln(("
                        + left
                        + grown(other, otherRate, time.symbol())
                        + ")/"
                        + part.symbol()
                        + ")/"
                        + rate.symbol(),
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
                        + grown(parts.slow(), slow, "t")
                        + " + "
                        + grown(parts.fast(), fast, "t")
                        + ", it gives "
                        + rise.symbol()
                        + ".");
    }

    private static String grown(Term part, Term rate, String time) {
        return part.symbol() + "·exp(" + rate.symbol() + "·" + time + ")";
    }

    /** The case's rise after a time. */
    Term caseRise(String symbol, Term time, Term shell, Parts parts) {
        WindingHeat.Rises then = parts.response().risesAt(time.value());
        return steps.add(
                computed(symbol, "rise of the case then", then.caseK(), Unit.KELVIN),
                shell.symbol()
                        + " + ("
                        + led(slow, parts.slow(), time)
                        + " + "
                        + led(fast, parts.fast(), time)
                        + ")/"
                        + b.symbol(),
                TWO_BODIES,
                shell,
                slow,
                a,
                parts.slow(),
                time,
                fast,
                parts.fast(),
                b);
    }

    private String led(Term rate, Term part, Term time) {
        return "(" + rate.symbol() + " − " + a.symbol() + ")·" + grown(part, rate, time.symbol());
    }
}
