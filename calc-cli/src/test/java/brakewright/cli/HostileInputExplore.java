package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing that a file or an option can say breaks the program: as many cases as {@code
 * brakewright.fuzz.cases} says, from {@code brakewright.explore.seed} on. Each case has a seed of
 * its own, the first seed and its number.
 */
@Tag("explore")
class HostileInputExplore {

    private static final int CASES = Integer.getInteger("brakewright.fuzz.cases", 100_000);
    private static final int SLOWEST = 10;

    /** With more kinds of faults than this something else is wrong. */
    private static final int MOST_FAULTS = 20;

    @TempDir Path folder = Path.of("");

    private record Timed(double seconds, HostileCase of) {}

    @Test
    void isAnsweredOrRefused() {
        long first = seed();
        System.out.println("hostile input: " + CASES + " cases from seed " + first);
        Map<String, String> faults = new LinkedHashMap<>();
        List<Timed> slowest = new ArrayList<>();
        for (int i = 0; i < CASES && faults.size() < MOST_FAULTS; i++) {
            HostileCase each = HostileCase.draw(first + i);
            HostileCase.Outcome outcome = each.runInTime(folder);
            slowest.add(new Timed(outcome.seconds(), each));
            slowest.sort(Comparator.comparingDouble(Timed::seconds).reversed());
            if (slowest.size() > SLOWEST) {
                slowest.remove(SLOWEST);
            }
            Optional<String> fault = outcome.fault();
            if (fault.isPresent() && !faults.containsKey(HostileCase.kind(fault.get()))) {
                String told = fault.get() + "\n" + each.shrunk(folder, fault.get()).told();
                faults.put(HostileCase.kind(fault.get()), told);
                System.out.println(told);
            }
        }
        System.out.println("slowest:");
        for (Timed each : slowest) {
            System.out.printf(
                    Locale.ROOT,
                    "  %.2f s, seed %d, %s%n",
                    each.seconds(),
                    each.of().seed(),
                    each.of().arguments());
        }
        assertThat(faults.values()).as("from seed " + first).isEmpty();
    }

    private static long seed() {
        String given = System.getProperty("brakewright.explore.seed", "");
        return given.isBlank()
                ? RandomGenerator.getDefault().nextLong(1L << 52)
                : Long.parseLong(given.strip());
    }
}
