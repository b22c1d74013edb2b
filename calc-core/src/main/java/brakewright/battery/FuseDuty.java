package brakewright.battery;

import brakewright.spec.Battery;
import brakewright.spec.FuseBreaking;
import brakewright.spec.WhichPack;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A fuse, and what a short circuit asks of it ({@link ShortCircuit}).
 *
 * @param pack whose fuse it is; the whole for what is common to all, or where there is one
 * @param breaking what it can interrupt
 * @param voltage of full packs [V]
 * @param current prospective, through it [A]
 */
public record FuseDuty(WhichPack pack, FuseBreaking breaking, double voltage, double current) {

    /**
     * Lists the fuses of a battery.
     *
     * @param battery its packs
     * @return those that are described, of the packs in order and then the common one
     */
    public static List<FuseDuty> of(Battery battery) {
        ShortCircuit fault = new ShortCircuit(battery);
        List<FuseDuty> all = new ArrayList<>();
        for (int place = 0; place < battery.packs().size(); place++) {
            add(
                    all,
                    battery.which(place),
                    battery.packs().get(place).wiring(),
                    fault.voltage(),
                    fault.currentThrough(place));
        }
        add(all, WhichPack.WHOLE, battery.trunk(), fault.voltage(), fault.current());
        return all;
    }

    /**
     * Finds the fuse that a short circuit asks most of.
     *
     * @param battery its packs
     * @return of those that are described the one with the greatest current; where none is, one
     *     that would be common to all packs
     */
    public static FuseDuty hardest(Battery battery) {
        ShortCircuit fault = new ShortCircuit(battery);
        return of(battery).stream()
                .max(Comparator.comparingDouble(FuseDuty::current))
                .orElseGet(
                        () ->
                                new FuseDuty(
                                        WhichPack.WHOLE,
                                        FuseBreaking.UNKNOWN,
                                        fault.voltage(),
                                        fault.current()));
    }

    private static void add(
            List<FuseDuty> all, WhichPack pack, Wiring wiring, double voltage, double current) {
        if (wiring.fuseRating().isPresent()) {
            all.add(new FuseDuty(pack, wiring.fuseBreaking(), voltage, current));
        }
    }
}
