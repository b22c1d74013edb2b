package brakewright.limit;

import brakewright.formula.Derivation;
import brakewright.formula.Term;
import brakewright.spec.Input;

/**
 * The main conductors may carry their ampacity less a margin, and less in the warm air of a closed
 * deck: {@code (1 − m)·I_r·√((105 − T_d)/(105 − 30))}, see {@link AmbientCorrection}.
 *
 * <p>Assumption: insulation good for {@value #INSULATION_C} °C, as ampacities of the tables are
 * told for; a wire with poorer insulation bears less.
 *
 * @param ampacity in free air of {@value AmbientCorrection#RATED_C} °C [A]
 * @param deckC the air around the conductors [°C]
 * @param margin share kept free [1]
 * @param input where the ampacity was given
 */
record WireAmpacity(double ampacity, double deckC, double margin, Input input)
        implements RatingConstraint {

    /**
     * Highest temperature of the insulation for which ampacities are told [°C].
     *
     * <p>Source: ABYC E-11, table for insulation of 105 °C.
     */
    private static final double INSULATION_C = 105.0;

    @Override
    public ConstraintId id() {
        return ConstraintId.MAIN_WIRE;
    }

    @Override
    public double limitAt(double temperatureC) {
        return (1.0 - margin) * ampacity * AmbientCorrection.factor(INSULATION_C, deckC);
    }

    @Override
    public Constraint at(double temperatureC) {
        return new Constraint(
                id(),
                limitAt(temperatureC),
                input,
                new Derivation(
                        "(1 − m)·I_r·√(max(0, 105 − T_d)/(105 − 30))",
                        "ambient temperature correction, NEC (NFPA 70) 310.15(B), insulation for"
                                + " 105 °C, ampacity in air of 30 °C; margin: own choice",
                        Term.given(Input.MARGINS_RATING, margin),
                        Term.given(input, ampacity),
                        Term.given(Input.USE_DECK_TEMPERATURE, deckC)));
    }
}
