package brakewright.bench;

import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.worksheet.Worksheet;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How long a whole worksheet takes, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class WorksheetBenchmark {

    private final Build board = Builds.trailBoard();

    /**
     * Computes the worksheet of a board.
     *
     * @return the worksheet
     */
    @Benchmark
    public Worksheet worksheet() {
        return Worksheet.of(board);
    }
}
