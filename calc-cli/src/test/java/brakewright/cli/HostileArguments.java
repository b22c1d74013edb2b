package brakewright.cli;

import static brakewright.cli.PlausibleValue.any;

import brakewright.explain.ResultId;
import brakewright.limit.LimitId;
import brakewright.profile.Quantity;
import brakewright.spec.Input;
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

    /** Stands for the path of a recording. */
    static final String RECORDING = "RECORDING";

    /** Stands for the path of a file to be written. */
    static final String OUTPUT = "OUTPUT";

    private static final List<String> SHOWN =
            List.of("all", "brake,heat", "findings", "packs,doubts", "first-stop,,", "settings");

    private static final List<String> SETTINGS =
            Arrays.stream(Input.values())
                    .map(Input::key)
                    .filter(key -> key.startsWith("settings."))
                    .toList();

    /** Documents take longest, and are asked for less often. */
    private static final List<String> DOCUMENTS =
            List.of("text", "json", "text", "json", "html", "markdown");

    private static final List<String> WITHOUT_BUILD =
            List.of("new", "keys", "tables", "history", "help");
    private static final List<String> WITHOUT_OUTPUT = List.of("new", "explain", "keys", "tables");

    private final SplittableRandom random;
    private final List<String> all = new ArrayList<>();

    private final boolean sane;

    private HostileArguments(SplittableRandom random, boolean sane) {
        this.random = random;
        this.sane = sane;
    }

    /**
     * Draws a command line.
     *
     * @param sane whether every word of it shall mean something, so that much is calculated
     */
    static List<String> draw(SplittableRandom random, boolean sane) {
        return new HostileArguments(random, sane).draw();
    }

    private List<String> draw() {
        String command = any(Main.COMMANDS, random);
        all.add(command);
        if (!WITHOUT_BUILD.contains(command)) {
            all.add(odd(40) ? text() : BUILD);
        }
        switch (command) {
            case "worksheet" -> worksheet();
            case "new" -> describe();
            case "check" -> check();
            case "compare" -> compare();
            case "propose" -> page(DOCUMENTS);
            case "solve" -> solve();
            case "sweep" -> sweep();
            case "explain" -> explain();
            case "ride" -> ride();
            case "keys" -> keys();
            case "tables" -> tables();
            case "history" -> {
                all.add(one(2) ? "." : text());
                page(DOCUMENTS);
            }
            case "help" -> all.add(odd(2) ? text() : any(Main.COMMANDS, random));
            default -> throw new AssertionError("draw arguments for " + command + " too");
        }
        if (!WITHOUT_OUTPUT.contains(command) && one(30)) {
            option("--output", OUTPUT);
        }
        if (odd(20)) {
            all.remove(random.nextInt(all.size()));
        }
        if (odd(20)) {
            all.add(random.nextInt(all.size() + 1), one(2) ? text() : "--" + text());
        }
        keepToItsFolder();
        return all;
    }

    /** Nothing is written but where a test may write. */
    private void keepToItsFolder() {
        for (int i = all.size() - 1; i >= 0; i--) {
            if (List.of("--output", "--series", "--write").contains(all.get(i))
                    && (i + 1 == all.size() || !all.get(i + 1).equals(OUTPUT))) {
                all.remove(i);
            }
        }
    }

    /** True once in a number of times. */
    private boolean one(int in) {
        return random.nextInt(in) == 0;
    }

    /** True once in a number of times where nonsense is wanted. */
    private boolean odd(int in) {
        return !sane && one(in);
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
            option("--format", odd(20) ? text() : any(formats, random));
        }
        if (one(6)) {
            all.add("--plain");
        }
        if (one(6)) {
            option("--units", odd(10) ? text() : any(List.of("si", "imperial"), random));
        }
    }

    private void strict() {
        if (one(8)) {
            all.add("--strict");
        }
    }

    private void show() {
        if (one(3)) {
            option("--show", odd(4) ? text() : any(SHOWN, random));
        }
    }

    private void worksheet() {
        page(DOCUMENTS);
        show();
        strict();
        if (one(10)) {
            option("--cases", odd(3) ? number() : String.valueOf(1 + random.nextInt(20)));
            option("--seed", odd(3) ? number() : "7");
        }
    }

    /** A build file holds no answers, so that nothing is ever written. */
    private void describe() {
        all.add(OUTPUT);
        if (sane || one(2)) {
            option("--from", BUILD);
        }
    }

    private void check() {
        page(DOCUMENTS);
        show();
        strict();
        for (int i = random.nextInt(4); i >= 0; i--) {
            option("--with", setting());
        }
        if (odd(3)) {
            option("--proposal", proposal());
        }
    }

    private String setting() {
        if (odd(10)) {
            return text() + (one(2) ? "=" + number() : "");
        }
        String key = any(SETTINGS, random);
        Input input = Input.ofKey(key).orElseThrow();
        return key.substring("settings.".length())
                + "="
                + (odd(3)
                        ? number() + any(List.of("A", "V", "km/h", " A", "", "%"), random)
                        : PlausibleValue.asOption(input, random));
    }

    private String proposal() {
        return one(4)
                ? text()
                : any(List.of("firmer-brake", "firmer-brake-more-regen", "present"), random);
    }

    private void compare() {
        page(List.of("text", "json", "csv", "markdown", "html"));
        strict();
        if (odd(4)) {
            all.add(proposal());
        }
        if (sane || one(2)) {
            option("--also", odd(20) ? text() : OTHER);
        }
        if (one(4)) {
            option("--only", row() + (one(2) ? "," + row() : ""));
        }
        if (one(4)) {
            option("--sort", row());
        }
    }

    private String row() {
        return odd(6) ? text() : any(List.of(Quantity.values()), random).key();
    }

    private void solve() {
        page(List.of("text", "json"));
        if (!odd(30)) {
            option(
                    "--for",
                    odd(15)
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
        if (odd(20)) {
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
                + (odd(10) ? number() : PlausibleValue.asOption(input, random))
                + ".."
                + (odd(10) ? number() : PlausibleValue.asOption(input, random))
                + "/"
                + (odd(20)
                        ? any(List.of("0", "1", "99999999999", "-1"), random)
                        : 2 + random.nextInt(most));
    }

    private void sweep() {
        if (one(2)) {
            option("--format", any(sane ? List.of("csv", "json") : List.of("csv", "text"), random));
        }
        for (int i = odd(20) ? 0 : 1 + random.nextInt(2); i > 0; i--) {
            option("--vary", variation(3));
        }
        if (one(4)) {
            option("--threads", odd(4) ? number() : String.valueOf(1 + random.nextInt(3)));
        }
    }

    private void explain() {
        if (odd(10)) {
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

    private void ride() {
        if (one(4)) {
            option("--route", one(3) ? OTHER : RECORDING);
            if (one(2)) {
                option("--charge", number() + any(List.of("%", "A", ""), random));
            }
            if (one(2)) {
                option("--rider", number() + any(List.of("kg", "g", "km", ""), random));
            }
        } else {
            all.add(one(5) ? OTHER : RECORDING);
        }
        page(DOCUMENTS);
        if (one(8)) {
            option(one(2) ? "--series" : "--write", OUTPUT);
        }
        if (one(6)) {
            all.add("--inspect");
        }
        if (one(3)) {
            option("--columns", odd(2) ? text() : "time=" + text());
        }
        if (one(3)) {
            option("--column-units", odd(2) ? text() + "=" + text() : "speed=km/h");
        }
        if (one(3)) {
            option("--hold", number() + any(List.of("s", "min", "km", ""), random));
        }
        if (one(3)) {
            option("--piece", number() + any(List.of("km", "m", "s", ""), random));
        }
    }

    private void keys() {
        if (one(3)) {
            all.add(text());
        } else if (one(2)) {
            all.add(any(List.of(Input.values()), random).key());
        }
    }

    private void tables() {
        if (one(3)) {
            all.add(
                    one(2)
                            ? text()
                            : any(List.of("cells", "plugs", "nmc", "INR21700-50S"), random));
        }
        if (one(3)) {
            option("--find", text());
        }
        if (one(3)) {
            option("--capacity", number() + any(List.of("Ah", "mAh", "V", ""), random));
        }
        if (one(3)) {
            option("--current", number() + "A");
        }
    }
}
