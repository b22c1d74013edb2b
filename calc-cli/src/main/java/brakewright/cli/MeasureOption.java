package brakewright.cli;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.internal.Nearest;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Measure;
import brakewright.profile.Quantity;
import brakewright.spec.Input;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A result that an option names, and the speed at which: {@code stop-dry@20km/h}. A bare number is
 * in km/h, as rows are told; without one, or with {@code own}, it is the vehicle's own speed.
 */
final class MeasureOption {

    private static final Pattern BARE = Pattern.compile("\\d+(\\.\\d+)?");

    private MeasureOption() {}

    /** Reads one; of what is no result the nearest is told. */
    static Measure read(String option, String text) {
        String word = text.strip();
        int at = word.indexOf('@');
        String name = at < 0 ? word : word.substring(0, at);
        Quantity quantity = find(name).orElseThrow(() -> unknown(option, name));
        String speed = at < 0 ? "" : word.substring(at + 1).strip();
        if (at >= 0 && !quantity.belongsToASpeed()) {
            throw new Unusable(
                    option + ": " + name + " belongs to no speed; write " + name + " alone");
        }
        if (at < 0 || speed.equals("own")) {
            return Measure.of(quantity);
        }
        try {
            return Measure.at(
                    quantity,
                    InputNumber.read(
                            option,
                            Input.USE_SPEED_MAX,
                            BARE.matcher(speed).matches() ? speed + " km/h" : speed));
        } catch (BuildFileException wrong) {
            throw new Unusable(option, wrong);
        }
    }

    /** The same, of what may be no result or no speed. */
    static Optional<Measure> ifAny(String text) {
        try {
            return Optional.of(read("", text));
        } catch (Unusable none) {
            return Optional.empty();
        }
    }

    private static Optional<Quantity> find(String name) {
        return Arrays.stream(Quantity.values()).filter(each -> each.key().equals(name)).findFirst();
    }

    private static Unusable unknown(String option, String name) {
        List<String> known = Arrays.stream(Quantity.values()).map(Quantity::key).toList();
        return new Unusable(
                option
                        + ": \""
                        + name
                        + "\" is no result; "
                        + Nearest.to(name, known)
                                .map(nearest -> "the nearest is " + nearest + "; ")
                                .orElse("")
                        + "for example stop-dry@20km/h; there are "
                        + String.join(", ", known));
    }

    /** The name of a column that holds it: its key with the speed spelled out, and its unit. */
    static String column(Measure measure) {
        String unit = measure.quantity().unit().plain();
        return MeasureWords.key(measure)
                        .replace("@own", "_at_own_speed")
                        .replaceAll("@(.*)", "_at_$1_km_per_h")
                        .replace('-', '_')
                + (unit.equals("1")
                        ? ""
                        : "_" + unit.replace("m/s2", "m_per_s2").replace("m/s", "m_per_s"));
    }
}
