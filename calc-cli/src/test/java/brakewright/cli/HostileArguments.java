package brakewright.cli;

import static brakewright.cli.buildfile.PlausibleValue.any;

import brakewright.cli.buildfile.PlausibleValue;
import brakewright.limit.LimitId;
import brakewright.profile.Quantity;
import brakewright.spec.Input;
import brakewright.worksheet.ResultId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Command lines that someone spoiled, for every command there is. */
final class HostileArguments {

    /** Stands for the path of the build file. */
    static final String BUILD = "BUILD";

    /** Stands for the path of another build file, with a name that is no help. */
    static final String OTHER = "OTHER";

    /** Stands for the path of a file to be written. */
    static final String OUTPUT = "OUTPUT";

    private static final List<String> SETTINGS =
            Arrays.stream(Input.values())
                    .map(Input::key)
                    .filter(key -> key.startsWith("settings."))
                    .toList();

    private final SplittableRandom random;
    private final List<String> all = new ArrayList<>();

    private HostileArguments(SplittableRandom random) {
        this.random = random;
    }

    static List<String> draw(SplittableRandom random) {
        return new HostileArguments(random).draw();
    }

    private List<String> draw() {
        String command = any(Main.COMMANDS, random);
        all.add(command);
        if (!command.equals("help")) {
            all.add(one(40) ? text() : BUILD);
        }
        switch (command) {
            case "worksheet" -> worksheet();
            case "check" -> check();
            case "compare" -> compare();
            case "solve" -> solve();
            case "sweep" -> sweep();
            case "explain" -> explain();
            case "help" -> all.add(one(2) ? any(Main.COMMANDS, random) : text());
            default -> throw new AssertionError("draw arguments for " + command + " too");
        }
        if (!command.equals("explain") && one(30)) {
            option("--output", OUTPUT);
        }
        if (one(30)) {
            all.remove(random.nextInt(all.size()));
        }
        if (one(30)) {
            all.add(random.nextInt(all.size() + 1), one(2) ? text() : "--" + text());
        }
        keepToItsFolder();
        return all;
    }

    /** Nothing is written but where a test may write. */
    private void keepToItsFolder() {
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).equals("--output")
                    && (i + 1 == all.size() || !all.get(i + 1).equals(OUTPUT))) {
                all.remove(i);
            }
        }
    }

    /** True once in a number of times. */
    private boolean one(int in) {
        return random.nextInt(in) == 0;
    }

    private String text() {
        return any(HostileBuild.TEXTS, random) + (one(2) ? any(HostileBuild.TEXTS, random) : "");
    }

    private String number() {
        return any(HostileBuild.NUMBERS, random);
    }

    private void option(String name, String value) {
        if (one(4)) {
            all.add(name + "=" + value);
        } else {
            all.add(name);
            all.add(value);
        }
    }

    private void page(List<String> formats) {
        if (one(2)) {
            option("--format", one(40) ? text() : any(formats, random));
        }
        if (one(6)) {
            all.add("--plain");
        }
        if (one(6)) {
            option("--units", one(10) ? text() : any(List.of("si", "imperial"), random));
        }
    }

    private void strict() {
        if (one(8)) {
            all.add("--strict");
        }
    }

    private void worksheet() {
        page(List.of("text", "json"));
        strict();
        if (one(10)) {
            option("--cases", one(3) ? number() : String.valueOf(1 + random.nextInt(20)));
            option("--seed", one(3) ? number() : "7");
        }
    }

    private void check() {
        page(List.of("text", "json"));
        strict();
        for (int i = random.nextInt(4); i > 0; i--) {
            option("--with", setting());
        }
        if (one(3)) {
            option("--proposal", proposal());
        }
    }

    private String setting() {
        if (one(15)) {
            return text() + (one(2) ? "=" + number() : "");
        }
        String key = any(SETTINGS, random);
        Input input = Input.ofKey(key).orElseThrow();
        return key.substring("settings.".length())
                + "="
                + (one(4)
                        ? number() + any(List.of("A", "V", "km/h", " A", "", "%"), random)
                        : PlausibleValue.asOption(input, random));
    }

    private String proposal() {
        return one(4)
                ? text()
                : any(List.of("firmer-brake", "firmer-brake-more-regen", "present"), random);
    }

    private void compare() {
        page(List.of("text", "json", "csv", "markdown"));
        strict();
        if (one(4)) {
            all.add(proposal());
        }
        if (one(2)) {
            option("--also", one(20) ? text() : OTHER);
        }
        if (one(4)) {
            option("--only", row() + (one(2) ? "," + row() : ""));
        }
        if (one(4)) {
            option("--sort", row());
        }
    }

    private String row() {
        return one(6) ? text() : any(List.of(Quantity.values()), random).key();
    }

    private void solve() {
        page(List.of("text", "json"));
        if (!one(30)) {
            option(
                    "--for",
                    one(15)
                            ? text()
                            : any(
                                    List.of(
                                            "motor_drive_current",
                                            "motor_brake_current",
                                            "pack_discharge_current",
                                            "pack_regen_current",
                                            "speed_cap",
                                            "charge_from",
                                            "parallel",
                                            "packs.2.parallel"),
                                    random));
        }
        if (one(5)) {
            option("--against", variation(2));
        }
    }

    private String variation(int most) {
        if (one(20)) {
            return text();
        }
        Input input = any(List.of(Input.values()), random);
        String key = input.key();
        if (one(3)) {
            input = Input.ofKey(any(SETTINGS, random)).orElseThrow();
            key = input.key();
        }
        return (one(3) ? key.substring(key.lastIndexOf('.') + 1) : key)
                + "="
                + (one(10) ? number() : PlausibleValue.asOption(input, random))
                + ".."
                + (one(10) ? number() : PlausibleValue.asOption(input, random))
                + "/"
                + (one(20)
                        ? any(List.of("0", "1", "99999999999", "-1"), random)
                        : 2 + random.nextInt(most));
    }

    private void sweep() {
        if (one(2)) {
            option("--format", any(List.of("csv", "json", "text"), random));
        }
        for (int i = random.nextInt(20) == 0 ? 0 : 1 + random.nextInt(2); i > 0; i--) {
            option("--vary", variation(3));
        }
        if (one(4)) {
            option("--threads", one(4) ? number() : String.valueOf(1 + random.nextInt(3)));
        }
    }

    private void explain() {
        if (one(10)) {
            all.add(text());
        } else if (one(2)) {
            all.add(any(List.of(LimitId.values()), random).key());
        } else {
            all.add(any(List.of(ResultId.values()), random).key());
        }
        if (one(4)) {
            all.add("--plain");
        }
        if (one(4)) {
            option("--units", "imperial");
        }
    }
}
