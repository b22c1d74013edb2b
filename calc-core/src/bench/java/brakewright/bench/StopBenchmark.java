package brakewright.bench;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
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

/** How long one stop takes, warm: brakes building up, fading, the charge state climbing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StopBenchmark {

    private final Build board = Builds.trailBoard();
    private final Stop stop =
            new Stop(board, Worksheet.of(board).operation().brake(), Surroundings.of(board));

    /**
     * Stops a board from 30 km/h.
     *
     * @return how it ends
     */
    @Benchmark
    public StopOutcome stop() {
        return stop.from(30.0 / 3.6, 0.8);
    }
}
