package brakewright.profile;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.limit.TaperLimit;
import brakewright.numeric.LastStep;
import brakewright.operation.Operation;
import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * A complete set of settings that holds together: entered as it stands, it gives the verdicts told
 * here, at the unfavourable side of every stated tolerance, and asked again it recommends itself.
 *
 * <p>It is built without looking at the settings of before, in an order in which no later step
 * undoes an earlier one: the speed cap, as it says how fast one brakes; both motor currents, each
 * the greatest that motor, tyres and rider bear; what may leave the pack, with a low-voltage taper
 * made for just that current; what may enter it, likewise with a high-voltage taper. Each is
 * rounded to what a person enters, to the side that keeps the set safe, before the next is looked
 * for. Of the ways to protect a full pack the taper is taken, unless the brake is in a better word
 * without it and the pack is no worse for it in all of the use.
 *
 * @param settings all of them
 * @param build the vehicle with them, at nominal inputs and in its use
 * @param evaluation the verdict on pack and parts
 * @param brake the verdict on the brake
 */
public record Recommendation(
        Settings settings, Build build, Evaluation evaluation, BrakeVerdict brake) {

    private static final Set<LimitId> DRAWING = Set.of(LimitId.PACK_DISCHARGE_CURRENT);
    private static final Set<LimitId> SETTINGS = Set.of(LimitId.values());
    private static final Set<LimitId> RETURNING = Set.of(LimitId.PACK_REGEN_CURRENT);

    /**
     * Finds the set for a situation.
     *
     * @param situation the vehicle in its use
     * @param entry how finely settings are entered
     * @return the set; its verdict says whether there is one within limits
     */
    public static Recommendation of(Situation situation, Entry entry) {
        return new Work(situation, entry).recommend();
    }

    /**
     * Judges a set of settings in a situation.
     *
     * @param situation the vehicle in its use
     * @param settings all settings
     * @return the set with its verdicts, both at the unfavourable side of the tolerances
     */
    public static Recommendation judged(Situation situation, Settings settings) {
        return new Recommendation(
                settings,
                situation.nominal(settings),
                Evaluation.of(
                        situation.worst(
                                settings, build -> Tolerances.badness(Evaluation.of(build)))),
                situation.brake(settings));
    }

    /**
     * Returns whether pack and parts stay within limits in all of the use.
     *
     * @return true if nothing is exceeded
     */
    public boolean isWithinLimits() {
        return evaluation.outcome() == Verdict.Outcome.WITHIN_LIMITS;
    }

    /**
     * Returns whether a danger of another kind than the verdicts tell is left with the set entered.
     *
     * @return true if it is within limits and a review of the vehicle has one
     */
    public boolean leavesOtherDanger() {
        Limits limits = Limits.of(build);
        return isWithinLimits()
                && Review.of(build, limits, Operation.of(build, limits))
                        .ofAnotherKind()
                        .filter(Signal.DANGER::equals)
                        .isPresent();
    }

    /**
     * Returns whether the vehicle moves with the set entered.
     *
     * @return false where no current is left for the motors
     */
    public boolean drives() {
        return settings.packDischargeCurrent().orElse(1.0) > 0.0
                && settings.motorDriveCurrent().orElse(1.0) > 0.0;
    }

    /**
     * Returns whether this set is one to ride with.
     *
     * @return true if it is within limits and the brake is enough
     */
    public boolean isGood() {
        return isWithinLimits() && brake.word() == BrakeVerdict.Word.ENOUGH;
    }

    /**
     * Computes the stop with the fullest pack in use.
     *
     * @return how it ends
     */
    public StopOutcome stopFull() {
        return stop(charge(1.0));
    }

    /**
     * Computes the stop half way through the charge in use.
     *
     * @return how it ends
     */
    public StopOutcome stopHalfWay() {
        return stop(charge(0.5));
    }

    private double charge(double share) {
        double to = build.use().chargeTo();
        return to + share * (build.use().chargeFrom() - to);
    }

    /** From the highest speed in use on level dry road, at nominal inputs. */
    private StopOutcome stop(double charge) {
        Operation operation = Operation.of(build, Limits.of(build));
        return new Stop(build, operation.brake(), Surroundings.of(build))
                .from(operation.topSpeed(), charge);
    }

    static final class Work {

        private static final double ANY = Double.POSITIVE_INFINITY;

        private final Situation situation;
        private final Entry entry;
        private final List<double[]> known = new ArrayList<>();
        private @Nullable Fit low;
        private @Nullable Fit high;

        Work(Situation situation, Entry entry) {
            this.situation = situation;
            this.entry = entry;
            if (situation.isExact()) {
                known.add(new double[0]);
            }
        }

        Recommendation recommend() {
            Settings driven = driven();
            Recommendation tapered = tapered(driven);
            return tapered.isGood()
                    ? tapered
                    : chosen(
                            tapered,
                            bare(driven),
                            (one, other) -> one.brake().word().compareTo(other.brake().word()) < 0);
        }

        /** The set within limits that brakes hardest where it brakes least. */
        Recommendation strongest() {
            Settings driven = driven();
            return chosen(
                    tapered(driven),
                    bare(driven),
                    (one, other) -> one.brake().deceleration() > other.brake().deceleration());
        }

        /** The bare set only where it is within limits, and the tapered one is not or is worse. */
        private Recommendation chosen(
                Recommendation tapered,
                Recommendation bare,
                BiPredicate<Recommendation, Recommendation> isBetter) {
            return isKept(bare) && (!isKept(tapered) || isBetter.test(bare, tapered))
                    ? bare
                    : tapered;
        }

        /**
         * Whether a set keeps within all that a setting can mend. That a ride warms the cells too
         * far to be charged is mended by no brake alone, and that is no reason to recommend none.
         */
        private boolean isKept(Recommendation set) {
            return set.isWithinLimits()
                    || (set.evaluation().outcome() == Verdict.Outcome.CONDITIONAL
                            && set.evaluation().worst() == ConstraintId.TEMPERATURE_WINDOW
                            && situation
                                    .positive(
                                            set.settings(),
                                            build -> Evaluation.of(build, SETTINGS).severity())
                                    .isEmpty());
        }

        private Recommendation tapered(Settings driven) {
            return judged(situation, returning(driven, true, ANY));
        }

        private Recommendation bare(Settings driven) {
            return judged(situation, returning(driven, false, ANY));
        }

        /** Everything but what enters the pack. */
        private Settings driven() {
            Settings set = Settings.NONE;
            set = set.withSpeedCap(OptionalDouble.of(cap()));
            Settings capped = set;
            set = braking(capped);
            set =
                    set.withMotorDriveCurrent(
                            entry.currentDown(
                                    situation.least(
                                            capped,
                                            build -> Limits.of(build).motorDrive().value())));
            return drawing(set, ANY);
        }

        /**
         * All that motor, tyres and rider bear, and that no trip opens at before a late limiter.
         */
        private Settings braking(Settings capped) {
            Settings set =
                    capped.withMotorBrakeCurrent(
                            entry.currentDown(
                                    situation.least(
                                            capped,
                                            build -> Limits.of(build).motorBrake().value())));
            ToDoubleFunction<Build> overshoot = build -> Evaluation.ofHardGrab(build).severity();
            return situation.positive(set, overshoot).isEmpty()
                    ? set
                    : greatest(
                            set.motorBrakeCurrent().orElseThrow(),
                            capped::withMotorBrakeCurrent,
                            overshoot);
        }

        /** No faster than the use; a cap that ends below it would be another use. */
        private double cap() {
            Build free = situation.nominal(Settings.NONE);
            double limit =
                    situation.least(Settings.NONE, build -> Limits.of(build).speedCap().value());
            return entry.speedDown(Math.min(limit, free.use().speedMax()));
        }

        /** The greatest draw up to one that its taper makes safe, with that taper. */
        Settings drawing(Settings set, double most) {
            double rating =
                    situation.least(
                            set, build -> leastStatic(build, true) / build.controllers().count());
            return greatest(
                    Math.min(most, rating),
                    current -> lowTapered(set.withPackDischargeCurrent(current)),
                    build -> Evaluation.of(build, DRAWING).severity());
        }

        /** The greatest return up to one that is safe, with its taper or without one. */
        Settings returning(Settings set, boolean isTapered, double most) {
            double rating =
                    situation.least(
                            set, build -> leastStatic(build, false) / build.controllers().count());
            return greatest(
                    Math.min(most, rating),
                    current -> {
                        Settings with = set.withPackRegenCurrent(current);
                        return isTapered
                                ? highTapered(with)
                                : with.withHighVoltageTaper(Optional.empty());
                    },
                    build -> Evaluation.of(build, RETURNING).severity());
        }

        private interface At {
            Settings with(double current);
        }

        private Settings greatest(double top, At at, ToDoubleFunction<Build> severity) {
            double[] steps = entry.currentsUpTo(top, false);
            int best = highest(steps, at, severity);
            if (steps[best] < 1.0) {
                steps = entry.currentsUpTo(Math.min(top, 1.0), true);
                best = highest(steps, at, severity);
            }
            return at.with(steps[best]);
        }

        /**
         * More is no milder; the first step is nothing at all. The last step that the places known
         * so far permit is asked about everywhere; a place that forbids it is known from then on.
         * An exact vehicle is at one place.
         */
        private int highest(double[] steps, At at, ToDoubleFunction<Build> severity) {
            int best = steps.length - 1;
            Optional<double[]> worse;
            do {
                best =
                        LastStep.ofShares(
                                steps,
                                best,
                                step -> situation.positive(at.with(steps[step]), severity, known));
                worse =
                        situation.isExact()
                                ? Optional.empty()
                                : situation.positive(at.with(steps[best]), severity);
                worse.ifPresent(known::add);
            } while (worse.isPresent() && best > 0);
            return best;
        }

        private static double leastStatic(Build build, boolean isDraw) {
            Limits limits = Limits.of(build);
            double least = Double.POSITIVE_INFINITY;
            for (double cellsC : build.cellTemperatures()) {
                least =
                        Math.min(
                                least,
                                (isDraw ? limits.packDischarge() : limits.packRegen())
                                        .staticPart(cellsC)
                                        .value());
            }
            return least;
        }

        /** The end is rounded first, then the beginning is put a whole band above it. */
        Settings lowTapered(Settings set) {
            if (low == null) {
                low = fit(set.withPackDischargeCurrent(1.0), Limits::lowVoltageTaper, 1.0);
            }
            double ends = entry.voltageUp(low.end());
            double begins =
                    entry.voltageUp(
                            ends + set.packDischargeCurrent().orElseThrow() * low.bandPerAmpere());
            return set.withLowVoltageTaper(
                    begins > ends ? Optional.of(new Taper(begins, ends)) : Optional.empty());
        }

        Settings highTapered(Settings set) {
            if (high == null) {
                high = fit(set.withPackRegenCurrent(1.0), Limits::highVoltageTaper, -1.0);
            }
            double ends = entry.voltageDown(high.end());
            double begins =
                    entry.voltageDown(
                            ends - set.packRegenCurrent().orElseThrow() * high.bandPerAmpere());
            return set.withHighVoltageTaper(
                    begins < ends && begins > 0.0
                            ? Optional.of(new Taper(begins, ends))
                            : Optional.empty());
        }

        /**
         * Where a taper must end and how wide it must be for each ampere that is set, both at their
         * own unfavourable side.
         *
         * @param end [V]
         * @param bandPerAmpere the resistance that the band must cover [Ω]
         */
        private record Fit(double end, double bandPerAmpere) {}

        /** The band is in proportion to the current, so it is asked for at one ampere. */
        private Fit fit(Settings atOneAmpere, Function<Limits, TaperLimit> taper, double sign) {
            return new Fit(
                    sign
                            * situation.greatest(
                                    atOneAmpere,
                                    build ->
                                            sign * taper.apply(Limits.of(build)).binding().limit()),
                    situation.greatest(
                            atOneAmpere, build -> taper.apply(Limits.of(build)).band().limit()));
        }
    }
}
