package brakewright.cli.describe;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.KeyGuide;
import brakewright.buildfile.Problem;
import brakewright.tables.ReferenceTables;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which question comes next, and whether an answer will do. */
public final class Interview {

    private final ReferenceTables tables;
    private final List<Question> questions = Questions.load();
    private final Map<String, KeyGuide.Entry> keys = new LinkedHashMap<>();
    private final Map<String, Answer> given = new LinkedHashMap<>();

    /**
     * Begins with no answer.
     *
     * @param tables where cells, wires and plugs stand
     */
    public Interview(ReferenceTables tables) {
        this.tables = tables;
        for (KeyGuide.Entry entry : new KeyGuide(tables).all()) {
            keys.put(entry.key(), entry);
        }
    }

    /**
     * Returns the next question that applies and has no answer.
     *
     * @return empty where all are answered
     */
    public Optional<Question> next() {
        return questions.stream()
                .filter(each -> each.applies(given) && !given.containsKey(each.id()))
                .findFirst();
    }

    /** How many questions that apply now have an answer, and how many apply. */
    int[] progress() {
        long all = questions.stream().filter(each -> each.applies(given)).count();
        long done =
                questions.stream()
                        .filter(each -> each.applies(given) && given.containsKey(each.id()))
                        .count();
        return new int[] {(int) done, (int) all};
    }

    /**
     * Takes an answer.
     *
     * @param question which
     * @param typed as it was typed
     * @return what is wrong with it, with an example; empty where it was taken
     */
    public Optional<String> answer(Question question, String typed) {
        Answer answer = Answer.of(typed);
        if (!answer.isKnown() && typed.isBlank()) {
            return Optional.of("type an answer, for example " + example(question) + HELP);
        }
        Optional<String> wrong =
                answer.isKnown() ? wrong(question, answer.text()) : unknown(question);
        if (wrong.isEmpty()) {
            given.put(question.id(), answer);
            given.keySet().removeIf(id -> !find(id).applies(given));
        }
        return wrong;
    }

    private static final String HELP = "; \"don't know\" and \"?\" are answers, too";

    private Optional<String> unknown(Question question) {
        return question.unknown().kind() == Question.Unknown.Kind.MUST
                ? Optional.of(
                        "there is no doing without it"
                                + (found(question).isEmpty() ? "" : ": " + found(question))
                                + "; for example "
                                + example(question))
                : Optional.empty();
    }

    private Optional<String> wrong(Question question, String text) {
        if (!question.answers().isEmpty()) {
            return question.answers().contains(text)
                    ? Optional.empty()
                    : Optional.of("answer " + String.join(" or ", question.answers()));
        }
        if (question.isOfLabel()) {
            return LabelNumber.read(text, unit(question)).isPresent()
                    ? Optional.empty()
                    : Optional.of("a number above 0 is wanted, for example " + example(question));
        }
        return inFile(question.id(), text)
                .map(problem -> problem.wrong() + "; for example " + example(question));
    }

    private static String unit(Question question) {
        String[] words = question.example().split(" ");
        return words.length > 1 ? words[1] : "";
    }

    /** What the reader of build files says of one line. */
    private Optional<Problem> inFile(String id, String text) {
        String line = id.substring(id.lastIndexOf('.') + 1) + " = " + literal(id, text) + '\n';
        String file = table(id).isEmpty() ? line : '[' + table(id) + "]\n" + line;
        try {
            BuildFile.read(file.getBytes(StandardCharsets.UTF_8), tables);
            return Optional.empty();
        } catch (BuildFileException wrong) {
            return wrong.problems().stream()
                    .filter(each -> each.line() > 0 && each.key().equals(id))
                    .findFirst();
        }
    }

    String literal(String id, String text) {
        return Literal.of(text, entry(id).example());
    }

    static String table(String id) {
        return id.substring(0, Math.max(0, id.lastIndexOf('.')));
    }

    KeyGuide.Entry entry(String id) {
        KeyGuide.Entry entry = keys.get(id);
        if (entry == null) {
            throw new IllegalStateException("a question asks for no key: " + id);
        }
        return entry;
    }

    /** An example as it would be typed. */
    String example(Question question) {
        return question.example().isEmpty()
                ? entry(question.id()).example().replaceAll("[\"\\[\\]]", "")
                : question.example();
    }

    /** Where a person finds the answer; empty where nothing need be said. */
    String found(Question question) {
        return question.isOfLabel() || question.id().equals("title")
                ? ""
                : entry(question.id()).found().replace("`", "");
    }

    /** What the answer is about, in the words of the key. */
    String what(Question question) {
        return question.isOfLabel() ? "" : entry(question.id()).what().replace("`", "");
    }

    Question find(String id) {
        return questions.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no question " + id));
    }

    /** Whether there is a question of that name. */
    boolean asks(String id) {
        return questions.stream().anyMatch(each -> each.id().equals(id));
    }

    /** Takes the last answer back; the question is next again. */
    boolean back() {
        List<String> answered = new ArrayList<>(given.keySet());
        if (answered.isEmpty()) {
            return false;
        }
        String last =
                questions.stream()
                        .map(Question::id)
                        .filter(given::containsKey)
                        .reduce((one, other) -> other)
                        .orElseThrow();
        given.remove(last);
        return true;
    }

    List<Question> questions() {
        return questions;
    }

    /** The answers by question, in the order in which they were given. */
    Map<String, Answer> given() {
        return given;
    }

    Optional<Answer> known(String id) {
        return Optional.ofNullable(given.get(id)).filter(Answer::isKnown);
    }

    ReferenceTables tables() {
        return tables;
    }
}
