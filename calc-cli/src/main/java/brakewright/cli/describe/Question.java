package brakewright.cli.describe;

import java.util.List;
import java.util.Map;

/**
 * One question.
 *
 * @param id a key of the build file, or a name that begins with {@code label.}
 * @param conditions one of which must hold for it to be asked; none where it is always
 * @param unknown what follows where the answer is not known
 * @param asks the question
 * @param answers the words that answer it; none where a value of the key does
 * @param example of an answer; empty where the key has one
 */
public record Question(
        String id,
        List<Condition> conditions,
        Unknown unknown,
        String asks,
        List<String> answers,
        String example) {

    /** Copies the lists. */
    public Question {
        conditions = List.copyOf(conditions);
        answers = List.copyOf(answers);
    }

    /** Whether it only helps to find a key of the build file. */
    boolean isOfLabel() {
        return id.startsWith("label.");
    }

    boolean applies(Map<String, Answer> given) {
        return conditions.isEmpty() || conditions.stream().anyMatch(each -> each.holds(given));
    }

    /**
     * That another question was answered in some way.
     *
     * @param id which
     * @param kind in which way
     * @param answer the very answer; empty where any will do
     */
    record Condition(String id, Kind kind, String answer) {

        /** The ways. */
        enum Kind {
            /** With one answer. */
            IS,
            /** With any. */
            KNOWN,
            /** That it is not known. */
            UNKNOWN
        }

        boolean holds(Map<String, Answer> given) {
            Answer found = given.get(id);
            if (found == null) {
                return false;
            }
            return switch (kind) {
                case IS -> found.text().equals(answer);
                case KNOWN -> found.isKnown();
                case UNKNOWN -> !found.isKnown();
            };
        }
    }

    /**
     * What follows where the answer is not known.
     *
     * @param kind of it
     * @param value that is taken; empty where none is
     */
    record Unknown(Kind kind, String value) {

        /** The kinds. */
        enum Kind {
            /** Nothing is written: the program assumes what it assumes for any vehicle. */
            LEAVE,
            /** There is no doing without. */
            MUST,
            /** A later question finds it another way. */
            ASK,
            /** A value of our own is taken, with a wide spread. */
            TAKE,
            /** The resistance is estimated from the power on the label. */
            RESISTANCE_OF_LABEL,
            /** Whatever makes the verdict worst is taken. */
            WORST_BASIS,
            /** A cell that no cell of the tables resists more than is taken. */
            CELL_OF_LABEL
        }
    }
}
