package brakewright.cli.words;

import brakewright.limit.BrakingTime;
import brakewright.limit.Signal;
import brakewright.review.BrakeVerdict;
import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.review.VerdictPart;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** Says a verdict and its conditions in sentences. */
public final class VerdictWords {

    private static final String PACK = "the pack";

    /** A controller that a full pack leaves no volts is no matter of the pack. */
    private static final String PARTS = "the parts";

    private static final String WITHIN =
            "No limit is exceeded over the charge, speed and temperature in use.";

    private final UnitSystem units;
    private final double highestSpeed;
    private final FindingWords findings;

    /**
     * Makes the words.
     *
     * @param build the vehicle
     * @param units for speeds
     */
    public VerdictWords(Build build, UnitSystem units) {
        this.findings = new FindingWords(build, units);
        this.units = units;
        this.highestSpeed = build.highestSpeed();
    }

    /**
     * Says a verdict.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> of(Review review) {
        Verdict verdict = review.verdict();
        return switch (verdict.outcome()) {
            case WITHIN_LIMITS -> within(review);
            case OUTSIDE_LIMITS, CONDITIONAL -> counted(told(review.all(), PACK), review);
        };
    }

    /**
     * Says the same without what to do about it.
     *
     * @param names of such inputs, at least one
     * @return a sentence
     */
    public static String fromMemoryInBrief(List<String> names) {
        return "It rests on figures from memory: " + String.join(", ", names) + ".";
    }

    /**
     * Says that a verdict rests on what is only remembered.
     *
     * @param names of such inputs, at least one
     * @return a sentence or two
     */
    public static String fromMemory(List<String> names) {
        return fromMemoryInBrief(names)
                + " What was measured, or stands in a datasheet, goes into the build file under the"
                + " same name.";
    }

    private static List<String> within(Review review) {
        return List.of(
                WITHIN
                        + review.ofAnotherKind()
                                .map(
                                        each ->
                                                " But there is a "
                                                        + each.key()
                                                        + " of another kind among the findings.")
                                .orElse(""));
    }

    /** What is exceeded, gravest first, and then the conditions. */
    private List<String> told(VerdictPart part, String whom) {
        List<String> sentences = new ArrayList<>();
        part.exceeded().forEach(finding -> sentences.add(findings.of(finding)));
        part.conditions().stream()
                .sorted(Comparator.comparingInt(VerdictWords::rank))
                .map(each -> sentence(each, whom, !part.exceeded().isEmpty()))
                .distinct()
                .forEach(sentences::add);
        return sentences;
    }

    /** Beside charges up to which braking is safe: how long it is taken to last. */
    private static List<String> counted(List<String> told, Review review) {
        List<String> sentences = new ArrayList<>(told);
        if (review.isBoundByLongBraking()) {
            sentences.add(lasting(review.braking()));
        }
        return sentences;
    }

    private static String lasting(BrakingTime braking) {
        String counted =
                Double.isInfinite(braking.seconds())
                        ? "Counted is braking without end"
                        : "Counted is braking for " + Numbers.time(braking.seconds());
        return counted
                + switch (braking.reason()) {
                    case HARD_BRAKE -> ", the longest in use.";
                    case STOP -> ", the longest that a stop can send back what is set.";
                    case SLOPE -> ", the longest that the slope in use can send back what is set.";
                }
                + added(braking);
    }

    /** What braking adds to the charge is no part of the bounds on it. */
    private static String added(BrakingTime braking) {
        return Numbers.isNothing(100.0 * braking.charge(), 1)
                ? ""
                : " It adds "
                        + Numbers.up(100.0 * braking.charge(), 1)
                        + " % of charge itself: begin it so much lower.";
    }

    /** Bounds on the charge come first: they are met on every ride. */
    private static int rank(Condition condition) {
        return condition instanceof Condition.ChargeBelow
                ? 0
                : condition instanceof Condition.ChargeAbove ? 1 : 2;
    }

    /**
     * Says a verdict in few words: what is exceeded whatever the charge by name, and of conditions
     * that differ only in the cell temperature one sentence.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> brief(Review review) {
        return switch (review.verdict().outcome()) {
            case WITHIN_LIMITS -> List.of(briefWithin(review));
            case OUTSIDE_LIMITS, CONDITIONAL -> counted(brief(review.all()), review);
        };
    }

    /**
     * Says the same without how long braking is taken to last.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> tight(Review review) {
        return switch (review.verdict().outcome()) {
            case WITHIN_LIMITS -> brief(review);
            case OUTSIDE_LIMITS, CONDITIONAL -> brief(review.all());
        };
    }

    /**
     * Says the same in as few words as there are.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> terse(Review review) {
        return switch (review.verdict().outcome()) {
            case WITHIN_LIMITS -> brief(review);
            case OUTSIDE_LIMITS, CONDITIONAL -> brief(review.all(), true, "");
        };
    }

    /**
     * Says in few words what becomes of the packs.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> briefPack(Review review) {
        return review.pack().isWell() ? pack(review) : brief(review.pack());
    }

    /**
     * Says in few words what becomes of motor, controller, wiring, tyres and rider.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> briefParts(Review review) {
        return review.parts().isWell() ? parts(review) : brief(review.parts(), false, PARTS);
    }

    /** Weak brakes stand beside this verdict anyway. */
    private static String briefWithin(Review review) {
        return WITHIN
                + review.ofAnotherKind()
                        .map(each -> " But read the " + each.key() + " of another kind below.")
                        .orElse("");
    }

    private List<String> brief(VerdictPart part) {
        return brief(part, false, PACK);
    }

    private List<String> brief(VerdictPart part, boolean isTerse, String whom) {
        List<String> sentences = new ArrayList<>();
        if (!part.exceeded().isEmpty()) {
            sentences.add(
                    "Exceeded "
                            + (part.exceeded().stream().allMatch(each -> each.charge().isEmpty())
                                    ? ""
                                    : "whatever the charge ")
                            + "by what is set: "
                            + part.exceeded().stream()
                                    .map(VerdictWords::exceeded)
                                    .distinct()
                                    .collect(Collectors.joining(", "))
                            + ".");
        }
        List<Condition.ChargeBelow> below = new ArrayList<>();
        List<Condition.ChargeAbove> above = new ArrayList<>();
        List<Condition> others = new ArrayList<>();
        for (Condition condition : part.conditions()) {
            if (condition instanceof Condition.ChargeBelow each) {
                below.add(each);
            } else if (condition instanceof Condition.ChargeAbove each) {
                above.add(each);
            } else {
                others.add(condition);
            }
        }
        boolean isApart = !part.exceeded().isEmpty();
        if (!below.isEmpty()) {
            sentences.add(below(below, isTerse, whom, isApart));
        }
        if (!above.isEmpty()) {
            sentences.add(above(above, isTerse, whom, isApart));
        }
        others.stream()
                .map(each -> strictest(each, others))
                .map(each -> sentence(each, isTerse ? "" : PACK, isApart))
                .distinct()
                .forEach(sentences::add);
        return sentences;
    }

    /** Of bounds on the cell temperature the one that implies this. */
    private static Condition strictest(Condition condition, List<Condition> all) {
        if (condition instanceof Condition.CellsFrom from) {
            return all.stream()
                    .filter(Condition.CellsFrom.class::isInstance)
                    .map(Condition.CellsFrom.class::cast)
                    .filter(each -> each.temperatureC() >= from.temperatureC())
                    .filter(each -> implies(each.excess(), from.excess()))
                    .min(
                            Comparator.comparingDouble(
                                            (Condition.CellsFrom each) -> -each.temperatureC())
                                    .thenComparingDouble(each -> each.excess().permitted()))
                    .orElse(from);
        }
        if (condition instanceof Condition.CellsUpTo upTo) {
            return all.stream()
                    .filter(Condition.CellsUpTo.class::isInstance)
                    .map(Condition.CellsUpTo.class::cast)
                    .filter(each -> each.temperatureC() <= upTo.temperatureC())
                    .filter(each -> implies(each.excess(), upTo.excess()))
                    .min(
                            Comparator.comparingDouble(Condition.CellsUpTo::temperatureC)
                                    .thenComparingDouble(each -> each.excess().permitted()))
                    .orElse(upTo);
        }
        return condition;
    }

    private static boolean implies(Condition.Excess one, Condition.Excess other) {
        return one.isReturned() == other.isReturned()
                && one.permitted() <= other.permitted()
                && one.current() == other.current()
                && one.temperatureC() == other.temperatureC();
    }

    private static String exceeded(Finding finding) {
        return finding.constraint()
                .map(LimitWords::brief)
                .or(() -> finding.subject().map(LimitWords::of))
                .orElse(finding.topic().key().replace('-', ' '));
    }

    /** The strictest in full, of the others the charge. */
    private String below(
            List<Condition.ChargeBelow> all, boolean isTerse, String whom, boolean isApart) {
        List<Condition.ChargeBelow> sorted =
                all.stream()
                        .sorted(Comparator.comparingDouble(Condition.ChargeBelow::charge))
                        .toList();
        Condition.ChargeBelow first = sorted.get(0);
        return isWell(true, whom, isApart)
                + "below "
                + downTo(first.charge())
                + (isTerse ? " charge (" : " charge (cells at ")
                + cellsAt(
                        sorted, Condition.ChargeBelow::temperatureC, each -> downTo(each.charge()))
                + (isTerse ? "" : " at any speed up to " + units.speedDown(highestSpeed))
                + there(first)
                + ".";
    }

    private static String above(
            List<Condition.ChargeAbove> all, boolean isTerse, String whom, boolean isApart) {
        List<Condition.ChargeAbove> sorted =
                all.stream()
                        .sorted(
                                Comparator.comparingDouble(Condition.ChargeAbove::charge)
                                        .reversed())
                        .toList();
        Condition.ChargeAbove first = sorted.get(0);
        return isWell(false, whom, isApart)
                + "above "
                + upTo(first.charge())
                + (isTerse ? " charge (" : " charge (cells at ")
                + cellsAt(sorted, Condition.ChargeAbove::temperatureC, each -> upTo(each.charge()))
                + ", not down to "
                + Numbers.percent(first.lowestCharge())
                + ".";
    }

    /** The temperature of the strictest, and of the others what they say at theirs. */
    private static <T> String cellsAt(
            List<T> sorted, ToDoubleFunction<T> temperatureC, Function<T, String> told) {
        return sorted.stream()
                .skip(1)
                .map(
                        each ->
                                "; "
                                        + told.apply(each)
                                        + " at "
                                        + celsius(temperatureC.applyAsDouble(each)))
                .collect(
                        Collectors.joining(
                                "", celsius(temperatureC.applyAsDouble(sorted.get(0))), ")"));
    }

    private static String downTo(double charge) {
        return Numbers.down(100.0 * charge, 1) + " %";
    }

    private static String upTo(double charge) {
        return Numbers.up(100.0 * charge, 1) + " %";
    }

    private static String celsius(double temperatureC) {
        return Numbers.nearest(temperatureC, 0) + " °C";
    }

    /**
     * Says what becomes of the packs.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> pack(Review review) {
        return review.pack().isWell()
                ? List.of(
                        "It stays within its limits over the charge, speed and temperature in use."
                                + review.ofAnotherKind()
                                        .filter(Signal.DANGER::equals)
                                        .map(each -> " But read the danger of another kind.")
                                        .orElse(""))
                : counted(told(review.pack(), PACK), review);
    }

    /**
     * Says what becomes of motor, controller, wiring, tyres and rider.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> parts(Review review) {
        return review.parts().isWell()
                ? List.of("Motor, controller, wiring, tyres and rider stay within theirs.")
                : told(review.parts(), PARTS);
    }

    /**
     * Says what the settings leave of the brake where it is weakest.
     *
     * @param brake the verdict
     * @return one sentence
     */
    public String of(BrakeVerdict brake) {
        String where =
                units.speedText(brake.speed())
                        + " and "
                        + Numbers.percent(brake.charge())
                        + " charge";
        String reached =
                Numbers.down(Math.max(0.0, brake.deceleration()), 2) + " m/s² on level road";
        String wanted = Numbers.significant(brake.wanted()) + " m/s²";
        return switch (brake.word()) {
            case ENOUGH ->
                    "It reaches at least " + reached + ", the wanted " + wanted + " included.";
            case WEAK ->
                    brake.deceleration() < brake.wanted()
                            ? "At "
                                    + where
                                    + " it reaches "
                                    + reached
                                    + "; "
                                    + wanted
                                    + " is wanted."
                            : "It does not hold the vehicle on the steepest slope in use at "
                                    + where
                                    + ".";
            case NONE ->
                    "At "
                            + where
                            + " the brakes add only "
                            + Numbers.down(Math.max(0.0, brake.left()), 2)
                            + " m/s² to what the road takes away; "
                            + wanted
                            + " is wanted.";
        };
    }

    /**
     * Says a condition.
     *
     * @param condition the condition
     * @return a sentence
     */
    public String sentence(Condition condition) {
        return sentence(condition, PACK, false);
    }

    /** Nothing is called safe beside what is exceeded whatever the charge. */
    private static String isWell(boolean isBraking, String whom, boolean isApart) {
        return isApart
                ? "Besides, " + (isBraking ? "brake" : "drive") + " only "
                : (isBraking ? "Braking" : "Driving")
                        + " is safe "
                        + (whom.isEmpty() ? "" : "for " + whom + " ");
    }

    private String sentence(Condition condition, String whom, boolean isApart) {
        if (condition instanceof Condition.ChargeBelow below) {
            String start =
                    isWell(true, whom, isApart)
                            + "below "
                            + Numbers.down(100.0 * below.charge(), 1)
                            + " % charge at any speed up to "
                            + units.speedDown(highestSpeed);
            return start + there(below) + cells(below.temperatureC()) + ".";
        }
        if (condition instanceof Condition.ChargeAbove above) {
            return isWell(false, whom, isApart)
                    + "above "
                    + Numbers.up(100.0 * above.charge(), 1)
                    + " % charge, not down to "
                    + Numbers.percent(above.lowestCharge())
                    + cells(above.temperatureC())
                    + ".";
        }
        if (condition instanceof Condition.CellsFrom from) {
            return temperature(
                    Numbers.up(from.temperatureC(), 0) + " °C or warmer",
                    from.excess(),
                    whom,
                    isApart);
        }
        if (condition instanceof Condition.CellsUpTo upTo) {
            return temperature(
                    Numbers.down(upTo.temperatureC(), 0) + " °C or cooler",
                    upTo.excess(),
                    whom,
                    isApart);
        }
        if (condition instanceof Condition.RiddenUpTo ridden) {
            return isWell(true, whom, isApart)
                    + "until the cells are warmer than "
                    + Numbers.down(ridden.limitC(), 0)
                    + " °C: predicted from "
                    + Numbers.nearest(ridden.startC(), 0)
                    + " °C on, after about "
                    + Numbers.time(ridden.time())
                    + " at "
                    + units.speedText(ridden.speed())
                    + ".";
        }
        return "It never holds.";
    }

    private String there(Condition.ChargeBelow below) {
        if (below.speedThere().isEmpty()) {
            return "";
        }
        double speed = below.speedThere().getAsDouble();
        return ", and at "
                + Numbers.percent(below.highestCharge())
                + (speed > 0.0 ? " only up to " + units.speedDown(speed) : " at none");
    }

    private static String temperature(
            String cells, Condition.Excess excess, String whom, boolean isApart) {
        return isWell(excess.isReturned(), whom, isApart)
                + "with the cells at "
                + cells
                + "; at "
                + Numbers.nearest(excess.temperatureC(), 0)
                + " °C it "
                + (excess.isReturned() ? "may take " : "may give ")
                + (excess.permitted() > 0.0
                        ? "no more than " + Numbers.down(excess.permitted(), 1) + " A of the "
                        : "none of the ")
                + Numbers.nearest(excess.current(), 1)
                + " A.";
    }

    private static String cells(double temperatureC) {
        return " (cells at " + Numbers.nearest(temperatureC, 0) + " °C)";
    }
}
