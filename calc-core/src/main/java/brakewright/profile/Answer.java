package brakewright.profile;

import java.util.Optional;

/**
 * The answer to a question for a value, on both sides of the tolerances.
 *
 * @param nominal with nominal inputs
 * @param unfavourable at the unfavourable corner; empty where no tolerance is stated
 */
public record Answer(Solution nominal, Optional<Solution> unfavourable) {

    /**
     * Returns the answer that counts.
     *
     * @return at the unfavourable corner where tolerances are stated, else with nominal inputs
     */
    public Solution counting() {
        return unfavourable.orElse(nominal);
    }
}
