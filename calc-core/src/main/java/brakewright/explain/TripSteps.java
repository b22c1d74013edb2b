package brakewright.explain;

import static brakewright.formula.Term.computed;
import static brakewright.formula.Term.given;
import static brakewright.formula.Term.modelled;

import brakewright.formula.Origin;
import brakewright.formula.Steps;
import brakewright.formula.Term;
import brakewright.operation.Recovery;
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

    /** When it opens, from when on that is counted, and what it then waits for. */
    void opens(double after, List<Term> times, String counted, Recovery recovery) {
        steps.add(
                which,
                computed("t_o", "protection opens after", after, Unit.SECOND),
                String.join(" + ", times.stream().map(Term::symbol).toList()),
                "a trip that has been passed opens once its delay is over",
                times);
        steps.note((isDelayTypical ? TYPICAL : "") + counted + " " + closes(recovery));
    }

    /** When it closes again; whoever counts on that is told what else is known of such devices. */
    private static String closes(Recovery recovery) {
        return switch (recovery) {
            case NONE -> throw new IllegalArgumentException("nothing has opened");
            case DRAWN_FROM ->
                    "It is taken to stay open to the end of the stop: such a trip closes again once"
                            + " the pack has been drawn from for a while (TI BQ76952, SLUUBY2B), and"
                            + " opens again the next time it brakes so hard.";
            case DRAWN_FROM_OR_LOWER ->
                    "It is taken to stay open to the end of the stop: such a trip closes again once"
                            + " the pack is drawn from, or the cells are 0.1 to 0.4 V lower (ABLIC"
                            + " S-8254A, rev. 5.2). On a board without that gap the brake comes and"
                            + " goes in jerks.";
            case LOAD_OFF ->
                    "It is taken to stay open: such a trip closes again once the load is off (ABLIC"
                            + " S-8204B, rev. 3.9), and controllers are a load until they are"
                            + " switched off.";
            case CHARGER ->
                    "It is taken to stay open: such a trip closes again when a charger is connected"
                            + " (ABLIC S-8211C, rev. 5.0), not when the pull ends and the voltage"
                            + " rises. Till then there is no electric brake.";
        };
    }
}
