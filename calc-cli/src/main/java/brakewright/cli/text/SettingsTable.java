package brakewright.cli.text;

import brakewright.cli.words.EnteredWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.TaperLimit;
import brakewright.profile.Recommendation;
import brakewright.profile.SingleLimits;
import brakewright.profile.WetRoad;
import brakewright.spec.Build;
import brakewright.spec.Controllers;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.LimitSheet;
import brakewright.worksheet.PackLimitSheet;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to enter: the set that holds together, what is set now, the greatest value of each by itself
 * with all else as it is set now, and what holds that down.
 */
final class SettingsTable {

    private static final String ROW = "  %-30s %14s %14s %-6s %9s %s";

    private final Recommendation set;
    private final LimitSheet limits;
    private final SingleLimits single;
    private final WetRoad wet;
    private final Build build;
    private final UnitSystem units;
    private final Page page;
    private final Settings now;
    private final Controllers controllers;

    SettingsTable(
            Worksheet sheet,
            Recommendation set,
            SingleLimits single,
            WetRoad wet,
            UnitSystem units,
            Page page) {
        this.wet = wet;
        this.single = single;
        this.set = set;
        this.limits = sheet.permitted();
        this.build = sheet.build();
        this.units = units;
        this.page = page;
        this.now = build.settings();
        this.controllers = build.controllers();
    }

    void print(Ink ink) {
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
                    mark(now.motorBrakeCurrent(), wet.motorBrake()),
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
                mark(now.speedCap(), single.of(cap.id())),
                units.speedDown(single.of(cap.id())),
                LimitWords.brief(cap.binding().id()));
        page.paragraph("", 2, LimitWords.motorCurrents(build.controllers().basis()));
        DecisionText words = new DecisionText(set, units);
        page.paragraph("", 2, "Entered together, " + words.of(set));
        if (isWetLess) {
            page.paragraph("", 2, words.wet(wet));
        }
    }

    private void motor(Limit limit, OptionalDouble enter, OptionalDouble current) {
        row(
                name(limit.id()) + ", per motor",
                EnteredWords.amperes(enter),
                EnteredWords.amperes(current),
                mark(current, single.of(limit.id())),
                Numbers.down(single.of(limit.id()), 1) + " A",
                LimitWords.brief(limit.binding().id()));
    }

    private void pack(PackLimitSheet pack, OptionalDouble enter, OptionalDouble current) {
        Limit limit = pack.fixed();
        List<PackLimitSheet.AtCells> lower = pack.lessElsewhere();
        double least =
                lower.stream()
                        .mapToDouble(each -> each.limit().value())
                        .min()
                        .orElse(limit.value());
        double all = single.of(limit.id());
        row(
                name(limit.id()) + (controllers.count() == 1 ? "" : ", each"),
                EnteredWords.amperes(enter),
                EnteredWords.amperes(current),
                mark(current, controllers.each(all), controllers.each(least)),
                Numbers.down(controllers.each(all), 1) + " A",
                LimitWords.brief(limit.binding().id()));
        if (controllers.count() > 1) {
            row(
                    "  all " + controllers.count() + " controllers together",
                    EnteredWords.amperes(controllers.together(enter)),
                    EnteredWords.amperes(controllers.together(current)),
                    "",
                    Numbers.down(all, 1) + " A",
                    "");
        }
        lower.forEach(each -> colder(each, current));
    }

    private void colder(PackLimitSheet.AtCells there, OptionalDouble current) {
        double each = controllers.each(there.limit().value());
        row(
                "  with cells at " + Numbers.nearest(there.cellsC(), 0) + " °C",
                "",
                "",
                mark(current, each),
                Numbers.down(each, 1) + " A",
                LimitWords.brief(there.limit().binding().id()));
    }

    private void taper(TaperLimit limit, Optional<Taper> enter, Optional<Taper> current) {
        row(
                name(limit.id()),
                enter.map(EnteredWords::volts).orElse("none"),
                current.map(EnteredWords::volts).orElse("not set"),
                current.map(taper -> fit(limit, taper)).orElse(""),
                "",
                LimitWords.brief(limit.binding().id()));
    }

    private static String fit(TaperLimit limit, Taper taper) {
        if (!limit.endsInTime(taper)) {
            return "late";
        }
        return limit.isWideEnough(taper) ? "ok" : "narrow";
    }

    private void row(
            String name, String enter, String current, String mark, String alone, String holder) {
        page.line(String.format(Locale.ROOT, ROW, name, enter, current, mark, alone, holder));
    }

    /** What is borne at the pack's own temperature alone is no plain yes. */
    private static String mark(OptionalDouble set, double limit, double least) {
        return set.isPresent() && set.getAsDouble() <= limit && set.getAsDouble() > least
                ? ""
                : mark(set, limit);
    }

    private static String mark(OptionalDouble set, double limit) {
        return set.isEmpty() ? "" : set.getAsDouble() <= limit ? "ok" : "over";
    }

    private static String name(LimitId id) {
        String words = LimitWords.of(id).replace(" current", "");
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
