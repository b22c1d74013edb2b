package brakewright.cli.text;

import brakewright.assembly.Value;
import brakewright.braking.StopOutcome;
import brakewright.buildfile.Changes;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.EnteredWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.LimitId;
import brakewright.profile.Proposals;
import brakewright.profile.Recommendation;
import brakewright.review.BrakeVerdict;
import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Complete sets of settings side by side, and as tables to paste into the build file. */
public final class ProposeText {

    private static final int NAME = 34;
    private static final int COLUMN = 16;

    private final String title;
    private final Changes changes;
    private final Proposals proposals;
    private final Recommendation present;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param title what the vehicle is called
     * @param changes what was put in place of values of the file
     * @param proposals the sets
     * @param present the present settings, judged alike
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public ProposeText(
            String title,
            Changes changes,
            Proposals proposals,
            Recommendation present,
            UnitSystem units,
            Ink ink) {
        this.title = title;
        this.changes = changes;
        this.proposals = proposals;
        this.present = present;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
    }

    /**
     * Writes the text.
     *
     * @return its lines
     */
    public String text() {
        page.line(ink.heading(title + ": sets that hold together"));
        if (!changes.isNone()) {
            page.paragraph("", 2, ChangeWords.situation(changes, units));
        }
        page.blank();
        if (proposals.sets().isEmpty()) {
            page.paragraph("", 2, "No set of settings is within limits in all of this use.");
        } else {
            table();
        }
        for (Proposals.Proposal each : proposals.sets()) {
            page.blank();
            page.paragraph("  " + heading(each.kind()), 16, told(each));
        }
        proposals.obstacle().ifPresent(this::obstacle);
        paste();
        page.blank();
        page.line(ink.heading("Cautions"));
        page.list(Cautions.braking());
        return page.text();
    }

    private static String heading(Proposals.Kind kind) {
        return kind.key().replace('-', ' ');
    }

    private void table() {
        List<Recommendation> sets = new ArrayList<>(List.of(present));
        proposals.sets().forEach(each -> sets.add(each.set()));
        List<String> heads = new ArrayList<>(List.of("present"));
        proposals.sets().forEach(each -> heads.add(heading(each.kind())));
        row("", heads);
        settings("motor drive, per motor", sets, Settings::motorDriveCurrent);
        settings("motor brake, per motor", sets, Settings::motorBrakeCurrent);
        settings("pack discharge, per controller", sets, Settings::packDischargeCurrent);
        settings("pack regen, per controller", sets, Settings::packRegenCurrent);
        row("low-voltage taper", sets, each -> taper(each.settings().lowVoltageTaper()));
        row("high-voltage taper", sets, each -> taper(each.settings().highVoltageTaper()));
        row("speed cap", sets, each -> speed(each.settings().speedCap()));
        row("used up to a charge of", sets, each -> percent(each.build().use().chargeFrom()));
        row(
                "cells not colder than",
                sets,
                each -> Numbers.up(each.build().use().climate().coldestPackC(), 0) + " °C");
        page.gap();
        row("pack and parts", sets, each -> each.evaluation().outcome().key().replace('-', ' '));
        row("brake", sets, each -> each.brake().word().key());
        wet(sets);
        row(
                "  least deceleration",
                sets,
                each -> Numbers.down(Math.max(0.0, each.brake().deceleration()), 2) + " m/s²");
        row("  wanted", sets, each -> Numbers.significant(each.brake().wanted()) + " m/s²");
        row("stop from the top speed, full", sets, each -> told(each.stopFull()));
        row("  half way through the charge", sets, each -> told(each.stopHalfWay()));
    }

    /** Where a wet road leaves less of any, what it leaves of each. */
    private void wet(List<Recommendation> sets) {
        List<Optional<BrakeVerdict>> wet = new ArrayList<>(List.of(proposals.wetNow()));
        proposals.sets().forEach(each -> wet.add(each.wet()));
        if (wet.stream().noneMatch(Optional::isPresent)) {
            return;
        }
        List<String> words = new ArrayList<>();
        for (int i = 0; i < wet.size(); i++) {
            words.add(wet.get(i).orElse(sets.get(i).brake()).word().key());
        }
        row("  on a wet road", words);
    }

    private String told(StopOutcome outcome) {
        return outcome instanceof StopOutcome.Stopped stopped
                ? units.lengthText(stopped.distance())
                : "does not stop";
    }

    private void settings(
            String name, List<Recommendation> sets, Function<Settings, OptionalDouble> setting) {
        row(name, sets, each -> EnteredWords.amperes(setting.apply(each.settings())));
    }

    private String taper(Optional<Taper> taper) {
        return taper.map(ink.isNarrow() ? EnteredWords::voltsInBrief : EnteredWords::volts)
                .orElse("none");
    }

    private String speed(OptionalDouble cap) {
        return cap.isPresent() ? units.speedText(cap.getAsDouble()) : "not set";
    }

    private static String percent(double charge) {
        return Numbers.percent(charge);
    }

    private void row(
            String name, List<Recommendation> sets, Function<Recommendation, String> value) {
        row(name, sets.stream().map(value).toList());
    }

    private void row(String name, List<String> cells) {
        StringBuilder line =
                new StringBuilder(String.format(Locale.ROOT, "  %-" + NAME + "s", name));
        cells.forEach(cell -> line.append(String.format(Locale.ROOT, "%" + COLUMN + "s", cell)));
        page.line(line.toString());
    }

    private String told(Proposals.Proposal each) {
        String purpose =
                switch (each.kind()) {
                    case FULL_PACK ->
                            "The pack may be as full as the use says; "
                                    + (each.set().settings().highVoltageTaper().isPresent()
                                            ? "the high-voltage taper protects it."
                                            : "without a high-voltage taper it must not be fuller.");
                    case STRONG_BRAKE ->
                            "Charge to "
                                    + percent(each.set().build().use().chargeFrom())
                                    + " only"
                                    + (each.coldestC().isPresent()
                                            ? " and ride with cells of "
                                                    + Numbers.up(each.coldestC().getAsDouble(), 0)
                                                    + " °C or warmer"
                                            : "")
                                    + ": the brake is then as strong as this vehicle permits.";
                    case LEAST_CHANGE -> "As few of the present settings as possible are changed.";
                };
        String said = new DecisionText(each.set(), units).of(each.set());
        return purpose + " Entered together, " + said;
    }

    private void obstacle(Proposals.Obstacle obstacle) {
        page.blank();
        page.paragraph(
                "",
                2,
                "In none of these is the brake enough. Even nearly empty and warm it reaches "
                        + Numbers.down(Math.max(0.0, obstacle.reached()), 2)
                        + " m/s² of the "
                        + Numbers.significant(obstacle.wanted())
                        + " m/s² wanted; "
                        + LimitWords.of(obstacle.by())
                        + " stands in the way"
                        + obstacle.next()
                                .map(next -> ", and without it " + LimitWords.of(next) + " would")
                                .orElse("")
                        + ". What would mend it: "
                        + mends(obstacle));
    }

    private String mends(Proposals.Obstacle obstacle) {
        OptionalDouble own = present.build().vehicle().frictionBrake();
        String brake =
                own.isPresent()
                        ? "a stronger friction brake (there is one of "
                                + Numbers.significant(own.getAsDouble())
                                + " m/s²)"
                        : "a friction brake that does not depend on the pack";
        String cap =
                obstacle.slowEnough().isPresent()
                        ? ", or riding no faster than "
                                + units.speedText(obstacle.slowEnough().getAsDouble())
                        : "";
        boolean isPackAlone =
                obstacle.held() == LimitId.PACK_REGEN_CURRENT && obstacle.next().isEmpty();
        return (isPackAlone
                        ? "a pack that takes more (more cells in parallel, or cells with a higher"
                                + " charge rating), "
                        : "")
                + brake
                + cap
                + ".";
    }

    /** Tables that a build file understands. */
    private void paste() {
        if (proposals.sets().isEmpty()) {
            return;
        }
        page.blank();
        page.line(ink.heading("To paste into the build file"));
        for (Proposals.Proposal each : proposals.sets()) {
            Settings set = each.set().settings();
            page.blank();
            page.line("[proposals." + each.kind().key() + "]");
            current("motor_drive_current", set.motorDriveCurrent());
            current("motor_brake_current", set.motorBrakeCurrent());
            current("pack_discharge_current", set.packDischargeCurrent());
            current("pack_regen_current", set.packRegenCurrent());
            pair("low_voltage_taper", set.lowVoltageTaper());
            pair("high_voltage_taper", set.highVoltageTaper());
            set.speedCap()
                    .ifPresent(cap -> page.line("speed_cap = \"" + units.speedText(cap) + '"'));
            use(each);
            each.chargeFrom()
                    .ifPresent(charge -> page.line("use.charge_from = \"" + percent(charge) + '"'));
            each.coldestC()
                    .ifPresent(
                            cells ->
                                    page.line(
                                            "use.pack_temperature = [\""
                                                    + Numbers.up(cells, 0)
                                                    + " °C\", \""
                                                    + Numbers.nearest(
                                                            each.set()
                                                                    .build()
                                                                    .use()
                                                                    .climate()
                                                                    .warmestPackC(),
                                                            0)
                                                    + " °C\"]"));
        }
    }

    /** The use that was asked about is part of what a set is good for. */
    private void use(Proposals.Proposal proposal) {
        Changes use = changes.ofUse();
        if (proposal.chargeFrom().isPresent()) {
            use = use.without(Input.USE_CHARGE_FROM);
        }
        if (proposal.coldestC().isPresent()) {
            use = use.without(Input.USE_PACK_TEMPERATURE);
        }
        use.all()
                .forEach(
                        (input, change) ->
                                page.line(
                                        Changes.keyOf(input)
                                                + " = "
                                                + ChangeWords.written(input, change.value())));
    }

    private void current(String key, OptionalDouble value) {
        if (value.isPresent()) {
            page.line(key + " = \"" + EnteredWords.amperes(value.getAsDouble()) + '"');
        }
    }

    private void pair(String key, Optional<Taper> taper) {
        page.line(
                key
                        + " = "
                        + taper.map(EnteredWords::volts)
                                .map(volts -> "[\"" + volts.replace(" to ", " V\", \"") + "\"]")
                                .orElse('"' + Value.Unset.WORD + '"'));
    }
}
