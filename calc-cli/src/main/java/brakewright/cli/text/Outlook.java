package brakewright.cli.text;

import brakewright.limit.Limits;
import brakewright.review.Operation;
import brakewright.review.Sag;
import brakewright.spec.Build;
import brakewright.worksheet.RangeSheet;

/**
 * The part of a worksheet that is computed on demand and takes longest.
 *
 * @param sag how far the voltage sags
 * @param range how far the vehicle goes
 */
public record Outlook(Sag sag, RangeSheet range) {

    /**
     * Computes the outlook of a vehicle.
     *
     * @param build the vehicle
     * @return its outlook
     */
    public static Outlook of(Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        return new Outlook(Sag.of(build, limits, operation), RangeSheet.of(build, operation));
    }
}
