package brakewright.cli.text;

import brakewright.battery.BatteryModel;
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
import brakewright.spec.Use;
import brakewright.worksheet.Worksheet;
import java.util.Arrays;
import java.util.List;
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
        List<Limit> elsewhere = lower(packLimit, total);
        double least = elsewhere.stream().mapToDouble(Limit::value).min().orElse(total);
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
                    mark(setTotal, total, least),
                    LimitWords.brief(limit.binding().id()));
        } else {
            row(
                    name + ", per controller",
                    Numbers.down(total / controllers, 1) + " A",
                    amperes(set),
                    mark(setTotal, total, least),
                    LimitWords.brief(limit.binding().id()));
            row(
                    "  all " + controllers + " together",
                    Numbers.down(total, 1) + " A",
                    amperes(setTotal),
                    "",
                    "");
        }
        for (double cells : sheet.build().cellTemperatures()) {
            Limit there = packLimit.staticPart(cells);
            if (there.value() < total) {
                row(
                        "  with cells at " + Numbers.nearest(cells, 0) + " °C",
                        Numbers.down(there.value() / controllers, 1) + " A",
                        "",
                        mark(setTotal, there.value()),
                        LimitWords.brief(there.binding().id()));
            }
        }
        bound(packLimit, total, setTotal, temperature);
    }

    /** What the coldest and the warmest cells in use bear, where that is less. */
    private List<Limit> lower(PackLimit limit, double recommended) {
        return Arrays.stream(sheet.build().cellTemperatures())
                .mapToObj(limit::staticPart)
                .filter(each -> each.value() < recommended)
                .toList();
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

    /** Beyond the charge in use there is none. */
    private String charge(double bound, boolean taking) {
        Use use = sheet.build().use();
        if (taking ? bound <= use.chargeTo() : bound >= use.chargeFrom()) {
            return "none in use";
        }
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
        if (low && limit.value().filter(taper -> taper.begins() > full()).isPresent()) {
            row("  begins above the fullest pack: draw less", "", "", "", "");
        }
    }

    private double full() {
        return new BatteryModel(sheet.build().battery())
                .openCircuitVoltage(sheet.build().use().chargeFrom());
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
        String words = LimitWords.of(id);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
