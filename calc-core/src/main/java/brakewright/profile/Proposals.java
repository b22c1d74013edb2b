package brakewright.profile;

import brakewright.limit.Constraint;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.numeric.LastStep;
import brakewright.numeric.Rounding;
import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Up to three complete sets of settings for one vehicle: for the pack as full as it is used, for
 * the brake as strong as it is wanted, and with the least changed.
 *
 * @param sets those there are, in this order
 * @param obstacle what keeps the brake from being enough in every one of them; empty where one is
 *     good
 * @param wetNow the verdict on the brake of the present settings on a wet road; empty where that
 *     leaves no less of it
 */
public record Proposals(
        List<Proposal> sets, Optional<Obstacle> obstacle, Optional<BrakeVerdict> wetNow) {

    /** Charges are told to whole per cent [1]. */
    private static final double PER_CENT = 100.0;

    /** Far below what a rider feels, far above the accuracy of a weakest speed [m/s²]. */
    private static final double SAME = 1e-3;

    /** Copies the sets. */
    public Proposals {
        sets = List.copyOf(sets);
    }

    /** What a set is for. */
    public enum Kind {
        /** The pack is charged as the use says; a taper protects it, and the brake fades. */
        FULL_PACK("full-pack"),
        /** The pack is charged less, so that the brake wanted holds in all of the use. */
        STRONG_BRAKE("strong-brake"),
        /** As few of the present settings as possible are changed. */
        LEAST_CHANGE("least-change");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /**
         * Returns the name under which a build file keeps such a set.
         *
         * @return lower case with a hyphen
         */
        public String key() {
            return key;
        }
    }

    /**
     * One complete set.
     *
     * @param kind what it is for
     * @param set the settings with their verdicts
     * @param chargeFrom the charge up to which the pack may be used with it, where that is less
     *     than the use says [1]
     * @param coldestC the coldest cells with which it may be used, where that is warmer than the
     *     use says [°C]
     * @param wet the verdict on its brake on a wet road; empty where that leaves no less of it
     */
    public record Proposal(
            Kind kind,
            Recommendation set,
            OptionalDouble chargeFrom,
            OptionalDouble coldestC,
            Optional<BrakeVerdict> wet) {}

    /**
     * What stands in the way of the brake wanted with the pack nearly empty and warm, where it
     * takes most.
     *
     * @param held the setting that is held down
     * @param by what holds it down
     * @param next what would hold the brake below what is wanted without that; empty where nothing
     *     would
     * @param reached the least deceleration with it [m/s²]
     * @param wanted the deceleration wanted [m/s²]
     * @param slowEnough the highest speed from which the brake wanted is reached, to whole steps;
     *     empty where it is at none [m/s]
     */
    public record Obstacle(
            LimitId held,
            Constraint by,
            Optional<Constraint> next,
            double reached,
            double wanted,
            OptionalDouble slowEnough) {}

    /**
     * Looks for the sets.
     *
     * @param situation the vehicle in its use
     * @param present its present settings
     * @param entry how finely settings are entered
     * @return those there are
     */
    public static Proposals of(Situation situation, Settings present, Entry entry) {
        return new Work(situation, present, entry).proposals();
    }

    /** Settings that are changed together, as one is made for the other. */
    private enum Group {
        SPEED_CAP,
        MOTOR_BRAKE,
        MOTOR_DRIVE,
        DRAW,
        RETURN
    }

    private static final class Work {

        private final Situation situation;
        private final Settings present;
        private final Entry entry;
        private final Use use;
        private final Map<List<Double>, Recommendation> sets = new HashMap<>();
        private final List<double[]> known = new ArrayList<>();
        private final Recommendation.Work work;

        Work(Situation situation, Settings present, Entry entry) {
            this.situation = situation;
            this.present = present;
            this.entry = entry;
            this.use = situation.nominal(present).use();
            this.work = new Recommendation.Work(situation, entry);
        }

        Proposals proposals() {
            List<Proposal> sets = new ArrayList<>();
            Recommendation full = Recommendation.of(situation, entry);
            if (full.isWithinLimits()) {
                sets.add(throughout(Kind.FULL_PACK, full));
            }
            if (!full.isGood()) {
                strong().ifPresent(sets::add);
            }
            least(full).ifPresent(sets::add);
            return new Proposals(
                    sets,
                    sets.stream().anyMatch(each -> each.set().isGood())
                            ? Optional.empty()
                            : Optional.of(obstacle()),
                    WetRoad.less(situation, present));
        }

        /** One for the whole of the use. */
        private Proposal throughout(Kind kind, Recommendation set) {
            return new Proposal(
                    kind,
                    set,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    WetRoad.less(situation, set.settings()));
        }

        /**
         * The fullest pack, in whole per cent, with which the brake wanted holds or, where it never
         * does, with which it is as strong as with the emptiest.
         */
        private Optional<Proposal> strong() {
            double own = situation.nominal(present).battery().temperatureC();
            double coldest = use.climate().coldestPackC();
            int low = (int) Math.floor(use.chargeTo() * PER_CENT) + 1;
            int high = (int) Math.floor(use.chargeFrom() * PER_CENT + Rounding.OF_A_RESULT);
            double best = -1.0;
            double cellsC = coldest;
            for (double cells : new double[] {coldest, warmed(own)}) {
                Recommendation easiest = low > high ? null : set(low, cells);
                if (easiest != null && easiest.isWithinLimits()) {
                    double reached =
                            Math.min(easiest.brake().wanted(), easiest.brake().deceleration());
                    if (reached > best + SAME) {
                        best = reached;
                        cellsC = cells;
                    }
                }
            }
            if (best < 0.0 || set(low, cellsC).brake().word() == BrakeVerdict.Word.NONE) {
                return Optional.empty();
            }
            int charge = fullest(low, high, cellsC, best);
            return Optional.of(
                    new Proposal(
                            Kind.STRONG_BRAKE,
                            set(charge, cellsC),
                            charge < high
                                    ? OptionalDouble.of(charge / PER_CENT)
                                    : OptionalDouble.empty(),
                            cellsC > coldest ? OptionalDouble.of(cellsC) : OptionalDouble.empty(),
                            WetRoad.less(
                                    part(charge / PER_CENT, cellsC),
                                    set(charge, cellsC).settings())));
        }

        private int fullest(int emptiest, int fullest, double coldestC, double wanted) {
            return LastStep.of(emptiest, fullest, charge -> isAsStrong(charge, coldestC, wanted));
        }

        private boolean isAsStrong(int charge, double coldestC, double wanted) {
            Recommendation set = set(charge, coldestC);
            return set.isWithinLimits() && set.brake().deceleration() >= wanted - SAME;
        }

        private Recommendation set(int charge, double coldestC) {
            return sets.computeIfAbsent(
                    List.of((double) charge, coldestC),
                    key ->
                            new Recommendation.Work(part(charge / PER_CENT, coldestC), entry)
                                    .strongest());
        }

        /** Cells above the cool zone of charging, where the pack's own temperature is. */
        private double warmed(double own) {
            double warm =
                    situation.nominal(present).battery().packs().stream()
                            .map(pack -> pack.cell().charging())
                            .mapToDouble(window -> window.lowestC() + window.coldBandK())
                            .max()
                            .orElseThrow();
            return Math.max(use.climate().coldestPackC(), Math.min(own, warm));
        }

        private Situation part(double charge, double coldestC) {
            return situation.in(
                    whole -> {
                        Climate climate = whole.climate();
                        return whole.withChargeFrom(charge)
                                .withClimate(
                                        climate.withPackC(
                                                coldestC,
                                                Math.max(coldestC, climate.warmestPackC())));
                    });
        }

        /** Sets of few changes first; what is not given, or holds nothing, must be changed. */
        private Optional<Proposal> least(Recommendation full) {
            Set<Group> missing = EnumSet.noneOf(Group.class);
            if (present.motorBrakeCurrent().isEmpty()) {
                missing.add(Group.MOTOR_BRAKE);
            }
            if (present.motorDriveCurrent().isEmpty()) {
                missing.add(Group.MOTOR_DRIVE);
            }
            if (present.packDischargeCurrent().isEmpty()) {
                missing.add(Group.DRAW);
            }
            if (present.packRegenCurrent().isEmpty()) {
                missing.add(Group.RETURN);
            }
            if (isCapIdle()) {
                missing.add(Group.SPEED_CAP);
            }
            for (int size = missing.size(); size < Group.values().length; size++) {
                for (int bits = 0; bits < 1 << Group.values().length; bits++) {
                    Set<Group> groups = groups(bits);
                    if (groups.size() == size && groups.containsAll(missing)) {
                        Settings changed = changed(groups, full.settings());
                        if (isHopeless(changed, full)) {
                            continue;
                        }
                        Recommendation set = Recommendation.judged(situation, changed);
                        if (set.isWithinLimits()
                                && set.brake().word().compareTo(full.brake().word()) <= 0
                                && !set.settings().equals(full.settings())) {
                            return Optional.of(throughout(Kind.LEAST_CHANGE, set));
                        }
                    }
                }
            }
            return Optional.empty();
        }

        /** Whether a cap is set above the speed that something else holds anyway. */
        private boolean isCapIdle() {
            double held = situation.least(present, build -> Limits.of(build).speedCap().value());
            return present.speedCap().orElse(0.0) > held;
        }

        /** Told cheaply: by the nominal brake, and where something was exceeded before. */
        private boolean isHopeless(Settings changed, Recommendation full) {
            return BrakeVerdict.of(situation.nominal(changed)).word().compareTo(full.brake().word())
                            > 0
                    || situation.positive(changed, build -> Evaluation.of(build).severity(), known)
                            > 0.0;
        }

        private static Set<Group> groups(int bits) {
            Set<Group> groups = EnumSet.noneOf(Group.class);
            for (Group group : Group.values()) {
                if ((bits >> group.ordinal() & 1) == 1) {
                    groups.add(group);
                }
            }
            return groups;
        }

        /** A current that is changed is not raised; its taper is made for it. */
        private Settings changed(Set<Group> groups, Settings full) {
            Settings set = present;
            if (groups.contains(Group.SPEED_CAP)) {
                set = set.withSpeedCap(full.speedCap());
            }
            if (groups.contains(Group.MOTOR_BRAKE)) {
                set =
                        set.withMotorBrakeCurrent(
                                less(present.motorBrakeCurrent(), full.motorBrakeCurrent()));
            }
            if (groups.contains(Group.MOTOR_DRIVE)) {
                set =
                        set.withMotorDriveCurrent(
                                less(present.motorDriveCurrent(), full.motorDriveCurrent()));
            }
            if (groups.contains(Group.DRAW)) {
                set =
                        work.drawing(
                                set,
                                less(present.packDischargeCurrent(), full.packDischargeCurrent()));
            }
            if (groups.contains(Group.RETURN)) {
                set =
                        work.returning(
                                set,
                                true,
                                less(present.packRegenCurrent(), full.packRegenCurrent()));
            }
            return set;
        }

        private static double less(OptionalDouble own, OptionalDouble other) {
            return Math.min(
                    own.orElse(Double.POSITIVE_INFINITY), other.orElse(Double.POSITIVE_INFINITY));
        }

        private Obstacle obstacle() {
            double charge = Math.max(Math.nextUp(use.chargeTo()), use.chargeTo() + 0.01);
            double own = situation.nominal(present).battery().temperatureC();
            Situation easiest = part(Math.min(charge, use.chargeFrom()), warmed(own));
            Recommendation set = Recommendation.of(easiest, entry);
            Build build = set.build();
            Limits limits = Limits.of(build);
            Build unheld =
                    build.withSettings(
                            set.settings()
                                    .withHighVoltageTaper(Optional.empty())
                                    .withPackRegenCurrent(unlimited(limits)));
            BrakeVerdict free = BrakeVerdict.of(unheld);
            boolean isEnough = free.word() == BrakeVerdict.Word.ENOUGH;
            boolean isPack =
                    isEnough || free.deceleration() > BrakeVerdict.of(build).deceleration() + SAME;
            Constraint by =
                    isPack
                            ? limits.packRegen()
                                    .at(use.chargeTo(), build.battery().temperatureC())
                                    .binding()
                            : limits.motorBrake().binding();
            return new Obstacle(
                    isPack ? LimitId.PACK_REGEN_CURRENT : LimitId.MOTOR_BRAKE_CURRENT,
                    by,
                    isPack && !isEnough
                            ? Optional.of(limits.motorBrake().binding())
                            : Optional.empty(),
                    set.brake().deceleration(),
                    set.brake().wanted(),
                    slowEnough(easiest));
        }

        /** So much that only motor, tyres and rider hold the brake down [A]. */
        private static double unlimited(Limits limits) {
            return 1e3 * (1.0 + limits.motorBrake().value());
        }

        private OptionalDouble slowEnough(Situation easiest) {
            // the highest speed in use is known not to be slow enough
            int high = (int) Math.floor(use.speedMax() / entry.speedStep()) - 1;
            int slowest = LastStep.of(0, Math.max(0, high), step -> isSlowEnough(easiest, step));
            return slowest > 0
                    ? OptionalDouble.of(slowest * entry.speedStep())
                    : OptionalDouble.empty();
        }

        private boolean isSlowEnough(Situation easiest, int step) {
            double speed = step * entry.speedStep();
            return Recommendation.of(easiest.in(whole -> whole.withSpeedMax(speed)), entry)
                    .isGood();
        }
    }
}
