/**
 * The numerical tools that the chapters share: where a quantity passes zero ({@link
 * brakewright.numeric.Root}), what it adds up to ({@link brakewright.numeric.GaussRule} on the
 * {@link brakewright.numeric.Pieces} of an interval), where it is greatest ({@link
 * brakewright.numeric.Greatest}), numbers in order ({@link brakewright.numeric.Ascending}), which
 * is the last step that something permits ({@link brakewright.numeric.LastStep}), and points that
 * fill a box evenly ({@link brakewright.numeric.SobolPoints}). How closely all of it is done is
 * stated in {@link brakewright.numeric.Accuracy}, and there alone; what counts as equal in {@link
 * brakewright.numeric.Rounding}.
 *
 * <p>All are thin: the methods are those of Apache Commons Math, which is named in this package
 * alone. A root is only ever sought between two places that are known to lie on either side of it;
 * where they do not, that is a fault of the caller, and it is reported as one instead of answered
 * with an end of the interval. The package is not exported.
 */
@NullMarked
package brakewright.numeric;

import org.jspecify.annotations.NullMarked;
