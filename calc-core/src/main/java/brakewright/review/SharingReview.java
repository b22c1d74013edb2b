package brakewright.review;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.operation.Sharing;
import brakewright.spec.Build;
import brakewright.spec.Joining;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Looks at the joining of several packs, and at the loss of one of them. */
final class SharingReview {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final List<Finding> findings = new ArrayList<>();

    SharingReview(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
    }

    List<Finding> findings() {
        if (build.battery().isOnePack()) {
            return findings;
        }
        Sharing sharing = Sharing.of(build, limits, operation);
        // of two packs, joining the one to the other is joining the other to the one
        sharing.joints().stream()
                .limit(sharing.joints().size() == 2 ? 1 : Long.MAX_VALUE)
                .forEach(this::review);
        // in series the loss of any is the loss of all
        sharing.losses().stream()
                .filter(loss -> !isSeries() || !loss.isDraw())
                .limit(isSeries() ? 1 : Long.MAX_VALUE)
                .forEach(this::review);
        return findings;
    }

    private boolean isSeries() {
        return build.battery().joining() == Joining.SERIES;
    }

    private void review(Sharing.Joint joint) {
        OptionalDouble current = joint.current();
        if (current.isPresent() && joint.isExceeded()) {
            findings.add(
                    Finding.of(Topic.JOINING_CURRENT, Signal.DANGER)
                            .ofPack(WhichPack.of(joint.pack()))
                            .valued(current.getAsDouble(), joint.permitted(), Unit.AMPERE)
                            .build());
        } else {
            findings.add(
                    Finding.of(Topic.JOINING_DIFFERENCE, Signal.CAUTION)
                            .ofPack(WhichPack.of(joint.pack()))
                            .valued(joint.difference(), Unit.VOLT)
                            .build());
        }
    }

    private void review(Sharing.Loss loss) {
        if (!loss.isAllLost()) {
            return;
        }
        Finding.Builder finding =
                Finding.of(Topic.PACK_LOSS_CASCADES, isSeries() ? Signal.CAUTION : Signal.DANGER)
                        .about(
                                loss.isDraw()
                                        ? LimitId.PACK_DISCHARGE_CURRENT
                                        : LimitId.PACK_REGEN_CURRENT)
                        .ofPack(WhichPack.of(loss.pack()));
        findings.add(
                Double.isNaN(loss.greatestUse())
                        ? finding.build()
                        : finding.valued(loss.greatestUse(), 1.0, Unit.RATIO)
                                .atCharge(loss.charge())
                                .build());
    }
}
