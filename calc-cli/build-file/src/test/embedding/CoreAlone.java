package riding;

import brakewright.assembly.BuildSteps;
import brakewright.assembly.Defaults;
import brakewright.assembly.KnownCell;
import brakewright.live.LiveLimits;
import brakewright.spec.Build;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Curve;
import brakewright.spec.Input;
import brakewright.spec.Stance;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A program of its own with the core alone: every value comes in as data, one on each line. */
public final class CoreAlone {

    private CoreAlone() {}

    public static void main(String[] names) throws Exception {
        BuildSteps steps =
                BuildSteps.titled("Told")
                        .rider(80.0, Stance.SEATED)
                        .vehicle(45.0, 0.26)
                        .drive(1, 4.0)
                        .motor(95.0, 0.05)
                        .controller(CurrentBasis.PHASE_PEAK, 80.0, 50.0, 60.0)
                        .pack(new KnownCell("nmc", 3.0, 15.0, 4.0, 4.2, 2.5, 0.03), 10, 6);
        for (String line : Files.readAllLines(Path.of(names[0]))) {
            tell(steps, line.split(" "));
        }
        Build build = steps.build(Defaults.NONE);
        LiveLimits live = LiveLimits.of(build);
        System.out.println(live.permittedRegenA(0.9, 11.0));
        System.out.println(live.permittedBrakeA(8.0, 0.5, 20.0));
    }

    /** A key, which form its value has, and the value. */
    private static void tell(BuildSteps steps, String[] line) {
        Input input = Input.ofKey(line[0]).orElseThrow();
        double[] numbers =
                line[1].equals("word")
                        ? new double[0]
                        : Arrays.stream(line).skip(2).mapToDouble(Double::parseDouble).toArray();
        int half = numbers.length / 2;
        switch (line[1]) {
            case "word" -> steps.with(input, line[2]);
            case "number" -> steps.with(input, numbers[0]);
            case "pair" -> steps.with(input, numbers[0], numbers[1]);
            default ->
                    steps.with(
                            input,
                            Curve.of(
                                    Arrays.copyOf(numbers, half),
                                    Arrays.copyOfRange(numbers, half, numbers.length)));
        }
    }
}
