package brakewright.bench;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.live.Horizon;
import brakewright.live.LiveLimits;
import brakewright.live.MeasuringDoubt;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How long a question takes that is asked while riding, beside the same of the full model. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class LiveBenchmark {

    private static final MeasuringDoubt DOUBT = new MeasuringDoubt(0.1, 0.5, 0.2);

    private final Build board = Builds.trailBoard();
    private final Limits limits = Limits.of(board);
    private final PackLimit model = limits.packRegen();
    private final PackLimit drawModel = limits.packDischarge();
    private final BatteryModel pack = limits.battery();
    private final Powertrain train = Powertrain.of(board);
    private final double motorBrake = limits.motorBrake().value();
    private final LiveLimits live = LiveLimits.of(board);

    private double charge = 0.05;
    private double cellsC = 5.0;

    /** Another place each time, as while riding. */
    private void move() {
        charge = charge > 0.95 ? 0.05 : charge + 0.0137;
        cellsC = cellsC > 40.0 ? 5.0 : cellsC + 0.31;
    }

    /**
     * Asks the full model.
     *
     * @return the current [A]
     */
    @Benchmark
    public double modelRegen() {
        move();
        return model.valueAt(charge, cellsC);
    }

    /**
     * Asks what may be sent into the packs.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveRegen() {
        move();
        return live.permittedRegenA(charge, cellsC);
    }

    /**
     * Asks the same where a wrong argument is answered with nothing.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveRegenOrZero() {
        move();
        return live.permittedRegenOrZeroA(charge, cellsC);
    }

    /**
     * Asks the same of a sensor that gives no number.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveRegenOfNothing() {
        move();
        return live.permittedRegenOrZeroA(Double.NaN, cellsC);
    }

    /**
     * Asks what may be drawn from the packs.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveDraw() {
        move();
        return live.permittedDrawA(charge, cellsC);
    }

    /**
     * Asks the full model what may be drawn.
     *
     * @return the current [A]
     */
    @Benchmark
    public double modelDraw() {
        move();
        return drawModel.valueAt(charge, cellsC);
    }

    /**
     * Asks what may be drawn where a wrong argument is answered with nothing.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveDrawOrZero() {
        move();
        return live.permittedDrawOrZeroA(charge, cellsC);
    }

    /**
     * Asks the full model what each motor may brake with.
     *
     * @return the current [A]
     */
    @Benchmark
    public double modelBrake() {
        move();
        return train.limitedBrakeCurrent(
                motorBrake,
                8.0,
                PackState.of(pack, charge, cellsC)
                        .powerReturnedBy(model.valueAt(charge, cellsC)));
    }

    /**
     * Asks what each motor may brake with, and nothing where an argument is wrong.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveBrakeOrZero() {
        move();
        return live.permittedBrakeOrZeroA(8.0, charge, cellsC);
    }

    /**
     * Asks what each motor may brake with.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveBrake() {
        move();
        return live.permittedBrakeA(8.0, charge, cellsC);
    }

    /**
     * Asks what a voltage says of the charge.
     *
     * @return the charge state [1]
     */
    @Benchmark
    public double liveCharge() {
        move();
        return live.charge(40.0 + 8.0 * charge, -10.0, cellsC);
    }

    /**
     * Asks what a voltage alone leaves.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveFurther() {
        move();
        return live.furtherRegenA(40.0 + 8.0 * charge, cellsC, Horizon.TEN_SECONDS);
    }

    /**
     * Asks the same, and nothing where the argument is wrong.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveFurtherOrZero() {
        move();
        return live.furtherRegenOrZeroA(40.0 + 8.0 * charge, cellsC, Horizon.TEN_SECONDS);
    }

    /**
     * Asks what a voltage alone leaves to be drawn.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveFurtherDraw() {
        move();
        return live.furtherDrawA(34.0 + 8.0 * charge, cellsC, Horizon.TEN_SECONDS);
    }

    /**
     * Asks the same, and nothing where the argument is wrong.
     *
     * @return the current [A]
     */
    @Benchmark
    public double liveFurtherDrawOrZero() {
        move();
        return live.furtherDrawOrZeroA(34.0 + 8.0 * charge, cellsC, Horizon.TEN_SECONDS);
    }

    /**
     * Asks for the emptier end of what measurements leave.
     *
     * @return the charge state [1]
     */
    @Benchmark
    public double liveLeastCharge() {
        move();
        return live.leastCharge(40.0 + 8.0 * charge, -10.0, cellsC, DOUBT);
    }

    /**
     * Asks for the fuller end of what measurements leave.
     *
     * @return the charge state [1]
     */
    @Benchmark
    public double liveGreatestCharge() {
        move();
        return live.greatestCharge(40.0 + 8.0 * charge, -10.0, cellsC, DOUBT);
    }

    /**
     * Makes the tables.
     *
     * @return them
     */
    @Benchmark
    public LiveLimits making() {
        return LiveLimits.of(board);
    }
}
