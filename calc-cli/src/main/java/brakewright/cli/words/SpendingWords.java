package brakewright.cli.words;

import brakewright.powertrain.Spending;
import java.util.LinkedHashMap;
import java.util.Map;

/** Names where a charge is spent. */
public final class SpendingWords {

    /** Our own choice: a share that is written as nothing is left out. */
    private static final double NOTHING = 5e-4;

    private SpendingWords() {}

    /**
     * Returns where it goes.
     *
     * @param spent what is spent
     * @return the shares by their names; what is next to nothing is left out [1]
     */
    public static Map<String, Double> parts(Spending spent) {
        Spending shares = spent.shares();
        Map<String, Double> parts = new LinkedHashMap<>();
        parts.put("air", shares.air());
        parts.put("rolling", shares.rolling());
        parts.put("climbing", shares.climbing());
        parts.put("gaining speed", shares.moving());
        parts.put("belt, chain or gears", shares.drive());
        parts.put("motor drag", shares.motorDrag());
        parts.put("copper of the motor", shares.copper());
        parts.put("controller", shares.controller());
        parts.put("electronics, lights", shares.idle());
        parts.put("inside the pack", shares.pack());
        parts.values().removeIf(share -> Math.abs(share) < NOTHING);
        return parts;
    }
}
