package brakewright.numeric;

/**
 * By how much numbers that ought to be equal may differ, as a share of them or, for counts and
 * numbers near 1, in all.
 *
 * <p>Assumption: our own choice; a double is rounded to 1.1e-16 of itself.
 */
public final class Rounding {

    /** Where a few operations lie between them: some thousand times the rounding of one. */
    public static final double OF_A_FORMULA = 1e-12;

    /**
     * Where one of them was typed in another unit, or comes of a root, an integral or a long sum;
     * far below any step that a person enters.
     */
    public static final double OF_A_RESULT = 1e-9;

    private Rounding() {}
}
