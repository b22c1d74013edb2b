package brakewright.cli;

import brakewright.buildfile.Nearest;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import picocli.CommandLine.Option;

/**
 * Which sections are shown.
 *
 * @param <S> a section
 */
final class ShowOptions<S> {

    private static final String ALL = "all";

    private final List<S> sections;
    private final Function<S, String> key;
    private final List<S> chosen = new ArrayList<>();

    @Option(
            names = "--show",
            paramLabel = "NAME",
            split = ",",
            description = "Print the sections named instead, or all; the page names them.")
    List<String> names = new ArrayList<>();

    ShowOptions(List<S> sections, Function<S, String> key) {
        this.sections = sections;
        this.key = key;
    }

    /** Finds the sections that are named. */
    void settle(boolean isText) {
        if (!isText && !isNone()) {
            throw new Unusable("--show chooses sections of the text; the JSON always holds all");
        }
        for (String name : names) {
            if (!name.equalsIgnoreCase(ALL)) {
                S section =
                        sections.stream()
                                .filter(each -> key.apply(each).equalsIgnoreCase(name))
                                .findFirst()
                                .orElseThrow(() -> unknown(name));
                if (!chosen.contains(section)) {
                    chosen.add(section);
                }
            }
        }
    }

    private Unusable unknown(String name) {
        List<String> known = Stream.concat(sections.stream().map(key), Stream.of(ALL)).toList();
        return new Unusable(
                "--show: there is no section \""
                        + name
                        + "\""
                        + Nearest.to(name, known)
                                .map(near -> "; did you mean " + near + "?")
                                .orElse("")
                        + "; there are "
                        + String.join(", ", known));
    }

    boolean isNone() {
        return names.isEmpty();
    }

    boolean isAll() {
        return names.stream().anyMatch(ALL::equalsIgnoreCase);
    }

    List<S> chosen() {
        return chosen;
    }
}
