package brakewright.cli.text;

import brakewright.cli.buildfile.Tolerated;
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
record Judged(Build build, Review review) {

    static Judged of(Worksheet sheet, Optional<Tolerated> tolerated) {
        if (tolerated.isEmpty()) {
            return new Judged(sheet.build(), sheet.review());
        }
        Build worst = tolerated.get().tolerances().worst().build();
        Limits limits = Limits.of(worst);
        return new Judged(worst, Review.of(worst, limits, Operation.of(worst, limits)));
    }

    /** The outcome in words, small letters. */
    String word() {
        return word(review);
    }

    static String word(Review review) {
        return review.verdict().outcome().key().replace('-', ' ');
    }
}
