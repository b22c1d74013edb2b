package brakewright.profile;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import org.jspecify.annotations.Nullable;

/**
 * A profile with the verdicts that count for it: each at its own unfavourable side of the
 * tolerances. Each part is worked out when it is first asked for.
 */
public final class JudgedProfile {

    private final Profile profile;
    private final Situation situation;
    private final Build worst;
    private @Nullable Evaluation evaluation;
    private @Nullable BrakeVerdict brake;
    private @Nullable BrakeVerdict brakeOnWetRoad;

    /**
     * Joins a profile and the vehicle that it is judged by.
     *
     * @param profile with nominal inputs
     * @param situation the vehicle with its tolerances
     * @param worst the same at the corner of them where pack and parts are worst off; the same
     *     build where none is stated
     */
    public JudgedProfile(Profile profile, Situation situation, Build worst) {
        this.profile = profile;
        this.situation = situation;
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
     * Returns the verdict on the brake.
     *
     * @return at its unfavourable side
     */
    public BrakeVerdict brake() {
        BrakeVerdict found = brake;
        if (found == null) {
            found = situation.brake(profile.build().settings());
            brake = found;
        }
        return found;
    }

    /**
     * Returns the verdict on the brake on a wet road.
     *
     * @return at its unfavourable side
     */
    public BrakeVerdict brakeOnWetRoad() {
        BrakeVerdict found = brakeOnWetRoad;
        if (found == null) {
            found = situation.brakeOnWetRoad(profile.build().settings());
            brakeOnWetRoad = found;
        }
        return found;
    }

    /**
     * Returns whether it may be called best at anything.
     *
     * @return true if pack and parts are not outside limits and its brake is none on neither road
     */
    public boolean mayBeBest() {
        return evaluation().outcome() != Verdict.Outcome.OUTSIDE_LIMITS
                && brake().word() != BrakeVerdict.Word.NONE
                && brakeOnWetRoad().word() != BrakeVerdict.Word.NONE;
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
