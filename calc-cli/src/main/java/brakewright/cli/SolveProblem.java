package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
import brakewright.buildfile.Spread;
import brakewright.cli.doubt.Ranges;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.profile.Answer;
import brakewright.profile.Solution;
import brakewright.profile.SolveSheet;
import brakewright.profile.Solver;
import brakewright.profile.Unfavourable;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.review.Topic;
import brakewright.spec.Build;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;

/**
 * Which value of a key just keeps a vehicle within limits over the whole of its use.
 *
 * @param file the build file
 * @param key the key whose value is sought
 */
record SolveProblem(BuildFile file, SoughtKey key) {

    private static final Set<Topic> OVER =
            EnumSet.of(
                    Topic.DRIVE_CURRENT_OVER,
                    Topic.BRAKE_CURRENT_OVER,
                    Topic.PACK_RETURN_OVER,
                    Topic.PACK_DRAW_OVER,
                    Topic.SPEED_CAP_OVER);

    /** The value now in the file, or taken in its place. */
    private Optional<Double> present() {
        return file.variations().nominal(key.place());
    }

    /** The question and its answer. */
    SolveSheet sheet() {
        Answer answer = answer(Held.NOTHING);
        return new SolveSheet(
                present().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                key.low(),
                key.high(),
                key.isOrdered(),
                key.cells(file),
                file.build().vehicle().mass(),
                answer,
                beside(answer.counting().value()));
    }

    /** Answers with some other numbers held. */
    Answer answer(Held held) {
        return new Answer(nominal(held), unfavourable(held));
    }

    /** Some other numbers that are held. */
    record Held(List<InputPlace> places, double[] values) {

        static final Held NOTHING = new Held(List.of(), new double[0]);
    }

    /** Answers with nominal inputs. */
    private Solution nominal(Held held) {
        return solve(above(held), value -> judge(build(held, new double[0], value)));
    }

    /** Answers at the unfavourable corner of the tolerances stated; empty where none is. */
    private Optional<Solution> unfavourable(Held held) {
        List<Spread> spreads =
                file.spreads().stated().stream()
                        .filter(each -> !key.places().contains(each.place()))
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
                        verdict -> solve(above(held).above(emptiest), verdict)));
    }

    private SoughtKey above(Held held) {
        SoughtKey asked = key;
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
    private List<Finding> beside(double value) {
        if (key.setting().isEmpty()) {
            return List.of();
        }
        Build build = build(Held.NOTHING, new double[0], value);
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings().stream()
                .filter(finding -> OVER.contains(finding.topic()))
                .filter(finding -> !finding.subject().equals(key.setting()))
                .filter(finding -> finding.charge().isEmpty())
                .toList();
    }

    /**
     * A setting is asked about by itself, whatever the others exceed; what is no setting, whole.
     */
    private Evaluation judge(Build build) {
        return key.setting()
                .map(id -> Evaluation.of(build, Set.of(id)))
                .orElseGet(() -> Evaluation.of(build));
    }

    private static Solution solve(SoughtKey asked, DoubleFunction<Evaluation> verdict) {
        if (asked.isCount()) {
            return Solver.smallest(verdict::apply, (int) asked.low(), (int) asked.high());
        }
        return asked.isOrdered()
                ? Solver.highest(verdict, asked.low(), asked.high())
                : Solver.highestOfAny(verdict, asked.low(), asked.high());
    }

    private Build build(Held held, double[] uncertain, double value) {
        List<InputPlace> all = new ArrayList<>(held.places());
        all.addAll(key.places());
        double[] numbers = new double[all.size()];
        Arrays.fill(numbers, value);
        System.arraycopy(held.values(), 0, numbers, 0, held.values().length);
        System.arraycopy(uncertain, 0, numbers, held.values().length, uncertain.length);
        try {
            return file.variations().with(all, numbers);
        } catch (BuildFileException wrong) {
            throw new Unusable(key.place().name(), wrong);
        }
    }
}
