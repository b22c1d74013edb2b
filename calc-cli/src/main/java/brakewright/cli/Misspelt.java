package brakewright.cli;

import brakewright.buildfile.internal.Nearest;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** An option, or a word of one, that is spelt as none is: told with the nearest. */
final class Misspelt {

    private Misspelt() {}

    /** What is told of a misspelt option or word; empty where something else is wrong. */
    static Optional<String> told(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unmatched.isUnknownOption() ? Optional.of(option(unmatched)) : Optional.empty();
        }
        ArgSpec asked = wrong.getArgSpec();
        return asked instanceof OptionSpec option
                        && option.type().isEnum()
                        && wrong.getValue() != null
                ? Optional.of(word(option, wrong.getValue()))
                : Optional.empty();
    }

    private static String option(UnmatchedArgumentException unmatched) {
        String given = unmatched.getUnmatched().get(0);
        List<String> known =
                unmatched.getCommandLine().getCommandSpec().options().stream()
                        .map(OptionSpec::longestName)
                        .toList();
        String name = given.split("=", 2)[0];
        return "Unknown option \"" + given + "\"" + meant(name, known);
    }

    private static String word(OptionSpec option, String given) {
        List<String> words =
                Arrays.stream(option.type().getEnumConstants())
                        .map(each -> each.toString().toLowerCase(Locale.ROOT))
                        .toList();
        return option.longestName()
                + ": \""
                + given
                + "\" is none of "
                + String.join(", ", words)
                + meant(given.toLowerCase(Locale.ROOT), words);
    }

    /** What a misspelt word most likely means, behind what is wrong with it; else nothing. */
    static String meant(String word, Collection<String> known) {
        return Nearest.to(word, known).map(near -> "; did you mean " + near + "?").orElse("");
    }
}
