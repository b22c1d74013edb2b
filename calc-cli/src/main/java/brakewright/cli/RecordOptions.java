package brakewright.cli;

import brakewright.cli.report.RecordBox;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;

/** What is known of how settings were entered. */
final class RecordOptions {

    private static final Pattern NAMED = Pattern.compile("([a-z]+)=(.*)", Pattern.DOTALL);

    @Option(
            names = "--note",
            paramLabel = "NOTE",
            description =
                    "Fill in the record of a document: date=, by=, entered=, ride= or next= and what"
                            + " to write there; without a name it is about the first ride. May be"
                            + " repeated.")
    List<String> notes = new ArrayList<>();

    /** The record with what was typed. */
    RecordBox box(DocumentOption form) {
        if (!notes.isEmpty() && (form.isText() || form.isJson())) {
            throw new Unusable("--note fills in the record of --format html or markdown");
        }
        Map<RecordBox.Field, String> known = new EnumMap<>(RecordBox.Field.class);
        for (String note : notes) {
            Matcher named = NAMED.matcher(note);
            boolean isNamed = named.matches();
            RecordBox.Field field = isNamed ? field(named.group(1)) : RecordBox.Field.RIDE;
            known.merge(field, isNamed ? named.group(2) : note, (one, more) -> one + "\n" + more);
        }
        return new RecordBox(known);
    }

    private static RecordBox.Field field(String name) {
        List<String> names =
                Arrays.stream(RecordBox.Field.values()).map(RecordBox.Field::key).toList();
        return RecordBox.Field.named(name)
                .orElseThrow(
                        () ->
                                new Unusable(
                                        "--note: the record has no \""
                                                + name
                                                + "\""
                                                + Misspelt.meant(name, names)
                                                + "; there are "
                                                + String.join(", ", names)));
    }
}
