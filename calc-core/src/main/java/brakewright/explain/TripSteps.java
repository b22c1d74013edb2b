package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.formula.Origin;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.List;

/** What is told of a trip of the protection, whichever way the current flows. */
final class TripSteps {

    private static final String TYPICAL =
            "The delay is the typical one of ABLIC S-8211C, data sheet rev. 5.0: that of the board"
                    + " at hand may be shorter or longer. ";

    private final Steps steps;
    private final WhichPack which;
    private final boolean isDelayTypical;

    TripSteps(Steps steps, WhichPack which, boolean isDelayTypical) {
        this.steps = steps;
        this.which = which;
        this.isDelayTypical = isDelayTypical;
    }

    /** What of the whole current flows through a pack. */
    Term share(Term whole, String meaning, double own) {
        return steps.add(
                which,
                computed("I_k", meaning, own, Unit.AMPERE),
                "w·" + whole.symbol(),
                "Kirchhoff's laws",
                List.of(
                        whole,
                        modelled(
                                "w",
                                "its share of the whole current",
                                own / whole.value(),
                                Unit.RATIO)));
    }

    void passedAtOnce() {
        steps.note(
                "No more than the ohmic share, which is there at once: the trip is passed in the"
                        + " first instant.");
    }

    /** For how long a trip that has been passed waits. */
    Term delay(Input told, double seconds) {
        return isDelayTypical
                ? new Term(
                        "t_d",
                        "typical delay of such a trip",
                        seconds,
                        Unit.SECOND,
                        Origin.Found.ASSUMED)
                : given(told, seconds);
    }

    /** When it opens, and from when on that is counted. */
    void opens(double after, List<Term> times, String counted) {
        steps.add(
                which,
                computed("t_o", "protection opens after", after, Unit.SECOND),
                String.join(" + ", times.stream().map(Term::symbol).toList()),
                "a trip that has been passed opens once its delay is over",
                times);
        steps.note((isDelayTypical ? TYPICAL : "") + counted);
    }
}
