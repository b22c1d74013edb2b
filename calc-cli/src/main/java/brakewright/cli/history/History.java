package brakewright.cli.history;

import brakewright.buildfile.internal.Printable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The worksheets of a folder in the order of their names.
 *
 * @param sheets at least one
 * @param leftOut the names of files that end as worksheets do and are none
 */
public record History(List<PastSheet> sheets, List<String> leftOut) {

    private static final String ENDING = ".json";

    /** Copies the lists. */
    public History {
        sheets = List.copyOf(sheets);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Reads a folder.
     *
     * @param folder in which worksheets were kept as JSON
     * @return what stands in them; without a sheet where none was
     * @throws IOException if the folder or a file cannot be read
     */
    public static History of(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files =
                    all.filter(each -> String.valueOf(each.getFileName()).endsWith(ENDING))
                            .filter(Files::isRegularFile)
                            .sorted()
                            .toList();
        }
        List<PastSheet> sheets = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        for (Path file : files) {
            PastSheet.read(file)
                    .ifPresentOrElse(
                            sheets::add,
                            () -> leftOut.add(Printable.shown(String.valueOf(file.getFileName()))));
        }
        return new History(sheets, leftOut);
    }

    /**
     * Tells the builds apart that the worksheets are of.
     *
     * @return their titles, each once, in the order of the worksheets
     */
    public List<String> titles() {
        return sheets.stream().map(PastSheet::title).distinct().toList();
    }

    /**
     * Compares a worksheet with the one before it.
     *
     * @param place of the later one, from 1 on
     * @param kind of what is compared
     * @return what differs, in the order of {@link Watched}
     */
    public List<Change<Watched>> changes(int place, Watched.Kind kind) {
        PastSheet before = sheets.get(place - 1);
        PastSheet after = sheets.get(place);
        return Arrays.stream(Watched.values())
                .filter(each -> each.kind() == kind)
                .map(
                        each ->
                                new Change<>(
                                        each,
                                        Optional.ofNullable(before.values().get(each)),
                                        Optional.ofNullable(after.values().get(each))))
                .filter(Change::isOne)
                .toList();
    }

    /**
     * Compares what was put in besides the settings.
     *
     * @param place of the later one, from 1 on
     * @return what differs, by the key of the build file
     */
    public List<Change<String>> inputs(int place) {
        PastSheet before = sheets.get(place - 1);
        PastSheet after = sheets.get(place);
        TreeSet<String> keys = new TreeSet<>(before.inputs().keySet());
        keys.addAll(after.inputs().keySet());
        return keys.stream()
                .map(
                        key ->
                                new Change<>(
                                        key,
                                        Optional.ofNullable(before.inputs().get(key)),
                                        Optional.ofNullable(after.inputs().get(key))))
                .filter(Change::isOne)
                .toList();
    }
}
