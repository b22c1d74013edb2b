package brakewright.review;

import brakewright.battery.FuseDuty;
import brakewright.limit.ConstraintId;
import brakewright.limit.Signal;
import brakewright.spec.Build;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks whether each fuse can interrupt a short circuit of its packs.
 *
 * <p>A fuse below the voltage of a full pack may burn on as an arc whatever blows it: a danger, and
 * like the controller's rating a check that bears on the verdict. A breaking capacity below what a
 * dead short could drive is a warning beside it: nothing exceeds it in any riding, and the current
 * is an upper bound.
 */
final class FuseReview {

    private final List<FuseDuty> fuses;

    FuseReview(Build build) {
        this.fuses = FuseDuty.of(build.battery());
    }

    /** What bears on the verdict. */
    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        for (FuseDuty fuse : fuses) {
            fuse.breaking()
                    .voltage()
                    .ifPresent(
                            rated ->
                                    checks.add(
                                            PlainCheck.always(
                                                    held(fuse), fuse.voltage(), rated, Unit.VOLT)));
        }
        return checks;
    }

    private static Held held(FuseDuty fuse) {
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
        for (FuseDuty fuse : fuses) {
            if (!fuse.breaking().isKnown()) {
                findings.add(
                        Finding.of(Topic.FUSE_BREAKING_UNKNOWN, Signal.CAUTION)
                                .ofPack(fuse.pack())
                                .held(fuse.current(), Unit.AMPERE)
                                .telling(new FindingDetail.Breaking(fuse.voltage()))
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
                                                    .valued(fuse.current(), rated, Unit.AMPERE)
                                                    .build());
                                }
                            });
        }
        return findings;
    }
}
