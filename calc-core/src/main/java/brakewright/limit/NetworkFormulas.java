package brakewright.limit;

/**
 * How the rates are written at which winding and case of one motor warm each other and themselves.
 *
 * <p>Source: two-body thermal network, Portescap, Understanding Thermal Parameters of DC Motors
 * (2021).
 */
public final class NetworkFormulas {

    /** What the case's own rise changes its temperature by. */
    public static final String CASE_BY_ITSELF = "−(1/R_wc + 1/R_ca)/C_c";

    private NetworkFormulas() {}

    /**
     * Returns what the winding's own rise changes its temperature by.
     *
     * @param perKelvin by how much the copper loss grows with each kelvin, as a formula
     * @return the formula
     */
    public static String windingByItself(String perKelvin) {
        return "(" + perKelvin + " − 1/R_wc)/C_w";
    }

    /**
     * Returns one of the two rates of change, the eigenvalues of the network.
     *
     * @param a symbol of the winding's own rate
     * @param d symbol of the case's own rate
     * @param sign of the root: plus for the slow rate, minus for the fast one
     * @param between product of the rates at which either warms the other, as a formula
     * @return the formula
     */
    public static String rate(String a, String d, char sign, String between) {
        String mean = "(" + a + " + " + d + ")/2 ";
        return mean + sign + " √((" + a + " − " + d + ")²/4 + " + between + ")";
    }
}
