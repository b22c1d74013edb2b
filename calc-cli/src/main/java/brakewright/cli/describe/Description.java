package brakewright.cli.describe;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.KeyGuide;
import brakewright.buildfile.internal.Plain;
import brakewright.review.Evaluation;
import brakewright.spec.Input;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A commented build file, of answers. */
public final class Description {

    private static final String REDUCTION = "drive.reduction";

    /** Assumption: our own choice; an estimate of a motor is right to within a half. */
    private static final String RESISTANCE = " mΩ ± 50 %";

    /** Assumption: our own choice, around the most that a cell of the tables resists. */
    private static final String CELL_RESISTANCE = " mΩ ± 30 %";

    private static final String BASIS = "controller.current_basis";

    private final Interview interview;
    private final KnownSoFar known;

    /**
     * Prepares the file.
     *
     * @param interview whose questions are all answered
     */
    public Description(Interview interview) {
        this.interview = interview;
        this.known = new KnownSoFar(interview);
    }

    /**
     * Writes the file.
     *
     * @return TOML, with a comment on every line that is not known
     * @throws BuildFileException if the answers do not go together
     */
    public String text() throws BuildFileException {
        if (interview.known(BASIS).isPresent()) {
            String text = written(interview.known(BASIS).orElseThrow().text());
            read(text);
            return text;
        }
        String worst = "";
        double most = Double.NEGATIVE_INFINITY;
        for (String basis : List.of("phase-peak", "phase-rms", "dc-equivalent")) {
            String text = written(basis);
            double severity = Evaluation.of(read(text).build()).severity();
            if (severity > most) {
                most = severity;
                worst = text;
            }
        }
        return worst;
    }

    private BuildFile read(String text) throws BuildFileException {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8), interview.tables());
    }

    private String written(String basis) {
        StringBuilder file = new StringBuilder();
        String title =
                interview
                        .known("title")
                        .map(Answer::text)
                        .orElse(interview.find("title").unknown().value());
        file.append("title = ").append(interview.literal("title", title)).append('\n');
        String table = "";
        for (Question question : ordered()) {
            String id = question.id();
            Answer answer = interview.given().get(id);
            if (id.equals("title") || answer == null && !id.equals(REDUCTION)) {
                continue;
            }
            List<String> lines = answer == null ? ofTeeth() : lines(question, answer, basis);
            if (!lines.isEmpty() && !Interview.table(id).equals(table)) {
                table = Interview.table(id);
                file.append("\n[").append(table).append("]\n");
            }
            lines.forEach(each -> file.append(each).append('\n'));
        }
        return file.toString();
    }

    /** In the order of the tables of a build file; the reduction stands for what labels tell. */
    private List<Question> ordered() {
        List<Question> ordered = new ArrayList<>();
        List<String> keys = new ArrayList<>();
        for (KeyGuide.Entry entry : new KeyGuide(interview.tables()).all()) {
            keys.add(entry.key());
        }
        for (String key : keys) {
            if (interview.asks(key) && !key.equals("pack.cell")) {
                ordered.add(interview.find(key));
            }
        }
        // a cell may be a table of its own: it comes behind the plain keys of its pack
        int behind = 0;
        for (int i = 0; i < ordered.size(); i++) {
            String table = Interview.table(ordered.get(i).id());
            behind = table.equals("pack") ? i + 1 : behind;
        }
        ordered.add(behind, interview.find("pack.cell"));
        return ordered;
    }

    private static String name(String id) {
        return id.substring(id.lastIndexOf('.') + 1);
    }

    private List<String> lines(Question question, Answer answer, String basis) {
        String id = question.id();
        if (answer.isKnown()) {
            return List.of(name(id) + " = " + interview.literal(id, answer.text()));
        }
        return switch (question.unknown().kind()) {
            case LEAVE -> List.of(left(question));
            case TAKE -> taken(question, question.unknown().value(), "a value of our own");
            case WORST_BASIS ->
                    taken(question, basis, "the one with the worst verdict; ask its maker");
            case RESISTANCE_OF_LABEL -> resistance(question);
            case CELL_OF_LABEL -> cell();
            case MUST, ASK -> List.of();
        };
    }

    /** One for a hub motor, or what the teeth give. */
    private List<String> ofTeeth() {
        return List.of("reduction = " + Plain.number(known.reduction().orElseThrow()));
    }

    private String left(Question question) {
        KeyGuide.Entry entry = interview.entry(question.id());
        return "# " + entry.name() + " = " + entry.example() + "   not known" + find(question);
    }

    private String find(Question question) {
        String found = interview.found(question);
        return found.isEmpty() ? "" : "; how to find it: " + found;
    }

    private List<String> taken(Question question, String value, String why) {
        List<String> lines = new ArrayList<>();
        lines.add("# not known, taken: " + why);
        if (!interview.found(question).isEmpty()) {
            lines.add("# how to find it: " + interview.found(question));
        }
        lines.add(name(question.id()) + " = " + interview.literal(question.id(), value));
        return lines;
    }

    private List<String> resistance(Question question) {
        Optional<Answer> label = Optional.ofNullable(interview.given().get("label.motor_power"));
        String power =
                label.filter(Answer::isKnown)
                        .map(Answer::text)
                        .orElse(interview.find("label.motor_power").unknown().value());
        double watts = LabelNumber.read(power, "W").orElseThrow();
        double ohms = Estimates.resistance(watts, known.fullVoltage().orElseThrow());
        return taken(
                question,
                rounded(1e3 * ohms) + RESISTANCE,
                "estimated from "
                        + power
                        + (label.filter(Answer::isKnown).isPresent()
                                ? " on the label"
                                : ", a guess of our own"));
    }

    /** A cell of unknown make: its size from the label of the pack, rated with care. */
    private List<String> cell() {
        OptionalDouble parallel = known.number(Input.PACK_PARALLEL);
        double capacity = known.capacity().orElseThrow() / parallel.orElseThrow();
        return List.of(
                "",
                "# the cells are not known: none of the tables resists more for its size, and few are"
                        + " rated for less;",
                "# read the print on a wrap and write cell = \"...\" into [pack] instead",
                "[pack.cell]",
                "chemistry = \"nmc\"",
                "capacity = \"" + rounded(capacity) + " Ah\"",
                "discharge_current = \"" + rounded(Estimates.discharge(capacity)) + " A\"",
                "charge_current = \"" + rounded(Estimates.charge(capacity)) + " A\"",
                "voltage_max = \"4.2 V\"",
                "voltage_min = \"2.5 V\"",
                "resistance = \""
                        + rounded(1e3 * Estimates.cellResistance(interview.tables(), capacity))
                        + CELL_RESISTANCE
                        + '"');
    }

    /** To three digits, as more would claim to be known. */
    private static String rounded(double value) {
        return new BigDecimal(value).round(new MathContext(3)).stripTrailingZeros().toPlainString();
    }
}
