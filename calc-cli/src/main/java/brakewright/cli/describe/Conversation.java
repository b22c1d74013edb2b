package brakewright.cli.describe;

import brakewright.buildfile.internal.Printable;
import brakewright.cli.text.Columns;
import brakewright.cli.text.Ink;
import brakewright.tables.CellEntry;
import brakewright.tables.PlugEntry;
import brakewright.tables.WireEntry;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;

/** Asks the questions of an interview at a terminal. */
public final class Conversation {

    private final Interview interview;
    private final Terminal terminal;
    private final PrintWriter out;

    /**
     * Prepares the conversation.
     *
     * @param interview whose questions are asked
     * @param terminal where
     */
    public Conversation(Interview interview, Terminal terminal) {
        this.interview = interview;
        this.terminal = terminal;
        this.out = terminal.writer();
    }

    /**
     * Asks until all is answered or the person leaves.
     *
     * @return whether all is answered
     */
    public boolean hold() {
        tell(
                "",
                "Answer as the label or the ruler says, with the unit: 92 kg, 7.9 in, 68 mohm."
                        + " \"?\" tells where a number is found, \"don't know\" is an answer,"
                        + " \"back\" takes the last one back, \"leave\" keeps the answers for"
                        + " another time.");
        Optional<Question> next = interview.next();
        while (next.isPresent()) {
            if (!ask(next.get())) {
                return false;
            }
            next = interview.next();
        }
        return true;
    }

    /** Returns false where the person leaves. */
    private boolean ask(Question question) {
        int[] progress = interview.progress();
        out.println();
        tell(
                "",
                String.format(
                        Locale.ROOT,
                        "%d of %d  %s  (for example %s)",
                        progress[0] + 1,
                        progress[1],
                        question.asks(),
                        interview.example(question)));
        LineReader reader = reader(question);
        while (true) {
            out.flush();
            String typed;
            try {
                typed = reader.readLine("> ").strip();
            } catch (EndOfFileException | UserInterruptException leaving) {
                return false;
            }
            switch (typed.toLowerCase(Locale.ROOT)) {
                case "leave" -> {
                    return false;
                }
                case "back" -> {
                    if (interview.back()) {
                        return true;
                    }
                    out.println("  this is the first question");
                }
                case "?" -> help(question);
                default -> {
                    Optional<String> wrong = interview.answer(question, typed);
                    if (wrong.isEmpty()) {
                        known();
                        return true;
                    }
                    tell("  ", Printable.shown(wrong.get()));
                }
            }
        }
    }

    private void help(Question question) {
        List<String> told = new ArrayList<>();
        if (!interview.what(question).isEmpty()) {
            told.add(interview.what(question));
        }
        if (!interview.found(question).isEmpty()) {
            told.add("found: " + interview.found(question));
        }
        if (!question.answers().isEmpty()) {
            told.add("answers: " + String.join(", ", question.answers()));
        }
        told.add(
                "without it: "
                        + switch (question.unknown().kind()) {
                            case MUST -> "there is no doing without it";
                            case LEAVE -> "what is assumed for any vehicle, and said so";
                            case ASK -> "another question finds it";
                            case TAKE -> question.unknown().value() + ", and said so";
                            case RESISTANCE_OF_LABEL ->
                                    "an estimate from the power on the label, by half either way";
                            case WORST_BASIS -> "whichever makes the verdict worst";
                            case CELL_OF_LABEL ->
                                    "a cell that none of the tables resists more, from the label of"
                                            + " the pack";
                        });
        told.forEach(each -> tell("  ", each));
    }

    private void known() {
        List<String> told = new KnownSoFar(interview).told();
        if (!told.isEmpty()) {
            tell("  ", "known so far: " + String.join(", ", told));
        }
    }

    /** As wide as the terminal, if it tells. */
    private void tell(String indent, String text) {
        int told = terminal.getWidth() > 0 ? terminal.getWidth() : Ink.USUAL_COLUMNS;
        int columns = new Ink(false, false, told).columns();
        for (String line : Columns.wrap(text, columns - indent.length())) {
            out.println(indent + line);
        }
    }

    private LineReader reader(Question question) {
        return LineReaderBuilder.builder()
                .terminal(terminal)
                .completer(new StringsCompleter(words(question)))
                .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                .build();
    }

    /** What the tabulator key completes. */
    private List<String> words(Question question) {
        List<String> words = new ArrayList<>(question.answers());
        switch (question.id()) {
            case "rider.stance" ->
                    words.addAll(List.of("standing-sideways", "standing-forward", "seated"));
            case "vehicle.driven_axle" -> words.addAll(List.of("front", "rear", "both"));
            case "controller.current_basis" ->
                    words.addAll(List.of("phase-peak", "phase-rms", "dc-equivalent"));
            case "pack.cell" ->
                    interview.tables().cells().stream().map(CellEntry::id).forEach(words::add);
            case "pack.wiring.plug" ->
                    interview.tables().plugs().stream().map(PlugEntry::id).forEach(words::add);
            case "pack.wiring.wire" ->
                    interview.tables().wires().stream().map(WireEntry::size).forEach(words::add);
            default -> {}
        }
        words.addAll(List.of(Answer.NOT_KNOWN, "back", "leave"));
        return words;
    }
}
