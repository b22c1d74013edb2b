package brakewright.cli.describe;

import brakewright.buildfile.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Answers in a file: one on each line, {@code motor.kv = 170 rpm/V}, with {@code don't know} for
 * what is not known; lines that begin with # are comments.
 */
public final class AnswersFile {

    private final Map<String, Line> lines = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private record Line(int number, String answer) {}

    private AnswersFile() {}

    /**
     * Gives an interview the answers of a file, as far as they are asked for.
     *
     * @param text of the file
     * @param interview receives those that will do
     * @return what is wrong, line by line; none where all was taken
     */
    public static List<Problem> read(String text, Interview interview) {
        AnswersFile file = new AnswersFile();
        file.readLines(text, interview);
        file.giveTo(interview);
        return file.problems;
    }

    private void readLines(String text, Interview interview) {
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            int equals = line.indexOf('=');
            if (line.isBlank() || line.strip().startsWith("#")) {
                continue;
            }
            String id = equals < 0 ? line.strip() : line.substring(0, equals).strip();
            if (equals < 0 || !interview.asks(id)) {
                problems.add(
                        new Problem(
                                number,
                                id,
                                equals < 0 ? "there is no answer" : "no question has that name",
                                "the name of a question and its answer, for example motor.kv = 170"
                                        + " rpm/V"));
            } else if (lines.put(id, new Line(number, line.substring(equals + 1))) != null) {
                problems.add(new Problem(number, id, "it was answered before", "one answer"));
            }
        }
    }

    /** In the order of the questions, as an answer may bring up another question. */
    private void giveTo(Interview interview) {
        for (Question question : interview.questions()) {
            Line line = lines.get(question.id());
            if (line != null && question.applies(interview.given())) {
                interview
                        .answer(question, line.answer())
                        .ifPresent(
                                wrong ->
                                        problems.add(
                                                new Problem(
                                                        line.number(), question.id(), wrong, "")));
            }
        }
    }

    /**
     * Tells what is still to be answered.
     *
     * @param interview after its file was read
     * @return one problem for each question, with an example; none where all are answered
     */
    public static List<Problem> missing(Interview interview) {
        List<Problem> missing = new ArrayList<>();
        for (Question question : interview.questions()) {
            if (question.applies(interview.given())
                    && !interview.given().containsKey(question.id())) {
                missing.add(
                        new Problem(
                                0,
                                question.id(),
                                question.asks(),
                                "an answer, for example "
                                        + question.id()
                                        + " = "
                                        + interview.example(question)));
            }
        }
        return missing;
    }

    /**
     * Writes the answers so far, to go on from.
     *
     * @param interview any
     * @return lines that {@link #read} reads
     */
    public static String text(Interview interview) {
        StringBuilder text =
                new StringBuilder("# answers so far; brakewright new goes on from here\n");
        for (Question question : interview.questions()) {
            Optional.ofNullable(interview.given().get(question.id()))
                    .ifPresent(
                            answer ->
                                    text.append(question.id())
                                            .append(" = ")
                                            .append(answer)
                                            .append('\n'));
        }
        return text.toString();
    }
}
