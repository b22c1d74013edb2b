package brakewright.cli.text;

import brakewright.cli.words.EnteredWords;
import brakewright.cli.words.Initial;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Standing;
import brakewright.limit.TaperLimit;
import brakewright.profile.Recommendation;
import brakewright.profile.SingleLimits;
import brakewright.profile.WetRoad;
import brakewright.review.BrakeVerdict;
import brakewright.spec.Build;
import brakewright.spec.Controllers;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.LimitSheet;
import brakewright.worksheet.PackLimitSheet;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to enter: the set that holds together, what is set now, the greatest value of each by itself
 * with all else as it is set now, and what holds that down.
 */
final class SettingsTable {

    private static final String ROW = "  %-30s %14s %14s %-6s %9s %s";
    private static final String BRIEF = "  %-26s %16s %16s  %-6s  %s";

    /** How much is told. */
    enum Extent {
        /**
         * Also what each value could be by itself, at every cell temperature, for all controllers.
         */
        FULL,
        /** One row for each setting. */
        BRIEF,
        /** Likewise, and what becomes of them in one line. */
        TIGHT
    }

    private final Recommendation set;
    private final LimitSheet limits;
    private final SingleLimits single;
    private final WetRoad wet;
    private final Build build;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;
    private final Extent extent;
    private final Settings now;
    private final Controllers controllers;

    SettingsTable(Showing showing) {
        this(showing, Extent.FULL);
    }

    /**
     * Prepares the table.
     *
     * @param extent how much is told of each setting
     */
    SettingsTable(Showing showing, Extent extent) {
        this.extent = extent;
        Worksheet sheet = showing.sheet();
        this.wet = showing.asked().wet();
        this.single = showing.asked().judged().limits();
        this.set = showing.asked().recommended();
        this.limits = sheet.permitted();
        this.build = sheet.build();
        this.units = showing.units();
        this.ink = showing.ink();
        this.page = showing.page();
        this.now = build.settings();
        this.controllers = build.controllers();
    }

    void print() {
        page.line(ink.heading("What to enter, all of it together"));
        row("", "enter", "set now", "", "by itself", "held down by");
        Settings enter = set.settings();
        motor(limits.motorDrive(), enter.motorDriveCurrent(), now.motorDriveCurrent());
        motor(limits.motorBrake(), enter.motorBrakeCurrent(), now.motorBrakeCurrent());
        boolean isWetLess = wet.bindsCurrent(single.of(LimitId.MOTOR_BRAKE_CURRENT));
        if (isWetLess) {
            row(
                    "  on a wet road",
                    Numbers.down(wet.enter(), 1) + " A",
                    "",
                    mark(wet.standing(now.motorBrakeCurrent())),
                    Numbers.down(wet.motorBrake(), 1) + " A",
                    LimitWords.brief(wet.heldBy()));
        }
        pack(limits.packDischarge(), enter.packDischargeCurrent(), now.packDischargeCurrent());
        pack(limits.packRegen(), enter.packRegenCurrent(), now.packRegenCurrent());
        taper(limits.lowVoltageTaper(), enter.lowVoltageTaper(), now.lowVoltageTaper());
        taper(limits.highVoltageTaper(), enter.highVoltageTaper(), now.highVoltageTaper());
        Limit cap = limits.speedCap();
        row(
                name(cap.id()),
                units.speedText(enter.speedCap().orElseThrow()),
                now.speedCap().isPresent()
                        ? units.speedText(now.speedCap().getAsDouble())
                        : "not set",
                mark(single.standing(cap.id(), now.speedCap())),
                units.speedDown(single.of(cap.id())),
                LimitWords.brief(cap.binding().id()));
        DecisionText words = new DecisionText(set, units);
        String motors = LimitWords.motorCurrents(build.controllers().basis());
        if (extent == Extent.TIGHT) {
            page.note("Then " + words.brief(set));
            return;
        }
        if (extent == Extent.BRIEF) {
            page.note(motors + " " + together(words));
            return;
        }
        page.note(motors);
        page.note(together(words));
        if (isWetLess) {
            page.note(words.wet(wet));
        }
    }

    private String together(DecisionText words) {
        return "Entered together, "
                + words.of(set)
                + (set.brake().word() == BrakeVerdict.Word.ENOUGH
                        ? ""
                        : " For sets that brake harder, charged to less, ask propose.");
    }

    private void motor(Limit limit, OptionalDouble enter, OptionalDouble current) {
        row(
                (isShort() ? brief(limit.id()) : name(limit.id())) + ", per motor",
                EnteredWords.amperes(enter),
                EnteredWords.amperes(current),
                mark(single.standing(limit.id(), current)),
                Numbers.down(single.of(limit.id()), 1) + " A",
                LimitWords.brief(limit.binding().id()));
    }

    private void pack(PackLimitSheet pack, OptionalDouble enter, OptionalDouble current) {
        Limit limit = pack.fixed();
        List<PackLimitSheet.AtCells> lower = pack.lessElsewhere();
        double all = single.of(limit.id());
        row(
                name(limit.id()) + (controllers.count() == 1 ? "" : ", each"),
                EnteredWords.amperes(enter),
                EnteredWords.amperes(current),
                mark(single.standing(limit.id(), pack.set()), lower),
                Numbers.down(controllers.each(all), 1) + " A",
                LimitWords.brief(limit.binding().id()));
        if (extent != Extent.FULL) {
            return;
        }
        if (controllers.count() > 1) {
            row(
                    isShort()
                            ? "  together"
                            : "  all " + controllers.count() + " controllers together",
                    EnteredWords.amperes(controllers.together(enter)),
                    EnteredWords.amperes(controllers.together(current)),
                    "",
                    Numbers.down(all, 1) + " A",
                    "");
        }
        lower.forEach(this::colder);
    }

    private void colder(PackLimitSheet.AtCells there) {
        row(
                "  with cells at " + Numbers.nearest(there.cellsC(), 0) + " °C",
                "",
                "",
                mark(there.standing()),
                Numbers.down(controllers.each(there.limit().value()), 1) + " A",
                LimitWords.brief(there.limit().binding().id()));
    }

    private void taper(TaperLimit limit, Optional<Taper> enter, Optional<Taper> current) {
        row(
                name(limit.id()),
                enter.map(this::volts).orElse("none"),
                current.map(this::volts).orElse("not set"),
                current.map(taper -> fit(limit, taper)).orElse(""),
                "",
                LimitWords.brief(limit.binding().id()));
    }

    private String volts(Taper taper) {
        return isShort() ? EnteredWords.voltsInBrief(taper) : EnteredWords.volts(taper);
    }

    private boolean isShort() {
        return ink.isNarrow();
    }

    private static String fit(TaperLimit limit, Taper taper) {
        if (!limit.endsInTime(taper)) {
            return "late";
        }
        return limit.isWideEnough(taper) ? "ok" : "narrow";
    }

    private void row(
            String name, String enter, String current, String mark, String alone, String holder) {
        if (extent == Extent.FULL) {
            page.row(ROW, name, enter, current, mark, alone, holder);
        } else {
            page.row(BRIEF, name, enter, current, mark, holder);
        }
    }

    /** What is borne at the pack's own temperature alone is no plain yes. */
    private static String mark(Standing standing, List<PackLimitSheet.AtCells> elsewhere) {
        return elsewhere.stream().anyMatch(each -> each.standing() == Standing.OVER)
                        && standing == Standing.WITHIN
                ? ""
                : mark(standing);
    }

    private static String mark(Standing standing) {
        return switch (standing) {
            case NOT_SET -> "";
            case WITHIN -> "ok";
            case OVER -> "over";
        };
    }

    private static String name(LimitId id) {
        return Initial.capital(LimitWords.of(id).replace(" current", ""));
    }

    private static String brief(LimitId ofMotor) {
        return ofMotor == LimitId.MOTOR_DRIVE_CURRENT ? "Drive" : "Brake";
    }
}
