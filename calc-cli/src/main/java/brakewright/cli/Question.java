package brakewright.cli;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.buildfile.BuildFileException;
import brakewright.cli.buildfile.InputPlace;
import brakewright.cli.buildfile.Nearest;
import brakewright.cli.buildfile.Spread;
import brakewright.cli.buildfile.Variations;
import brakewright.cli.doubt.Ranges;
import brakewright.cli.text.SolveText;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.profile.CellMass;
import brakewright.profile.Solution;
import brakewright.profile.Solver;
import brakewright.profile.Unfavourable;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import brakewright.review.Operation;
import brakewright.review.Review;
import brakewright.review.Topic;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/**
 * A question for the value of one key that just keeps a vehicle within limits over the whole of its
 * use.
 *
 * @param file the build file
 * @param place the number asked for
 * @param places all numbers that change with it
 * @param low the lowest value asked about
 * @param high the highest value asked about
 */
record Question(
        BuildFile file, InputPlace place, List<InputPlace> places, double low, double high) {

    /**
     * Assumption: our own choice, where the mass of a cell is not known; few packs of this class
     * have more cells side by side.
     */
    private static final int MOST_PARALLEL = 100;

    /** Assumption: our own choice; slower than this nothing is braked electrically [m/s]. */
    private static final double SLOWEST = 0.3;

    /** Assumption: our own choice; a use of less charge than this is none [1]. */
    private static final double STEP = 1e-3;

    /** Assumption: our own choice [1]. */
    private static final double BEYOND = 1.1;

    private static final Set<Topic> OVER =
            EnumSet.of(
                    Topic.DRIVE_CURRENT_OVER,
                    Topic.BRAKE_CURRENT_OVER,
                    Topic.PACK_RETURN_OVER,
                    Topic.PACK_DRAW_OVER,
                    Topic.SPEED_CAP_OVER);

    private static final Set<Input> CURRENTS =
            Set.of(
                    Input.SETTINGS_MOTOR_DRIVE_CURRENT,
                    Input.SETTINGS_MOTOR_BRAKE_CURRENT,
                    Input.SETTINGS_PACK_DISCHARGE_CURRENT,
                    Input.SETTINGS_PACK_REGEN_CURRENT);

    private static final List<String> KEYS =
            List.of(
                    "motor_drive_current",
                    "motor_brake_current",
                    "pack_discharge_current",
                    "pack_regen_current",
                    "speed_cap",
                    "charge_from",
                    "parallel");

    /** Understands a key. */
    static Question of(BuildFile file, String key) {
        if (key.endsWith("_taper")) {
            throw new Unusable(
                    key
                            + " is a pair and has no single answer; brakewright explain BUILD "
                            + key.replace('_', '-')
                            + " tells where it must end and how wide it must be");
        }
        Optional<InputPlace> found = file.variations().find(key);
        if (found.isEmpty() && file.packs().size() > 1 && key.equals("parallel")) {
            throw new Unusable("the file has several packs: ask for packs.1.parallel or another");
        }
        if (found.isEmpty() || !isAskable(found.get().input())) {
            throw new Unusable(
                    "\""
                            + key
                            + "\" cannot be solved for; "
                            + Nearest.to(key, KEYS)
                                    .map(nearest -> "the nearest is " + nearest + "; ")
                                    .orElse("")
                            + "there are "
                            + String.join(", ", KEYS));
        }
        InputPlace place = found.get();
        Variations variations = file.variations();
        double possible = Variations.possible(place.input())[1];
        return switch (place.input()) {
            case USE_CHARGE_FROM ->
                    new Question(
                            file,
                            place,
                            List.of(place),
                            file.build().use().chargeTo() + STEP,
                            Math.max(
                                    file.build().use().chargeTo() + 2.0 * STEP,
                                    file.build().use().chargeFrom()));
            case SETTINGS_SPEED_CAP ->
                    new Question(
                            file,
                            place,
                            List.of(
                                    place,
                                    new InputPlace(Input.USE_SPEED_MAX, 0, InputPlace.Part.WHOLE)),
                            Math.min(SLOWEST, 0.1 * fastest(file)),
                            Math.min(possible, fastest(file)));
            case PACK_PARALLEL ->
                    new Question(file, place, List.of(place), 1.0, mostParallel(file, place));
            default -> new Question(file, place, List.of(place), 0.0, possible);
        };
    }

    /** A little beyond all that is set and all that back-EMF permits, so that what binds shows. */
    private static double fastest(BuildFile file) {
        Build build = file.build();
        return BEYOND * Math.max(Limits.of(build).speedCap().value(), build.highestSpeed());
    }

    /** As many as weigh no more than the whole vehicle, but never fewer than there are. */
    private static double mostParallel(BuildFile file, InputPlace place) {
        double present = file.variations().nominal(place).orElse(1.0);
        return Math.max(
                present,
                cells(file, place)
                        .map(cells -> cells.most(file.build().vehicle().mass()))
                        .orElse(MOST_PARALLEL));
    }

    /** What the cells of the pack asked about weigh; empty where the mass of one is not known. */
    private static Optional<CellMass> cells(BuildFile file, InputPlace place) {
        Variations variations = file.variations();
        return variations
                .nominal(new InputPlace(Input.CELL_MASS, place.pack(), InputPlace.Part.WHOLE))
                .flatMap(
                        mass ->
                                variations
                                        .nominal(
                                                new InputPlace(
                                                        Input.PACK_SERIES,
                                                        place.pack(),
                                                        InputPlace.Part.WHOLE))
                                        .map(series -> new CellMass(mass, series.intValue())));
    }

    /** The fullest charge cannot lie below the emptiest, wherever that is. */
    private Question above(double emptiest) {
        double least = emptiest + STEP;
        return place.input() == Input.USE_CHARGE_FROM && least > low
                ? new Question(file, place, places, least, Math.max(high, least + STEP))
                : this;
    }

    private static boolean isAskable(Input input) {
        return CURRENTS.contains(input)
                || input == Input.SETTINGS_SPEED_CAP
                || input == Input.USE_CHARGE_FROM
                || input == Input.PACK_PARALLEL;
    }

    boolean isCount() {
        return place.input() == Input.PACK_PARALLEL;
    }

    /**
     * Whether lower values are milder throughout. A less full pack takes more, but bears a lower
     * speed cap and may need a wider taper.
     */
    boolean isOrdered() {
        return place.input() != Input.USE_CHARGE_FROM;
    }

    /** The value now in the file, or taken in its place. */
    Optional<Double> present() {
        return file.variations().nominal(place);
    }

    /** What the text tells of the question. */
    SolveText.Asked asked() {
        return new SolveText.Asked(
                present(),
                low,
                high,
                isOrdered(),
                cells(file, place),
                file.build().vehicle().mass());
    }

    /** Some other numbers that are held. */
    record Held(List<InputPlace> places, double[] values) {

        static final Held NOTHING = new Held(List.of(), new double[0]);
    }

    /** Answers with nominal inputs. */
    Solution nominal(Held held) {
        return above(held).solve(value -> judge(build(held, new double[0], value)));
    }

    /** Answers at the unfavourable corner of the tolerances stated; empty where none is. */
    Optional<Solution> unfavourable(Held held) {
        List<Spread> spreads =
                file.spreads().stated().stream()
                        .filter(each -> !places.contains(each.place()))
                        .filter(each -> !held.places().contains(each.place()))
                        .toList();
        if (spreads.isEmpty()) {
            return Optional.empty();
        }
        double emptiest =
                spreads.stream()
                        .filter(each -> each.place().input() == Input.USE_CHARGE_TO)
                        .mapToDouble(Spread::high)
                        .findFirst()
                        .orElse(0.0);
        List<InputPlace> uncertain =
                Stream.concat(held.places().stream(), spreads.stream().map(Spread::place)).toList();
        return Optional.of(
                Unfavourable.solve(
                        Ranges.of(spreads),
                        (values, value) ->
                                judge(build(new Held(uncertain, held.values()), values, value)),
                        above(held).above(emptiest)::solve));
    }

    private Question above(Held held) {
        Question asked = this;
        for (int i = 0; i < held.values().length; i++) {
            if (held.places().get(i).input() == Input.USE_CHARGE_TO) {
                asked = asked.above(held.values()[i]);
            }
        }
        return asked;
    }

    /**
     * Tells which other settings stay beyond a limit of their own, whatever the charge, where one
     * has a value: they are no reason to answer otherwise, and must be mended, too.
     */
    List<Finding> beside(double value) {
        if (!place.input().key().startsWith("settings.")) {
            return List.of();
        }
        Build build = build(Held.NOTHING, new double[0], value);
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings().stream()
                .filter(finding -> OVER.contains(finding.topic()))
                .filter(finding -> !finding.subject().equals(setting()))
                .filter(finding -> finding.charge().isEmpty())
                .toList();
    }

    /**
     * A setting is asked about by itself, whatever the others exceed; what is no setting, whole.
     */
    private Evaluation judge(Build build) {
        return setting()
                .map(id -> Evaluation.of(build, Set.of(id)))
                .orElseGet(() -> Evaluation.of(build));
    }

    private Optional<LimitId> setting() {
        return Optional.ofNullable(
                switch (place.input()) {
                    case SETTINGS_MOTOR_DRIVE_CURRENT -> LimitId.MOTOR_DRIVE_CURRENT;
                    case SETTINGS_MOTOR_BRAKE_CURRENT -> LimitId.MOTOR_BRAKE_CURRENT;
                    case SETTINGS_PACK_DISCHARGE_CURRENT -> LimitId.PACK_DISCHARGE_CURRENT;
                    case SETTINGS_PACK_REGEN_CURRENT -> LimitId.PACK_REGEN_CURRENT;
                    case SETTINGS_SPEED_CAP -> LimitId.SPEED_CAP;
                    default -> null;
                });
    }

    private Solution solve(DoubleFunction<Evaluation> verdict) {
        if (isCount()) {
            return Solver.smallest(verdict::apply, (int) low, (int) high);
        }
        return isOrdered()
                ? Solver.highest(verdict, low, high)
                : Solver.highestOfAny(verdict, low, high);
    }

    private Build build(Held held, double[] uncertain, double asked) {
        List<InputPlace> all = new ArrayList<>(held.places());
        all.addAll(places);
        double[] numbers = new double[all.size()];
        Arrays.fill(numbers, asked);
        System.arraycopy(held.values(), 0, numbers, 0, held.values().length);
        System.arraycopy(uncertain, 0, numbers, held.values().length, uncertain.length);
        try {
            return file.variations().with(all, numbers);
        } catch (BuildFileException wrong) {
            throw new Unusable(place.name(), wrong);
        }
    }
}
