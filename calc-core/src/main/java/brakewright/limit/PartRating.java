package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Term;
import brakewright.spec.Input;
import brakewright.spec.Margins;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of the supply may carry its rating less a margin: {@code N·(1 − m)·I_r}.
 *
 * <p>Assumption: our own choice of form; the margin comes with its own source.
 *
 * @param id which part
 * @param rating of one part [A]
 * @param count parts in parallel; more than one for controllers only
 * @param margin share of the rating kept free [1]
 * @param ratingInput where the rating was given
 * @param marginInput where the margin was given
 */
record PartRating(
        ConstraintId id,
        double rating,
        int count,
        double margin,
        Input ratingInput,
        Input marginInput)
        implements RatingConstraint {

    @Override
    public double limitAt(double temperatureC) {
        return count * (1.0 - margin) * rating;
    }

    @Override
    public Constraint at(double temperatureC) {
        List<Term> terms = new ArrayList<>();
        boolean isCounted = id == ConstraintId.CONTROLLER_PACK_RATING;
        if (isCounted) {
            terms.add(Term.given(Input.CONTROLLER_COUNT, count));
        }
        terms.add(Term.given(marginInput, margin));
        terms.add(Term.given(ratingInput, rating));
        return new Constraint(
                id,
                limitAt(temperatureC),
                ratingInput,
                new Derivation(
                        (isCounted ? "N·" : "") + "(1 − m)·I_r",
                        "own choice, the rating less a margin",
                        terms));
    }

    /** What the parts of a wiring that are described may carry. */
    static List<PackConstraint> wiring(
            Wiring wiring, double deckC, Margins margins, WiringInputs inputs) {
        List<PackConstraint> all = new ArrayList<>();
        wiring.fuseRating()
                .ifPresent(
                        rating ->
                                all.add(
                                        new PartRating(
                                                ConstraintId.MAIN_FUSE,
                                                rating,
                                                1,
                                                margins.fuse(),
                                                inputs.fuse(),
                                                Input.MARGINS_FUSE)));
        wiring.wireAmpacity()
                .ifPresent(
                        ampacity ->
                                all.add(
                                        new WireAmpacity(
                                                ampacity,
                                                deckC,
                                                margins.rating(),
                                                inputs.wireAmpacity())));
        wiring.plugRating()
                .ifPresent(
                        rating ->
                                all.add(
                                        new PartRating(
                                                ConstraintId.MAIN_PLUG,
                                                rating,
                                                1,
                                                margins.rating(),
                                                inputs.plugRating(),
                                                Input.MARGINS_RATING)));
        return all;
    }
}
