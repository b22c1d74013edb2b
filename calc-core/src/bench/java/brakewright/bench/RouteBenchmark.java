package brakewright.bench;

import brakewright.replay.Leg;
import brakewright.replay.Route;
import brakewright.replay.RouteRide;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** How long a ride of some 12 km with a stop each kilometre takes, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RouteBenchmark {

    private final Build board = Builds.trailBoard();
    private final Route route = route();

    private static Route route() {
        List<Leg> legs = new ArrayList<>();
        for (int kilometre = 0; kilometre < 12; kilometre++) {
            legs.add(new Leg(400.0, 4.0, 22.0 / 3.6, 0.0));
            legs.add(new Leg(600.0, -4.0, 25.0 / 3.6, 10.0));
        }
        return new Route(legs);
    }

    /**
     * Rides the route.
     *
     * @return the ride; its time over that which is measured is how many times real time it takes
     */
    @Benchmark
    public RouteRide ride() {
        return RouteRide.of(board, route);
    }
}
