package brakewright.cli.doubt;

import brakewright.buildfile.BuildFile;
import brakewright.profile.Doubts;
import brakewright.profile.Tolerances;
import brakewright.profile.Uncertain;
import brakewright.review.Finding;
import brakewright.review.Topic;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What to measure first: values with a stated tolerance that decide the verdict, then those of
 * tables and assumptions that move it, then facts that are missing.
 *
 * @param first the weightiest first, three at most
 */
public record Measurements(List<Measurement> first) {

    /** Our own choice; nobody measures more at once. */
    private static final int MOST = 3;

    private static final Set<Topic> MISSING =
            EnumSet.of(
                    Topic.PROTECTION_UNKNOWN,
                    Topic.SETTING_NOT_GIVEN,
                    Topic.FUSE_BREAKING_UNKNOWN,
                    Topic.MOTOR_HEAT_UNKNOWN,
                    Topic.BUS_CAPACITANCE_UNKNOWN,
                    Topic.WIRING_UNKNOWN);

    /** Copies the list. */
    public Measurements {
        first = List.copyOf(first);
    }

    /** One thing to measure or to look up. */
    public sealed interface Measurement {

        /**
         * A value that moves the verdict.
         *
         * @param name of its key
         * @param range in which it may lie
         * @param safeAtLow the charge up to which braking is safe with the lowest value [1]
         * @param safeAtHigh likewise with the highest [1]
         */
        record OfValue(String name, Uncertain range, double safeAtLow, double safeAtHigh)
                implements Measurement {}

        /**
         * A fact that is missing.
         *
         * @param finding that tells of it
         */
        record OfFact(Finding finding) implements Measurement {}
    }

    static Measurements of(BuildFile file, Optional<Tolerated> tolerated, Worksheet sheet) {
        List<Measurement> all = new ArrayList<>();
        tolerated.ifPresent(each -> addDeciding(all, each));
        if (all.size() < MOST) {
            Unmeasured.weighed(file, tolerated).ifPresent(each -> addDoubtful(all, each));
        }
        sheet.review().findings().stream()
                .filter(finding -> MISSING.contains(finding.topic()))
                .map(Measurement.OfFact::new)
                .forEach(all::add);
        return new Measurements(all.subList(0, Math.min(MOST, all.size())));
    }

    private static void addDeciding(List<Measurement> all, Tolerated tolerated) {
        Tolerances tolerances = tolerated.tolerances();
        tolerances.influences().stream()
                .filter(Tolerances.Influence::decides)
                .forEach(
                        each ->
                                all.add(
                                        new Measurement.OfValue(
                                                tolerated.name(each.input()),
                                                each.input(),
                                                each.safeChargeAtLow(),
                                                each.safeChargeAtHigh())));
    }

    private static void addDoubtful(List<Measurement> all, Unmeasured unmeasured) {
        for (Doubts.Weighed weighed : unmeasured.doubts().weighed()) {
            Unmeasured.Doubtful value = unmeasured.values().get(weighed.place());
            all.add(
                    new Measurement.OfValue(
                            value.place().name(),
                            value.range(),
                            weighed.atLow().safeCharge(),
                            weighed.atHigh().safeCharge()));
        }
    }
}
