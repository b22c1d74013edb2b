package brakewright.cli.json;

import brakewright.profile.Answer;
import brakewright.profile.Solution;
import brakewright.review.Evaluation;

/** Writes the answer to a question for a value, and what holds it down. */
final class SolutionJson {

    private final JsonText json;
    private final String value;

    /** Under this name the value is written. */
    SolutionJson(JsonText json, String value) {
        this.json = json;
        this.value = value;
    }

    void write(String name, Solution solution) {
        json.startObject(name);
        write(solution);
        json.endObject();
    }

    /** Beside the nominal answer that of the tolerances, where some are stated. */
    void unfavourable(Answer answer) {
        answer.unfavourable().ifPresent(solution -> write("unfavourable", solution));
    }

    void write(Solution solution) {
        if (solution instanceof Solution.Found found) {
            write("found", found.value(), found.beyond());
        } else if (solution instanceof Solution.All all) {
            write("all", all.value(), all.there());
        } else if (solution instanceof Solution.None none) {
            json.text("answer", "none");
            check(none.there());
        }
    }

    private void write(String answer, double found, Evaluation held) {
        json.text("answer", answer);
        json.number(value, found);
        check(held);
    }

    private void check(Evaluation evaluation) {
        json.text("bound_by", evaluation.worst().key());
        json.pack(evaluation.pack());
        json.number("charge", evaluation.charge());
    }
}
