package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.recording.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Finds out which columns of a file hold which quantity. */
final class TakenColumns {

    private final Layout layout;
    private final ColumnChoice choice;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Taken> taken = new ArrayList<>();

    private TakenColumns(Layout layout, ColumnChoice choice) {
        this.layout = layout;
        this.choice = choice;
    }

    static List<Taken> of(Layout layout, ColumnChoice choice) throws BuildFileException {
        return new TakenColumns(layout, choice).all();
    }

    /** What each column of a file that cannot be used would be taken for. */
    static List<ColumnNote> notes(Layout layout, ColumnChoice choice) {
        TakenColumns columns = new TakenColumns(layout, choice);
        columns.find();
        List<ColumnNote> notes = new ArrayList<>();
        for (int column = 0; column < layout.headings().size(); column++) {
            int here = column;
            String heading = layout.headings().get(column).text();
            notes.add(
                    columns.taken.stream()
                            .filter(each -> each.column() == here)
                            .findFirst()
                            .map(
                                    each ->
                                            new ColumnNote(
                                                    heading,
                                                    Optional.of(each.quantity()),
                                                    each.scale().map(Scale::unit).orElse(""),
                                                    each.why()))
                            .orElse(ColumnNote.unused(heading)));
        }
        return notes;
    }

    private List<Taken> all() throws BuildFileException {
        find();
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return taken;
    }

    private void find() {
        for (Quantity quantity : choice.columns().keySet()) {
            told(quantity);
        }
        for (Quantity quantity : Quantity.values()) {
            if (!choice.columns().containsKey(quantity)) {
                usual(quantity);
            }
        }
        require(
                has(Quantity.TIME),
                "no column is known for a time",
                "--columns \"time=HEAD\", HEAD being one of " + heads());
        require(
                has(Quantity.WHEEL_SPEED)
                        || has(Quantity.SATELLITE_SPEED)
                        || has(Quantity.DISTANCE)
                        || (has(Quantity.LATITUDE) && has(Quantity.LONGITUDE)),
                "no column is known for a speed, a position or a distance",
                "--columns \"wheel_speed=HEAD\", HEAD being one of " + heads());
    }

    private void require(boolean isFine, String wrong, String expected) {
        if (!isFine) {
            problems.add(new Problem(layout.headerLine(), "", wrong, expected));
        }
    }

    private boolean has(Quantity quantity) {
        return taken.stream().anyMatch(each -> each.quantity() == quantity);
    }

    private String heads() {
        return String.join(", ", layout.headings().stream().map(Heading::text).toList());
    }

    private void told(Quantity quantity) {
        String head = choice.columns().getOrDefault(quantity, "");
        for (int column = 0; column < layout.headings().size(); column++) {
            if (layout.headings().get(column).isMeantBy(head)) {
                take(quantity, column, "as told");
                return;
            }
        }
        problems.add(
                new Problem(
                        layout.headerLine(),
                        quantity.key(),
                        "there is no column \"" + head + "\"",
                        "one of " + heads()));
    }

    private void usual(Quantity quantity) {
        for (String name : UsualNames.of(quantity)) {
            List<Integer> known =
                    IntStream.range(0, layout.headings().size())
                            .filter(column -> layout.headings().get(column).name().equals(name))
                            .filter(column -> taken.stream().noneMatch(t -> t.column() == column))
                            .boxed()
                            .toList();
            if (known.size() > 1) {
                problems.add(
                        new Problem(
                                layout.headerLine(),
                                quantity.key(),
                                known.size() + " columns are called \"" + name + "\"",
                                "different names in the file"));
                return;
            }
            if (known.size() == 1) {
                take(quantity, known.get(0), "its name");
                return;
            }
        }
    }

    private void take(Quantity quantity, int column, String why) {
        Heading heading = layout.headings().get(column);
        String option = choice.units().get(quantity);
        if (option != null) {
            taken.add(
                    new Taken(
                            quantity,
                            column,
                            Scale.named(quantity, option),
                            why + "; unit as told"));
            return;
        }
        Optional<String> unit = heading.unit();
        if (unit.isPresent()) {
            Optional<Scale> scale = Scale.named(quantity, unit.get());
            if (scale.isEmpty()) {
                problems.add(
                        new Problem(
                                layout.headerLine(),
                                heading.text(),
                                "\"" + unit.get() + "\" is no unit of " + quantity.key(),
                                "--column-units "
                                        + quantity.key()
                                        + "=UNIT, UNIT being one of "
                                        + String.join(" ", Scale.spellings(quantity))));
            }
            taken.add(new Taken(quantity, column, scale, why + ", unit in its head"));
            return;
        }
        Optional<Scale> scale = Scale.usual(quantity);
        taken.add(
                new Taken(
                        quantity,
                        column,
                        scale,
                        why + (scale.isPresent() ? ", no unit told: the usual one" : "")));
    }
}
