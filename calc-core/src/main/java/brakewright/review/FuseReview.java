package brakewright.review;

import brakewright.battery.ShortCircuit;
import brakewright.limit.ConstraintId;
import brakewright.limit.Signal;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks whether each fuse can interrupt a short circuit of its packs.
 *
 * <p>A fuse below the voltage of a full pack may burn on as an arc whatever blows it: a danger, and
 * like the controller's rating a check that bears on the verdict. A breaking capacity below what a
 * dead short could drive is a warning beside it: nothing exceeds it in any riding, and the current
 * is an upper bound.
 */
final class FuseReview {

    /** A fuse and what may be asked of it; the pack counts from 1, 0 for what is common to all. */
    private record Fuse(int pack, FuseBreaking breaking, double voltage, double current) {}

    private final List<Fuse> fuses;

    FuseReview(Build build) {
        Battery battery = build.battery();
        ShortCircuit fault = new ShortCircuit(battery);
        this.fuses = new ArrayList<>();
        IntStream.range(0, battery.packs().size())
                .forEach(
                        place ->
                                add(
                                        battery.isOnePack() ? 0 : place + 1,
                                        battery.packs().get(place).wiring(),
                                        fault.voltage(),
                                        fault.currentThrough(place)));
        add(0, battery.trunk(), fault.voltage(), fault.current());
    }

    private void add(int pack, Wiring wiring, double voltage, double current) {
        if (wiring.fuseRating().isPresent()) {
            fuses.add(new Fuse(pack, wiring.fuseBreaking(), voltage, current));
        }
    }

    /** What bears on the verdict. */
    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (Fuse fuse : fuses) {
            fuse.breaking()
                    .voltage()
                    .ifPresent(
                            rated ->
                                    checks.add(
                                            PlainCheck.always(
                                                    held(fuse), fuse.voltage(), rated, "V")));
        }
        return checks;
    }

    private static Held held(Fuse fuse) {
        return new Held(
                Topic.FUSE_VOLTAGE_OVER,
                Optional.empty(),
                ConstraintId.FUSE_VOLTAGE_RATING,
                fuse.pack(),
                Double.NaN);
    }

    /** What stands beside it. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Fuse fuse : fuses) {
            if (!fuse.breaking().isKnown()) {
                findings.add(
                        Finding.of(Topic.FUSE_BREAKING_UNKNOWN, Signal.CAUTION)
                                .ofPack(fuse.pack())
                                .held(fuse.current(), "A")
                                .build());
            }
            fuse.breaking()
                    .capacity()
                    .ifPresent(
                            rated -> {
                                if (fuse.current() > rated) {
                                    findings.add(
                                            Finding.of(Topic.FUSE_BREAKING_OVER, Signal.WARNING)
                                                    .ofPack(fuse.pack())
                                                    .valued(fuse.current(), rated, "A")
                                                    .build());
                                }
                            });
        }
        return findings;
    }
}
