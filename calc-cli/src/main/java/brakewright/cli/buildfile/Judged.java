package brakewright.cli.buildfile;

import brakewright.limit.Limits;
import brakewright.review.Operation;
import brakewright.review.Review;
import brakewright.spec.Build;
import brakewright.worksheet.Worksheet;
import java.util.Optional;

/**
 * The vehicle on which the verdict rests: the nominal one, or with tolerances that of their
 * unfavourable corner.
 *
 * @param build the vehicle
 * @param review its review
 */
public record Judged(Build build, Review review) {

    /**
     * Judges a worksheet.
     *
     * @param sheet with nominal inputs
     * @param tolerated what the tolerances stated do; empty where none is
     * @return the vehicle that counts, and its review
     */
    public static Judged of(Worksheet sheet, Optional<Tolerated> tolerated) {
        if (tolerated.isEmpty()) {
            return new Judged(sheet.build(), sheet.review());
        }
        Build worst = tolerated.get().tolerances().worst().build();
        Limits limits = Limits.of(worst);
        return new Judged(worst, Review.of(worst, limits, Operation.of(worst, limits)));
    }

    /**
     * Returns the outcome in words.
     *
     * @return small letters
     */
    public String word() {
        return word(review);
    }

    /**
     * Returns an outcome in words.
     *
     * @param review a review
     * @return small letters
     */
    public static String word(Review review) {
        return review.verdict().outcome().key().replace('-', ' ');
    }
}
