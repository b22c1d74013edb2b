package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.words.Initial;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.profile.Headroom;
import brakewright.profile.Headrooms;
import brakewright.profile.Solution;
import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.spec.Use;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.OwnStop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether the proposal is safe, what it buys, and how far it could go. */
final class CheckAnswer {

    private final BuildFile file;
    private final CheckSheet check;
    private final Headrooms headrooms;
    private final Judged judged;
    private final UnitSystem units;
    private final Page page;
    private final Ink ink;
    private final Build build;

    CheckAnswer(
            BuildFile file,
            CheckSheet check,
            Headrooms headrooms,
            Judged judged,
            UnitSystem units,
            Page page,
            Ink ink) {
        this.file = file;
        this.check = check;
        this.headrooms = headrooms;
        this.judged = judged;
        this.units = units;
        this.page = page;
        this.ink = ink;
        this.build = check.proposed().build();
    }

    void print() {
        page.paragraph("Answer:", 2, verdict());
        VerdictWords words = new VerdictWords(judged.build(), units);
        for (String sentence : words.pack(judged.review())) {
            page.paragraph("  Pack:", 9, sentence);
        }
        for (String sentence : words.parts(judged.review())) {
            page.paragraph("  Parts:", 9, sentence);
        }
        page.paragraph("  Brake:", 9, words.of(judged.brake()));
        String nominal = Judged.word(check.proposed().review());
        if (!judged.word().equals(nominal)) {
            page.paragraph(
                    "",
                    2,
                    "This is at the unfavourable corner of the tolerances stated; with nominal"
                            + " values it would be: "
                            + nominal
                            + ".");
        }
        List<String> remembered = Remembered.in(file, check.proposed());
        if (!remembered.isEmpty()) {
            page.paragraph("", 2, VerdictWords.fromMemory(remembered));
        }
        page.paragraph("", 2, buys());
        check.uselessAbove().ifPresent(speed -> page.paragraph("", 2, useless(speed)));
        page.paragraph("", 2, brake());
        page.paragraph("", 2, regen());
    }

    /** Never a bare yes: a pack that is safe because the vehicle hardly brakes is none. */
    String verdict() {
        String brake =
                switch (judged.brake().word()) {
                    case ENOUGH -> ", AND THE BRAKE IS ENOUGH";
                    case WEAK ->
                            judged.review().verdict().outcome() == Verdict.Outcome.OUTSIDE_LIMITS
                                    ? ", AND THE BRAKE IS WEAK"
                                    : ", BUT THE BRAKE IS WEAK";
                    case NONE -> ", AND NO BRAKE IS LEFT WHERE IT IS WEAKEST";
                };
        String parts =
                switch (judged.review().verdict().outcome()) {
                    case WITHIN_LIMITS -> "PACK AND PARTS ARE SAFE";
                    case CONDITIONAL -> "PACK AND PARTS ARE SAFE UNDER A CONDITION";
                    case OUTSIDE_LIMITS -> "NOT SAFE FOR PACK OR PARTS";
                };
        Ink.Tone outcome = DecisionText.tone(judged.review().verdict().outcome());
        Ink.Tone word = DecisionText.tone(judged.brake().word());
        return ink.paint(outcome, parts) + ink.paint(word, brake);
    }

    private String useless(double speed) {
        String full = Numbers.percent(build.use().chargeFrom());
        String decides =
                check.isUselessForTaper()
                        ? "the high-voltage taper decides how hard it brakes."
                        : "the pack limit decides how hard it brakes.";
        return speed > 0.0
                ? "Above "
                        + units.speedDown(speed)
                        + " at "
                        + full
                        + " charge raising the motor brake current is useless: there "
                        + decides
                : "At "
                        + full
                        + " charge raising the motor brake current is useless at any speed: nothing"
                        + " is let into the pack, and "
                        + decides;
    }

    /** What the proposal buys in metres from the highest speed, at the fullest and half charge. */
    private String buys() {
        double before = check.present().inEffect().topSpeed();
        double after = check.proposed().inEffect().topSpeed();
        OwnStop full = check.stopFull();
        OwnStop half = check.stopHalfWay();
        if (before == after) {
            return "From "
                    + units.speedText(after)
                    + " it "
                    + gain(full)
                    + " at "
                    + Numbers.percent(full.charge())
                    + " charge and "
                    + (isLeft(full) && isLeft(half) ? at(half) : gain(half))
                    + " at "
                    + Numbers.percent(half.charge())
                    + ", reaction apart.";
        }
        return "From its own highest speed, "
                + units.speedText(after)
                + ", the proposal "
                + stops(full.distance().proposed())
                + " at "
                + Numbers.percent(full.charge())
                + " charge and "
                + stops(half.distance().proposed())
                + " at "
                + Numbers.percent(half.charge())
                + "; from "
                + units.speedText(before)
                + " it now "
                + stops(full.distance().present())
                + " and "
                + stops(half.distance().present())
                + "; reaction apart.";
    }

    private String stops(OptionalDouble distance) {
        return distance.isPresent()
                ? "stops within " + units.lengthText(distance.getAsDouble())
                : "does not stop";
    }

    private String gain(OwnStop stop) {
        OptionalDouble after = stop.distance().proposed();
        if (stop.gain().isEmpty()) {
            return after.isPresent()
                    ? "stops within "
                            + units.lengthText(after.getAsDouble())
                            + " where the present settings do not"
                    : "does not stop the vehicle";
        }
        if (isLeft(stop)) {
            return "leaves the stop " + at(stop);
        }
        double gain = stop.gain().getAsDouble();
        return (gain > 0.0 ? "shortens the stop by " : "lengthens the stop by ")
                + units.lengthText(Math.abs(gain))
                + " to "
                + units.lengthText(after.orElseThrow());
    }

    /** Whether what it gains would be written as nothing. */
    private boolean isLeft(OwnStop stop) {
        OptionalDouble gain = stop.gain();
        return gain.isPresent()
                && units.lengthText(Math.abs(gain.getAsDouble())).equals(units.lengthText(0.0));
    }

    private String at(OwnStop stop) {
        return "at " + units.lengthText(stop.distance().proposed().orElseThrow());
    }

    private String brake() {
        Limit bare = check.proposed().permitted().motorBrake();
        return highest(headrooms.motorBrake(), LimitId.MOTOR_BRAKE_CURRENT, "")
                + " Motor, controller, tyres and rider alone would bear "
                + amperes(bare.value())
                + " ("
                + LimitWords.of(bare.binding())
                + ").";
    }

    /**
     * How high the motor brake current could go, in one sentence.
     *
     * @param brief whether it leaves out what holds it down
     */
    String couldBe(boolean brief) {
        Headroom headroom = headrooms.motorBrake();
        String all = "over the whole charge in use ";
        String throughout = value(headroom.throughout(), brief);
        if (headroom.there().isEmpty() || !headroom.isNarrowed(check.present().build())) {
            return Initial.capital(all) + "the motor brake current could be " + throughout + ".";
        }
        return Initial.capital(circumstances(headroom.circumstances().orElseThrow()))
                + " the motor brake current could be "
                + value(headroom.there().get(), brief)
                + "; "
                + all
                + throughout
                + ".";
    }

    private static String value(Solution solution, boolean brief) {
        if (solution instanceof Solution.Found found) {
            return amperes(found.value()) + (brief ? "" : " (" + check(found.beyond()) + ")");
        }
        return solution instanceof Solution.All all
                ? amperes(all.value()) + " or more"
                : "none at all"
                        + (brief ? "" : " (" + check(((Solution.None) solution).there()) + ")");
    }

    private String regen() {
        Limit bare = check.proposed().permitted().packRegen().fixed();
        return highest(headrooms.packRegen(), LimitId.PACK_REGEN_CURRENT, " per controller")
                + " The plain ratings alone would permit "
                + amperes(build.controllers().each(bare.value()))
                + " ("
                + LimitWords.of(bare.binding())
                + ").";
    }

    private String highest(Headroom headroom, LimitId asked, String each) {
        String name = LimitWords.of(asked);
        String throughout = over(headroom.throughout(), each);
        String all = "over the whole charge in use ";
        Optional<Solution> there = headroom.there();
        if (there.isEmpty()) {
            return "The present settings are safe for the pack at no charge in use; "
                    + all
                    + (headroom.throughout() instanceof Solution.None none
                            ? "no "
                                    + name
                                    + " is within all limits, for "
                                    + exceeded(none, asked)
                                    + "."
                            : "the highest " + name + " within all limits is " + throughout + ".");
        }
        if (there.get() instanceof Solution.None none) {
            return "No "
                    + name
                    + " is within all limits, "
                    + (headroom.isNarrowed(check.present().build())
                            ? "not even where the present settings are safe for the pack, "
                            : "")
                    + "for "
                    + exceeded(none, asked)
                    + ".";
        }
        if (!headroom.isNarrowed(check.present().build())) {
            return "Over the whole charge in use the highest "
                    + name
                    + " within all limits is "
                    + throughout
                    + ".";
        }
        return "Used "
                + circumstances(headroom.circumstances().orElseThrow())
                + ", where the present settings are safe, the highest "
                + name
                + " within all limits is "
                + over(there.get(), each)
                + "; "
                + all
                + (headroom.throughout() instanceof Solution.None none
                        ? "none is, for " + exceeded(none, asked)
                        : "it is " + throughout)
                + ".";
    }

    /** In which part of the use the present settings are safe. */
    private String circumstances(Use part) {
        Use whole = check.present().build().use();
        StringBuilder text = new StringBuilder();
        if (part.chargeFrom() < whole.chargeFrom()) {
            text.append("up to ").append(charge(part.chargeFrom())).append(" charge");
        }
        if (part.chargeTo() > whole.chargeTo()) {
            text.append(text.isEmpty() ? "" : " and ")
                    .append("down to ")
                    .append(Numbers.up(100.0 * part.chargeTo(), 1))
                    .append(" % charge");
        }
        if (part.climate().coldestPackC() > whole.climate().coldestPackC()) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append("with the cells at ")
                    .append(Numbers.nearest(part.climate().coldestPackC(), 0))
                    .append(" °C or warmer");
        }
        if (part.climate().warmestPackC() < whole.climate().warmestPackC()) {
            text.append(text.isEmpty() ? "" : ", ")
                    .append("with the cells at ")
                    .append(Numbers.nearest(part.climate().warmestPackC(), 0))
                    .append(" °C or cooler");
        }
        return text.toString();
    }

    private static String over(Solution solution, String each) {
        if (solution instanceof Solution.Found found) {
            return amperes(found.value()) + each + ", held down by " + check(found.beyond());
        }
        return solution instanceof Solution.All all
                ? amperes(all.value()) + each + " or more"
                : "none";
    }

    /** What forbids every value: another setting, where one is at fault. */
    private String exceeded(Solution.None none, LimitId asked) {
        return check.otherBeyond(none.there().worst(), asked)
                .map(
                        subject ->
                                "the "
                                        + LimitWords.of(subject)
                                        + " exceeds "
                                        + check(none.there())
                                        + " whatever it is")
                .orElse(check(none.there()) + " is exceeded whatever it is");
    }

    private static String check(Evaluation evaluation) {
        return LimitWords.of(evaluation.worst(), evaluation.pack())
                + (evaluation.charge().isPresent()
                        ? " at " + charge(evaluation.charge().getAsDouble()) + " charge"
                        : "");
    }

    /** Rounded down, as the charge is up to which all is well. */
    private static String charge(double share) {
        String percent = Numbers.down(100.0 * share, 1);
        return percent.replaceAll("\\.0$", "") + " %";
    }

    /** Small currents are told to a hundredth. */
    private static String amperes(double value) {
        return Numbers.down(value, value < 10.0 ? 2 : 1) + " A";
    }
}
