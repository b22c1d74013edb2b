package brakewright.formula;

import brakewright.spec.Input;

/** Where a number comes from that is put into a formula. */
public sealed interface Origin permits Origin.Given, Origin.Found {

    /**
     * Given, or taken for what was not given.
     *
     * @param input which input it is, or is read from
     */
    record Given(Input input) implements Origin {}

    /** Not given. */
    enum Found implements Origin {
        /** The result of a step that is told before. */
        WORKED_OUT,
        /** By definition, whatever the vehicle. */
        CONSTANT,
        /** Taken for every vehicle, our own choice. */
        ASSUMED,
        /** Found by search: what it is put into shows that it fits, or gives it once more. */
        SEARCHED,
        /** The state that is asked about. */
        ASKED,
        /** The result of a model whose steps are not told: an integral, or another limit. */
        MODELLED
    }
}
