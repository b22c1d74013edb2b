package brakewright.cli.doubt;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.profile.SingleLimits;
import brakewright.profile.Situation;
import brakewright.review.BrakeVerdict;
import brakewright.review.Review;
import brakewright.spec.Build;
import brakewright.worksheet.AlikeFindings;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Both verdicts on a vehicle, with tolerances each at its own unfavourable side.
 *
 * @param build the vehicle on which the verdict for pack and parts rests
 * @param review its review
 * @param brake the verdict on the brake
 * @param limits the greatest value of each setting by itself
 */
public record Judged(Build build, Review review, BrakeVerdict brake, SingleLimits limits) {

    /**
     * Judges a worksheet.
     *
     * @param situation the vehicle in its use
     * @param sheet with nominal inputs
     * @param tolerated what the tolerances stated do; empty where none is
     * @return both verdicts
     */
    public static Judged of(Situation situation, Worksheet sheet, Optional<Tolerated> tolerated) {
        SingleLimits single = SingleLimits.of(situation, sheet.build().settings());
        if (tolerated.isEmpty()) {
            return new Judged(sheet.build(), sheet.review(), sheet.review().brake(), single);
        }
        Build worst = tolerated.get().tolerances().worst().build();
        Limits limits = Limits.of(worst);
        return new Judged(
                worst,
                Review.of(worst, limits, Operation.of(worst, limits)),
                situation.brake(sheet.build().settings()),
                single);
    }

    /**
     * Returns what was found, nominally or at the unfavourable side of the tolerances, those
     * together that differ only in cell temperature or pack.
     *
     * @param sheet with nominal inputs
     * @return the nominal ones gravest first, then what only the unfavourable side adds
     */
    public List<AlikeFindings> found(Worksheet sheet) {
        List<AlikeFindings> nominal = sheet.alikeFindings();
        return Stream.concat(
                        nominal.stream(),
                        AlikeFindings.of(review).stream()
                                .filter(
                                        each ->
                                                nominal.stream()
                                                        .noneMatch(
                                                                one -> one.isAbout(each.first()))))
                .toList();
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
