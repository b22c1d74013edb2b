package brakewright.cli;

import brakewright.cli.text.CheckSection;
import brakewright.cli.text.SheetSection;
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
abstract class ShowOptions<S> {

    static final String OPTION = "--show";
    static final String LABEL = "NAME";
    static final String DESCRIPTION =
            "Print the sections named instead, or all; the page names them.";

    private static final String ALL = "all";

    private final List<S> sections;
    private final Function<S, String> key;
    private final List<S> chosen = new ArrayList<>();

    ShowOptions(List<S> sections, Function<S, String> key) {
        this.sections = sections;
        this.key = key;
    }

    /** The names that were typed. */
    abstract List<String> names();

    /** The names that there are. */
    List<String> known() {
        return Stream.concat(sections.stream().map(key), Stream.of(ALL)).toList();
    }

    /** The sections of a worksheet. */
    static final class OfSheet extends ShowOptions<SheetSection> {

        @Option(
                names = OPTION,
                paramLabel = LABEL,
                split = ",",
                completionCandidates = Offered.SheetSections.class,
                description = DESCRIPTION)
        List<String> names = new ArrayList<>();

        OfSheet() {
            super(List.of(SheetSection.values()), SheetSection::key);
        }

        @Override
        List<String> names() {
            return names;
        }
    }

    /** The sections of a check. */
    static final class OfCheck extends ShowOptions<CheckSection> {

        @Option(
                names = OPTION,
                paramLabel = LABEL,
                split = ",",
                completionCandidates = Offered.CheckSections.class,
                description = DESCRIPTION)
        List<String> names = new ArrayList<>();

        OfCheck() {
            super(List.of(CheckSection.values()), CheckSection::key);
        }

        @Override
        List<String> names() {
            return names;
        }
    }

    /** Finds the sections that are named. */
    void settle(boolean isText) {
        if (!isText && !isNone()) {
            throw new Unusable(
                    "--show chooses sections of the text; any other form always holds all");
        }
        for (String name : names()) {
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
        return new Unusable(
                "--show: there is no section \""
                        + name
                        + "\""
                        + Misspelt.meant(name, known())
                        + "; there are "
                        + String.join(", ", known()));
    }

    boolean isNone() {
        return names().isEmpty();
    }

    boolean isAll() {
        return names().stream().anyMatch(ALL::equalsIgnoreCase);
    }

    List<S> chosen() {
        return chosen;
    }
}
