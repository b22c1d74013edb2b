package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.PackLimit;
import brakewright.limit.TaperLimit;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.Worksheet;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What to enter: each setting, what is recommended, what is set now and what holds it down. */
final class SettingsTable {

    private static final String ROW = "  %-38s %14s %14s %-6s %s";

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;
    private final Settings settings;
    private final int controllers;

    SettingsTable(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
        Build build = sheet.build();
        this.settings = build.settings();
        this.controllers = build.controllers().count();
    }

    void print(Ink ink) {
        page.line(ink.heading("What to enter"));
        row("", "recommended", "set now", "", "held down by");
        motor(sheet.limits().motorDrive(), settings.motorDriveCurrent());
        motor(sheet.limits().motorBrake(), settings.motorBrakeCurrent());
        pack(sheet.limits().packDischarge(), settings.packDischargeCurrent());
        pack(sheet.limits().packRegen(), settings.packRegenCurrent());
        taper(sheet.limits().lowVoltageTaper(), settings.lowVoltageTaper());
        taper(sheet.limits().highVoltageTaper(), settings.highVoltageTaper());
        cap(sheet.limits().speedCap(), settings.speedCap());
    }

    private void motor(Limit limit, OptionalDouble set) {
        row(
                name(limit.id()) + ", per motor",
                Numbers.down(limit.value(), 1) + " A",
                amperes(set),
                mark(set, limit.value()),
                LimitWords.brief(limit.binding().id()));
    }

    private void pack(PackLimit packLimit, OptionalDouble set) {
        double temperature = sheet.build().battery().temperatureC();
        Limit limit = packLimit.staticPart(temperature);
        double total = limit.value();
        OptionalDouble setTotal =
                set.isPresent()
                        ? OptionalDouble.of(controllers * set.getAsDouble())
                        : OptionalDouble.empty();
        String name = name(limit.id());
        if (controllers == 1) {
            row(
                    name,
                    Numbers.down(total, 1) + " A",
                    amperes(set),
                    mark(setTotal, total),
                    LimitWords.brief(limit.binding().id()));
        } else {
            row(
                    name + ", per controller",
                    Numbers.down(total / controllers, 1) + " A",
                    amperes(set),
                    mark(setTotal, total),
                    LimitWords.brief(limit.binding().id()));
            row(
                    "  all " + controllers + " together",
                    Numbers.down(total, 1) + " A",
                    amperes(setTotal),
                    "",
                    "");
        }
        bound(packLimit, total, setTotal, temperature);
    }

    /** The second half of the pair: to which charge state the pack current holds. */
    private void bound(
            PackLimit packLimit, double total, OptionalDouble setTotal, double temperature) {
        boolean taking = packLimit.id() == LimitId.PACK_REGEN_CURRENT;
        row(
                taking ? "  holds up to a charge of" : "  holds down to a charge of",
                charge(packLimit.chargeBound(total, temperature), taking),
                setTotal.isPresent()
                        ? charge(packLimit.chargeBound(setTotal.getAsDouble(), temperature), taking)
                        : "",
                "",
                taking ? "above that it falls" : "");
    }

    private static String charge(double bound, boolean taking) {
        return (taking ? Numbers.down(100.0 * bound, 1) : Numbers.up(100.0 * bound, 1)) + " %";
    }

    private void taper(TaperLimit limit, Optional<Taper> set) {
        boolean low = limit.id() == LimitId.LOW_VOLTAGE_TAPER;
        row(
                name(limit.id()),
                limit.value().map(taper -> recommended(taper, low)).orElse("none"),
                set.map(SettingsTable::volts).orElse("not set"),
                set.map(taper -> fit(limit, taper)).orElse(""),
                LimitWords.brief(limit.binding().id()));
    }

    /** Rounded to the safe side: up where the pack empties, down where it fills. */
    private static String recommended(Taper taper, boolean low) {
        return low
                ? Numbers.up(taper.begins(), 1) + " to " + Numbers.up(taper.ends(), 1) + " V"
                : Numbers.down(taper.begins(), 1) + " to " + Numbers.down(taper.ends(), 1) + " V";
    }

    private static String volts(Taper taper) {
        return Numbers.nearest(taper.begins(), 1)
                + " to "
                + Numbers.nearest(taper.ends(), 1)
                + " V";
    }

    private static String fit(TaperLimit limit, Taper taper) {
        if (!limit.endsInTime(taper)) {
            return "late";
        }
        return limit.isWideEnough(taper) ? "ok" : "narrow";
    }

    private void cap(Limit limit, OptionalDouble set) {
        row(
                name(limit.id()) + ", at most",
                units.speedDown(limit.value()),
                set.isPresent() ? units.speedText(set.getAsDouble()) : "not set",
                mark(set, limit.value()),
                LimitWords.brief(limit.binding().id()));
    }

    private void row(String name, String recommended, String set, String mark, String holder) {
        page.line(String.format(Locale.ROOT, ROW, name, recommended, set, mark, holder));
    }

    private static String amperes(OptionalDouble set) {
        return set.isPresent() ? Numbers.nearest(set.getAsDouble(), 1) + " A" : "not set";
    }

    private static String mark(OptionalDouble set, double limit) {
        return set.isEmpty() ? "" : set.getAsDouble() <= limit ? "ok" : "over";
    }

    private static String name(LimitId id) {
        String words = LimitWords.of(id);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
