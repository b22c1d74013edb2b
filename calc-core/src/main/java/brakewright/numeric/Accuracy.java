package brakewright.numeric;

/**
 * How closely roots, peaks and integrals are worked out, in the unit of what is sought, which is
 * that of the SI, or as a share of it.
 *
 * <p>What is printed has three or four digits, so all are far finer than any of it needs. They are
 * as fine as that because results are subtracted, compared and searched in again: what stands
 * inside a search has to be quieter than the search itself. So the finest is for what stands
 * innermost, the coarsest for what is told and used no further.
 *
 * <p>Assumption: our own choice throughout; the laws hold each result against another way to it.
 */
public enum Accuracy {

    /**
     * Innermost, and where the side of a root on which the answer lies decides what is told: some
     * thousand times the rounding of a number near 1.
     */
    INNERMOST(1e-12),

    /** Of a charge state that ends an integral, or of one that others are counted from. */
    CHARGE(1e-10),

    /** Of charge states, speeds, currents, temperatures and times that other models go on with. */
    MODEL(1e-9),

    /**
     * Of the place of a peak that is a corner to other searches: around a peak a quantity changes
     * with the square of the distance, so no place is known better than to the root of the
     * rounding.
     */
    PEAK(1e-8),

    /**
     * By which two estimates of an integral may differ, with steps as they are and halved; the
     * finer one is some ten times nearer yet.
     */
    INTEGRAL(1e-8),

    /** Of what is told in whole degrees, seconds or km/h. */
    TOLD(1e-6);

    private final double size;

    Accuracy(double size) {
        this.size = size;
    }

    /**
     * Returns the greatest difference that does not count.
     *
     * @return in the unit of what is sought, or as a share of it
     */
    public double size() {
        return size;
    }

    /**
     * Returns whether two estimates agree, but for a share of them.
     *
     * @param rough one estimate
     * @param fine the better one
     * @param negligible difference, whatever share it is; in the unit of both
     * @return false also where either is not a number
     */
    public boolean isMetBy(double rough, double fine, double negligible) {
        return Math.abs(rough - fine) <= size * Math.abs(fine) + negligible;
    }
}
