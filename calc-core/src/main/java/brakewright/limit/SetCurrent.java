package brakewright.limit;

import brakewright.formula.Inputs;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.util.OptionalDouble;

/** The pack current that a limit is made for: what is set, or where nothing is, its own limit. */
final class SetCurrent {

    private SetCurrent() {}

    /** The step to it, of all controllers together. */
    static Step step(Build build, double packCurrent, OptionalDouble set, Input setting) {
        if (set.isEmpty()) {
            return new Step(
                    Term.computed("I_set", "recommended pack current", packCurrent, Unit.AMPERE),
                    "I_p",
                    "its own limit",
                    recommended(packCurrent));
        }
        return new Step(
                Term.computed("I_set", "pack current that is set", packCurrent, Unit.AMPERE),
                "N·I_c",
                "controllers add their currents",
                new Inputs(build).of(Input.CONTROLLER_COUNT),
                Term.given(setting, set.getAsDouble()));
    }

    private static Term recommended(double packCurrent) {
        return Term.modelled("I_p", "its limit, explained by its name", packCurrent, Unit.AMPERE);
    }
}
