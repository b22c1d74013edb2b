package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.profile.Headrooms;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.Fading;
import brakewright.worksheet.OwnStop;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The answer to whether a proposal is safe and what it buys, to be said aloud. */
final class SpokenAnswer {

    /** So many lines are listened to. */
    static final int LINES = 12;

    private final CheckSheet check;
    private final Judged judged;
    private final UnitSystem units;
    private final Page page;
    private final CheckAnswer answer;
    private final List<String> remembered;

    SpokenAnswer(
            BuildFile file,
            CheckSheet check,
            Headrooms headrooms,
            Judged judged,
            UnitSystem units,
            Page page,
            Ink ink) {
        this.remembered = Remembered.in(file, check.proposed());
        this.check = check;
        this.judged = judged;
        this.units = units;
        this.page = page;
        this.answer = new CheckAnswer(file, check, headrooms, judged, units, page, ink);
    }

    void print() {
        Page told = page.another();
        told.paragraph("Answer: " + answer.verdict(), 2, "");
        VerdictWords words = new VerdictWords(judged.build(), units);
        told.paragraph("  Pack:", 9, String.join(" ", words.briefPack(judged.review())));
        told.paragraph("  Parts:", 9, String.join(" ", words.briefParts(judged.review())));
        told.paragraph("  Brake:", 9, words.of(judged.brake()));
        List<String> besides = new ArrayList<>();
        String nominal = Judged.word(check.proposed().review());
        if (!judged.word().equals(nominal)) {
            besides.add(
                    "That is at the unfavourable corner of the tolerances; nominally: "
                            + nominal
                            + ".");
        }
        if (!remembered.isEmpty()) {
            besides.add(VerdictWords.fromMemoryInBrief(remembered));
        }
        besides.add(buys(check.stopsRidden()));
        check.uselessRidden().ifPresent(each -> besides.add(useless(each)));
        besides.add(answer.couldBe(false));
        shorten(besides, LINES - told.length());
        besides.forEach(told::note);
        page.all(told);
    }

    /** Where the verdict is long the rest is told in less; how far one may go, always. */
    private void shorten(List<String> besides, int room) {
        if (lines(besides) > room) {
            check.uselessRidden().ifPresent(each -> besides.remove(useless(each)));
        }
        int last = besides.size() - 1;
        if (lines(besides) > room) {
            besides.set(last - 1, buys(check.stopsRidden().subList(0, 1)));
        }
        if (lines(besides) > room) {
            besides.set(last, answer.couldBe(true));
        }
        if (lines(besides) > room) {
            besides.remove(last - 1);
        }
    }

    private int lines(List<String> sentences) {
        return sentences.stream().mapToInt(each -> page.another().note(each).length()).sum();
    }

    /** What it buys in metres, where it is safe first. */
    private String buys(List<OwnStop> stops) {
        List<String> safe = new ArrayList<>();
        List<String> unsafe = new ArrayList<>();
        boolean stays =
                stops.stream()
                        .map(OwnStop::distance)
                        .allMatch(each -> length(each.present()).equals(length(each.proposed())));
        for (OwnStop stop : stops) {
            String told =
                    (stays ? "" : length(stop.distance().present()) + " to ")
                            + length(stop.distance().proposed())
                            + " at "
                            + Numbers.percent(stop.charge());
            (check.ridden().isSafe(stop.charge()) ? safe : unsafe).add(told);
        }
        double before = check.present().inEffect().topSpeed();
        double after = check.proposed().inEffect().topSpeed();
        return "From "
                + units.speedText(after)
                + (before == after ? "" : ", now " + units.speedText(before) + ",")
                + (stays ? " the stop stays " : " the stop goes from ")
                + (safe.isEmpty()
                        ? String.join(", ", unsafe) + " charge, safe at none of them"
                        : String.join(", ", safe)
                                + " charge"
                                + (unsafe.isEmpty()
                                        ? ""
                                        : " (where it is not safe: "
                                                + String.join(", ", unsafe)
                                                + ")"))
                + ".";
    }

    private String length(OptionalDouble distance) {
        return distance.isPresent() ? units.lengthText(distance.getAsDouble()) : "no stop";
    }

    private String useless(Fading fading) {
        return (fading.speed() > 0.0
                        ? "Above "
                                + units.speedDown(fading.speed())
                                + " at "
                                + Numbers.percent(fading.charge())
                                + " charge"
                        : "At " + Numbers.percent(fading.charge()) + " charge, at any speed,")
                + " raising the motor brake current is useless: the "
                + (fading.isHeldByTaper() ? "high-voltage taper" : "pack limit")
                + " decides.";
    }
}
