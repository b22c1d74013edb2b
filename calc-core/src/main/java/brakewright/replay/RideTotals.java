package brakewright.replay;

import brakewright.powertrain.Spending;

/**
 * What a ride adds up to.
 *
 * @param drawn energy that left the packs' terminals [J]
 * @param returned energy that came back [J]
 * @param chargeOut that left the packs [C]
 * @param chargeBack that came back [C]
 * @param spent where what the cells gave went, a foot on the ground among the friction brake [J]
 * @param standing how long the vehicle stood [s]
 */
public record RideTotals(
        double drawn,
        double returned,
        double chargeOut,
        double chargeBack,
        Spending spent,
        double standing) {

    /** Nothing was ridden. */
    static final RideTotals NOTHING = new RideTotals(0, 0, 0, 0, Spending.NONE, 0);

    /**
     * Returns what the ride took at the terminals.
     *
     * @return drawn less returned [J]
     */
    public double net() {
        return drawn - returned;
    }

    /**
     * Returns what came back of what was drawn.
     *
     * @return the share of the energy [1]; 0 where nothing was drawn
     */
    public double returnedShare() {
        return drawn > 0.0 ? returned / drawn : 0.0;
    }

    RideTotals plus(Step step) {
        Flow flow = step.flow();
        double energy = flow.terminals() * step.seconds();
        double charge = flow.packCurrent() * step.seconds();
        return new RideTotals(
                drawn + Math.max(0.0, energy),
                returned + Math.max(0.0, -energy),
                chargeOut + Math.max(0.0, charge),
                chargeBack + Math.max(0.0, -charge),
                spent.plus(flow.spent(), step.seconds()),
                standing + (step.speed() == 0.0 ? step.seconds() : 0.0));
    }
}
