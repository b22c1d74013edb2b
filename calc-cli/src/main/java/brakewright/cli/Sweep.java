package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputPlace;
import brakewright.cli.text.SweptCase;
import brakewright.profile.Measure;
import brakewright.profile.ProfileResults;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Evaluates a vehicle at every combination of varied keys, on several threads. The first key varies
 * slowest; results stand in that order whichever thread was quicker.
 */
final class Sweep {

    /** Cases handed to a thread at a time. */
    private static final int BATCH = 256;

    private final BuildFile file;
    private final List<KeyRange> varied;
    private final List<Measure> reported;
    private final int count;

    Sweep(BuildFile file, List<KeyRange> varied, List<Measure> reported) {
        this.file = file;
        this.varied = List.copyOf(varied);
        this.reported = List.copyOf(reported);
        long all = 1;
        for (KeyRange each : varied) {
            all = Math.min(Integer.MAX_VALUE, all * each.count());
        }
        this.count = (int) all;
    }

    /** How many combinations there are. */
    int count() {
        return count;
    }

    /** The values of all keys in one case. */
    double[] values(int index) {
        double[] values = new double[varied.size()];
        int rest = index;
        for (int i = values.length - 1; i >= 0; i--) {
            values[i] = varied.get(i).at(rest % varied.get(i).count());
            rest /= varied.get(i).count();
        }
        return values;
    }

    /**
     * Works out every case.
     *
     * @param threads how many threads work
     * @param done told how many cases are done, now and then
     * @return the cases, in order
     */
    SweptCase[] run(int threads, IntConsumer done) throws InterruptedException {
        SweptCase[] all = new SweptCase[count];
        AtomicInteger finished = new AtomicInteger();
        int batches = (count + BATCH - 1) / BATCH;
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Callable<Boolean> work =
                    () -> {
                        IntStream.range(0, batches)
                                .parallel()
                                .forEach(
                                        batch -> {
                                            int from = batch * BATCH;
                                            int to = Math.min(count, from + BATCH);
                                            batch(all, from, to);
                                            done.accept(finished.addAndGet(to - from));
                                        });
                        return true;
                    };
            pool.submit(work).get();
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(failed);
        } finally {
            pool.shutdownNow();
        }
        return all;
    }

    /** Settings alone are laid over the vehicle of the case before; other keys make a new one. */
    private void batch(SweptCase[] all, int from, int to) {
        List<InputPlace> places = varied.stream().map(KeyRange::place).toList();
        boolean onlySettings = places.stream().allMatch(Sweep::isSetting);
        for (int index = from; index < to; index++) {
            double[] values = values(index);
            Build build = onlySettings ? withSettings(places, values) : made(places, values);
            all[index] = swept(build);
        }
    }

    private SweptCase swept(Build build) {
        ProfileResults results = new ProfileResults(build);
        return new SweptCase(
                results.evaluation(),
                reported.stream().map(measure -> results.read(measure).value()).toList());
    }

    private static boolean isSetting(InputPlace place) {
        return switch (place.input()) {
            case SETTINGS_MOTOR_DRIVE_CURRENT,
                    SETTINGS_MOTOR_BRAKE_CURRENT,
                    SETTINGS_PACK_DISCHARGE_CURRENT,
                    SETTINGS_PACK_REGEN_CURRENT ->
                    true;
            default -> false;
        };
    }

    private Build withSettings(List<InputPlace> places, double[] values) {
        Settings settings = file.build().settings();
        for (int i = 0; i < values.length; i++) {
            settings = with(settings, places.get(i).input(), values[i]);
        }
        return file.build().withSettings(settings);
    }

    private static Settings with(Settings settings, Input input, double value) {
        return switch (input) {
            case SETTINGS_MOTOR_DRIVE_CURRENT -> settings.withMotorDriveCurrent(value);
            case SETTINGS_MOTOR_BRAKE_CURRENT -> settings.withMotorBrakeCurrent(value);
            case SETTINGS_PACK_DISCHARGE_CURRENT -> settings.withPackDischargeCurrent(value);
            case SETTINGS_PACK_REGEN_CURRENT -> settings.withPackRegenCurrent(value);
            default -> throw new IllegalArgumentException(input.key());
        };
    }

    private Build made(List<InputPlace> places, double[] values) {
        try {
            return file.variations().with(places, values);
        } catch (BuildFileException wrong) {
            throw new Unusable("--vary", wrong);
        }
    }
}
