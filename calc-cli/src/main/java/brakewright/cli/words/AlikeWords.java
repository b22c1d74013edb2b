package brakewright.cli.words;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.spec.Build;
import brakewright.worksheet.AlikeFindings;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Says dangers and warnings in few words: those that differ only in cell temperature or pack in one
 * sentence, the strictest first. What it has no few words for is said in full.
 */
public final class AlikeWords {

    /** Our own choice: more numbers than that are not heard. */
    private static final int OTHERS = 2;

    private final Build build;
    private final UnitSystem units;
    private final FindingWords words;

    /**
     * Makes the words.
     *
     * @param build the vehicle
     * @param units for speeds
     */
    public AlikeWords(Build build, UnitSystem units) {
        this.build = build;
        this.units = units;
        this.words = new FindingWords(build, units);
    }

    /**
     * Says findings.
     *
     * @param alike the findings
     * @return one sentence or two
     */
    public String of(AlikeFindings alike) {
        Finding first = alike.first();
        return switch (first.topic()) {
            case PACK_RETURN_OVER, PACK_DRAW_OVER -> flow(alike) + against(first) + ".";
            case DRIVE_CURRENT_OVER, BRAKE_CURRENT_OVER ->
                    Initial.capital(LimitWords.of(first.subject().orElseThrow()))
                            + " "
                            + amperes(first.value())
                            + " per motor: "
                            + LimitWords.of(first.constraint().orElseThrow(), first.pack())
                            + " permits "
                            + limit(first)
                            + consequence(first)
                            + ".";
            case PROTECTION_BEFORE_TAPER ->
                    "In a hard pull the protection cuts dead at "
                            + percent(first.charge())
                            + " charge"
                            + others(alike, "cells at ")
                            + ", before the drive has faded: drive and brake vanish.";
            case PACK_LOSS_CASCADES -> cascade(alike);
            default -> brief(alike);
        };
    }

    /**
     * Says findings where there is little room.
     *
     * @param alike the findings
     * @return one short sentence
     */
    public String brief(AlikeFindings alike) {
        Finding first = alike.first();
        return switch (first.topic()) {
            case PACK_RETURN_OVER, PACK_DRAW_OVER -> briefFlow(alike) + ".";
            case PROTECTION_BEFORE_TAPER ->
                    "A hard pull cuts dead at "
                            + percent(first.charge())
                            + " charge"
                            + others(alike, "")
                            + ": no brake then.";
            case PACK_LOSS_CASCADES ->
                    first.value().isEmpty()
                            ? words.of(first)
                            : "If pack "
                                    + packs(alike)
                                    + " opens while "
                                    + (isReturned(first) ? "braking" : "driving")
                                    + ", all do: no brake.";
            case DRIVE_CURRENT_OVER, BRAKE_CURRENT_OVER ->
                    "The "
                            + LimitWords.of(first.subject().orElseThrow())
                            + " is "
                            + amperes(first.value())
                            + "; "
                            + LimitWords.brief(first.constraint().orElseThrow())
                            + others(alike, "")
                            + " permits "
                            + limit(first)
                            + consequence(first)
                            + ".";
            case FUSE_VOLTAGE_OVER ->
                    new FuseWords(build).name(first)
                            + " breaks "
                            + Numbers.significant(first.limit().orElseThrow())
                            + " V and stands at "
                            + Numbers.significant(first.value().orElseThrow())
                            + " V: it may arc on. Replace it"
                            + others(alike, "")
                            + ".";
            case FUSE_BREAKING_OVER ->
                    new FuseWords(build).name(first)
                            + " breaks up to "
                            + Numbers.down(first.limit().orElseThrow(), 0)
                            + " A; a short circuit may drive "
                            + Numbers.up(first.value().orElseThrow(), 0)
                            + " A through it, and it may burst"
                            + others(alike, "")
                            + ".";
            case TAPER_SURGES ->
                    "The "
                            + LimitWords.of(first.subject().orElseThrow())
                            + " is "
                            + Numbers.significant(first.value().orElseThrow())
                            + " V wide and surges below "
                            + Numbers.up(first.limit().orElseThrow(), 2)
                            + " V: it is not counted as a protection.";
            case SETTING_NOT_GIVEN ->
                    "The "
                            + LimitWords.of(first.subject().orElseThrow())
                            + " is not given and taken as "
                            + Numbers.down(first.value().orElseThrow(), 1)
                            + " A: look it up and enter it.";
            case BRAKE_TAKEN_AWAY ->
                    "At "
                            + units.speedText(first.speed().orElseThrow())
                            + " and "
                            + percent(first.charge())
                            + " charge no brake is left to speak of: "
                            + Numbers.down(Math.max(0.0, first.value().orElseThrow()), 2)
                            + " m/s² beside the road.";
            case JOINING_CURRENT ->
                    "Do not join the packs: "
                            + Numbers.up(first.value().orElseThrow(), 1)
                            + " A flow, the weaker bears "
                            + Numbers.down(first.limit().orElseThrow(), 1)
                            + " A.";
            case REGEN_OVERSHOOT ->
                    "In a hard grab up to "
                            + amperes(first.value())
                            + " go into the pack before the regen limiter acts: "
                            + trip(first)
                            + " may open"
                            + others(alike, "")
                            + ", and the electric brake vanishes.";
            case PROTECTION_BYPASSED -> bypassed(first);
            case SLOPE_NOT_HELD ->
                    "On the steepest slope ("
                            + Numbers.percent(build.use().slope())
                            + ") at "
                            + units.speedText(first.speed().orElseThrow())
                            + " the electric brake gives "
                            + Numbers.nearest(first.value().orElseThrow(), 0)
                            + " of "
                            + Numbers.nearest(first.limit().orElseThrow(), 0)
                            + " N: the vehicle gains speed.";
            case RETURN_INTO_WARM_CELLS -> warmed(first);
            case BRAKE_ENDS ->
                    "Below "
                            + units.speedText(first.speed().orElseThrow())
                            + " the controllers do not brake: on level road "
                            + Numbers.down(first.value().orElseThrow(), 2)
                            + " m/s² are left, and a descent may roll on.";
            case WET_GRIP ->
                    "On a wet road the wheels slide from "
                            + limit(first)
                            + " per motor on; "
                            + amperes(first.value())
                            + " are set. Brake softly there.";
            default -> words.of(first);
        };
    }

    /** What flows and where it is too much; at the charges of all packs and temperatures. */
    private String flow(AlikeFindings alike) {
        Finding first = alike.first();
        boolean isReturned = isReturned(first);
        if (first.charge().isEmpty()) {
            return "As set, "
                    + amperes(first.value())
                    + (isReturned ? " may go into the pack; " : " may leave the pack; ")
                    + LimitWords.of(first.constraint().orElseThrow(), first.pack())
                    + " permits "
                    + limit(first)
                    + others(alike, "cells at ")
                    + after(first, ": it may open, and ");
        }
        return (first.condition().orElseThrow() instanceof Condition.Never
                        ? "At any charge"
                        : (isReturned ? "Above " : "Below ") + bound(first) + " charge")
                + others(alike, "cells at ")
                + (isReturned ? " braking " : " driving ")
                + does(first);
    }

    private String briefFlow(AlikeFindings alike) {
        Finding first = alike.first();
        String who = LimitWords.brief(first.constraint().orElseThrow());
        if (first.charge().isEmpty()) {
            return amperes(first.value())
                    + (isReturned(first)
                            ? " may go into the pack; the "
                            : " may leave the pack; the ")
                    + who
                    + others(alike, "")
                    + " permits "
                    + limit(first)
                    + briefAfter(first);
        }
        String after = briefAfter(first);
        return (first.condition().orElseThrow() instanceof Condition.Never
                        ? "At any charge"
                        : (isReturned(first) ? "Above " : "Below ") + bound(first) + " charge")
                + others(alike, "")
                + (isReturned(first) ? " braking" : " driving")
                + (after.isEmpty() ? " exceeds the " : " may open the ")
                + who
                + after;
    }

    private static String briefAfter(Finding first) {
        return switch (first.constraint().orElseThrow()) {
            case PROTECTION_CHARGE_TRIP,
                    PROTECTION_OVERVOLTAGE_TRIP,
                    REGEN_OVERSHOOT,
                    PROTECTION_DISCHARGE_TRIP,
                    PROTECTION_UNDERVOLTAGE_TRIP ->
                    ": no brake then";
            default -> "";
        };
    }

    private static String does(Finding first) {
        String who = LimitWords.of(first.constraint().orElseThrow());
        String vanishing = after(first, ", and ");
        return switch (first.constraint().orElseThrow()) {
            case CONTROLLER_VOLTAGE_RATING -> "passes " + who + vanishing;
            default ->
                    vanishing.isEmpty()
                            ? (isReturned(first) ? "sends" : "draws")
                                    + " more than "
                                    + who
                                    + " permits"
                            : "may open " + who + vanishing;
        };
    }

    /** What comes of it where that is a danger. */
    private static String after(Finding first, String joint) {
        return switch (first.constraint().orElseThrow()) {
            case PROTECTION_CHARGE_TRIP, PROTECTION_OVERVOLTAGE_TRIP, REGEN_OVERSHOOT ->
                    joint + "the electric brake vanishes";
            case PROTECTION_DISCHARGE_TRIP, PROTECTION_UNDERVOLTAGE_TRIP ->
                    joint + "drive and brake vanish";
            case CONTROLLER_VOLTAGE_RATING -> ": it may fail, and the brake with it";
            default -> "";
        };
    }

    private static String trip(Finding finding) {
        return LimitWords.of(finding.constraint().orElseThrow());
    }

    private static boolean isReturned(Finding finding) {
        return finding.subject().equals(Optional.of(LimitId.PACK_REGEN_CURRENT));
    }

    /** Where it is worst; a setting has told it already. */
    private static String against(Finding first) {
        if (first.charge().isEmpty()) {
            return "";
        }
        return (first.worstCharge().isPresent()
                        ? "; at " + Numbers.percent(first.worstCharge().getAsDouble()) + " "
                        : "; up to ")
                + amperes(first.value())
                + " against "
                + limit(first);
    }

    /**
     * To which pack and cells the first number belongs, and the numbers of the others: {@code "
     * (cells at 12 °C; 84.4 % at 20 °C)"}.
     */
    private String others(AlikeFindings alike, String cells) {
        String own = where(alike.first(), cells);
        String more =
                alike.findings().stream()
                        .skip(1)
                        .limit(OTHERS)
                        .map(each -> told(each))
                        .filter(told -> !told.isEmpty())
                        .collect(Collectors.joining("; "));
        String rest =
                alike.findings().size() > OTHERS + 1
                        ? "; " + (alike.findings().size() - OTHERS - 1) + " more"
                        : "";
        String all = own + (own.isEmpty() || more.isEmpty() ? "" : "; ") + more + rest;
        return all.isEmpty() ? "" : " (" + all + ")";
    }

    private static String where(Finding finding, String cells) {
        return List.of(
                        finding.pack().map(number -> "pack " + number).orElse(""),
                        finding.temperatureC().isPresent()
                                ? cells
                                        + Numbers.nearest(finding.temperatureC().getAsDouble(), 0)
                                        + " °C"
                                : "")
                .stream()
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String told(Finding finding) {
        String where = where(finding, "");
        boolean isCharge =
                finding.charge().isPresent()
                        && finding.condition()
                                .filter(each -> !(each instanceof Condition.Never))
                                .isPresent();
        return isCharge ? bound(finding) + " at " + where : where;
    }

    private static String bound(Finding finding) {
        double percent = 100.0 * finding.charge().orElseThrow();
        return (isReturned(finding) ? Numbers.down(percent, 1) : Numbers.up(percent, 1)) + " %";
    }

    private static String consequence(Finding finding) {
        boolean isBraking = finding.subject().equals(Optional.of(LimitId.MOTOR_BRAKE_CURRENT));
        return switch (finding.constraint().orElse(ConstraintId.REMAINING_BRAKE)) {
            case GRIP -> isBraking ? "; the wheels may slide" : "; the wheels may spin";
            case TIPPING -> "; a wheel may lift";
            case RIDER_BALANCE -> "; it may throw the rider";
            case REGEN_OVERSHOOT -> ": a hard grab may open a trip";
            default -> "";
        };
    }

    private String cascade(AlikeFindings alike) {
        Finding first = alike.first();
        if (first.value().isEmpty()) {
            return words.of(first);
        }
        return "If pack "
                + packs(alike)
                + " disconnects while "
                + (isReturned(first) ? "braking" : "driving")
                + ", the others follow ("
                + alike.findings().stream()
                        .map(each -> Numbers.up(100.0 * each.value().orElseThrow(), 0) + " %")
                        .collect(Collectors.joining(", "))
                + " of their trip): nothing is left to "
                + (isReturned(first) ? "brake" : "drive or brake")
                + " with.";
    }

    private static String packs(AlikeFindings alike) {
        return alike.findings().stream()
                .map(each -> Integer.toString(each.pack().number().orElseThrow()))
                .distinct()
                .collect(Collectors.joining(" or "));
    }

    private static String bypassed(Finding first) {
        String where = "The protection is on the charge lead alone: ";
        return isReturned(first)
                ? where
                        + "it cannot keep braking from overcharging the cells, to "
                        + Numbers.up(first.value().orElseThrow(), 2)
                        + " V as set."
                : where
                        + "it protects neither way while riding, and cannot keep cells from being"
                        + " emptied.";
    }

    private String warmed(Finding first) {
        Condition.RiddenUpTo ridden = (Condition.RiddenUpTo) first.condition().orElseThrow();
        return "After about "
                + Numbers.time(ridden.time())
                + " at "
                + units.speedText(ridden.speed())
                + " the cells are above "
                + Numbers.down(ridden.limitC(), 0)
                + " °C: nothing may be braked into them then. Measure.";
    }

    private static String percent(OptionalDouble share) {
        return Numbers.percent(share.orElseThrow());
    }

    private static String amperes(OptionalDouble value) {
        return Numbers.nearest(value.orElseThrow(), 1) + " A";
    }

    private static String limit(Finding finding) {
        return Numbers.down(finding.limit().orElseThrow(), 1) + " A";
    }
}
