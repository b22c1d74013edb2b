package brakewright.profile;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.review.Evaluation;
import brakewright.review.Review;
import brakewright.spec.Build;
import org.jspecify.annotations.Nullable;

/**
 * A profile with the verdict that counts for it: that at the unfavourable corner of its tolerances.
 * Each part is worked out when it is first asked for.
 */
public final class JudgedProfile {

    private final Profile profile;
    private final Build worst;
    private @Nullable Evaluation evaluation;

    /**
     * Joins a profile and the vehicle that it is judged by.
     *
     * @param profile with nominal inputs
     * @param worst the same at the unfavourable corner of its tolerances; the same build where none
     *     is stated
     */
    public JudgedProfile(Profile profile, Build worst) {
        this.profile = profile;
        this.worst = worst;
    }

    /**
     * Returns the profile.
     *
     * @return with nominal inputs
     */
    public Profile profile() {
        return profile;
    }

    /**
     * Returns the vehicle on which the verdict rests.
     *
     * @return at the unfavourable corner of its tolerances
     */
    public Build build() {
        return worst;
    }

    /**
     * Returns whether tolerances make it another vehicle than the nominal one.
     *
     * @return false where none is stated
     */
    public boolean isAtCorner() {
        return !worst.equals(profile.build());
    }

    /**
     * Returns the verdict in numbers.
     *
     * @return at the unfavourable corner
     */
    public Evaluation evaluation() {
        Evaluation found = evaluation;
        if (found == null) {
            found = Evaluation.of(worst);
            evaluation = found;
        }
        return found;
    }

    /**
     * Computes the verdict with nominal inputs.
     *
     * @return made anew each time
     */
    public Evaluation nominal() {
        return Evaluation.of(profile.build());
    }

    /**
     * Computes the verdict with all that was found.
     *
     * @return at the unfavourable corner, made anew each time
     */
    public Review review() {
        Limits limits = Limits.of(worst);
        return Review.of(worst, limits, Operation.of(worst, limits));
    }
}
