package brakewright.worksheet;

import brakewright.limit.ConstraintId;
import brakewright.powertrain.TopSpeed;

/** What holds a number down: a constraint, or what the drive can do. */
public sealed interface HeldBy {

    /**
     * Returns the name that worksheets use.
     *
     * @return lower case with hyphens
     */
    String key();

    /**
     * A constraint.
     *
     * @param id which
     */
    record AConstraint(ConstraintId id) implements HeldBy {
        @Override
        public String key() {
            return id.key();
        }
    }

    /**
     * A setting, or the voltage of the pack.
     *
     * @param holder which
     */
    record TheDrive(TopSpeed.Holder holder) implements HeldBy {
        @Override
        public String key() {
            return holder.key();
        }
    }
}
