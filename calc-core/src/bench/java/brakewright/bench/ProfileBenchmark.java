package brakewright.bench;

import brakewright.review.Evaluation;
import brakewright.review.VerdictGrid;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How long the verdict in numbers takes, warm: once, and over charge and speed. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class ProfileBenchmark {

    private final Build board = Builds.trailBoard();

    /**
     * Evaluates a board.
     *
     * @return the evaluation
     */
    @Benchmark
    public Evaluation evaluation() {
        return Evaluation.of(board);
    }

    /**
     * Evaluates a board over 21 charge states and 41 speeds.
     *
     * @return the grid
     */
    @Benchmark
    public VerdictGrid grid() {
        return VerdictGrid.of(board);
    }
}
