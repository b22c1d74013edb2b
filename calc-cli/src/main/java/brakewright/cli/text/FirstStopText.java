package brakewright.cli.text;

import brakewright.braking.StopOutcome;
import brakewright.cli.words.Initial;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.operation.FirstStop;
import brakewright.spec.Build;
import brakewright.worksheet.FirstStopHelp;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;

/** The first stop after a full charge, and what helps. */
final class FirstStopText {

    /** Room for " cells at -10 degC " in plain letters. */
    private static final int LABEL = 20;

    /** Our own choice: what rolls on for longer is not told as a stop [m]. */
    private static final double OUT_OF_REASON = 1000.0;

    private static final String CLOSES =
            "The trip is taken to stay open to the end of the stop: typically it closes again only"
                    + " once the pack is drawn from.";

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;

    FirstStopText(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
    }

    void print(Ink ink) {
        List<FirstStop> stops = sheet.firstStops();
        FirstStop own = stops.get(0);
        page.line(ink.heading("The first stop after a full charge"));
        page.paragraph(
                "",
                2,
                "From "
                        + units.speedText(own.speed())
                        + " at "
                        + Numbers.percent(own.charge())
                        + " charge, level dry road:");
        for (FirstStop stop : stops) {
            page.paragraph(
                    "  cells at " + Numbers.nearest(stop.cellsC(), 0) + " °C", LABEL, told(stop));
        }
        if (stops.stream().anyMatch(stop -> stop.opened().isPresent())) {
            page.paragraph("  once it opened", LABEL, CLOSES);
        }
        String help = helpInFull(sheet.firstStopHelp());
        if (!help.isEmpty()) {
            page.paragraph("  what helps", LABEL, help);
        }
    }

    /** The stop with the cells at their own temperature, and where others differ from it. */
    void printBrief(Ink ink, Wording wording) {
        List<FirstStop> stops = sheet.firstStops();
        FirstStop own = stops.get(0);
        page.line(ink.heading("The first stop after a full charge"));
        page.note(
                "From "
                        + units.speedText(own.speed())
                        + " at "
                        + Numbers.percent(own.charge())
                        + (wording.isTerse() ? " and " : " charge, cells at ")
                        + Numbers.nearest(own.cellsC(), 0)
                        + " °C: "
                        + brief(own, wording));
        for (FirstStop stop : stops.subList(1, stops.size())) {
            if (!ends(stop).equals(ends(own))) {
                page.note(
                        "Cells at "
                                + Numbers.nearest(stop.cellsC(), 0)
                                + " °C: "
                                + brief(stop, wording));
            }
        }
        String help = help(sheet.firstStopHelp(), wording);
        if (!help.isEmpty()) {
            page.note("What helps: " + Initial.small(help));
        }
    }

    /** How it ends in kind: what opens, and whether it stops. */
    private static List<Object> ends(FirstStop stop) {
        return List.of(
                stop.opening(),
                stop.isSafe(),
                stop.opened().map(FirstStop.Opened::outcome).orElse(stop.outcome())
                        instanceof StopOutcome.Stopped);
    }

    private String brief(FirstStop stop, Wording wording) {
        if (stop.opening() != FirstStop.Opening.NOTHING) {
            return opened(stop, trip(stop), wording);
        }
        String ending =
                stop.outcome() instanceof StopOutcome.Stopped stopped
                        ? "it stops within " + units.lengthText(stopped.distance())
                        : "it does not stop";
        return ending
                + "; up to "
                + Numbers.nearest(stop.packCurrent(), 1)
                + " A go into the pack, which may take "
                + Numbers.down(stop.mayTake(), 1)
                + " A"
                + (stop.isSafe()
                        ? ". All within limits."
                        : ": a limit is exceeded, nothing opens.");
    }

    private static String trip(FirstStop stop) {
        return stop.opening() == FirstStop.Opening.CHARGE_TRIP
                ? "charge trip opens, " + typically(stop) + "within "
                : "over-voltage trip opens, " + typically(stop) + "after ";
    }

    private String told(FirstStop stop) {
        String flow =
                "p to "
                        + Numbers.nearest(stop.packCurrent(), 1)
                        + " A go into the pack, which may take "
                        + Numbers.down(stop.mayTake(), 1)
                        + " A; cells reach "
                        + Numbers.nearest(stop.cellVoltage(), 2)
                        + " V after 10 s of it.";
        String unopened =
                stop.outcome() instanceof StopOutcome.Stopped stopped
                        ? " If nothing opens, it stops within "
                                + units.lengthText(stopped.distance())
                                + "."
                        : " It does not stop.";
        return switch (stop.opening()) {
            case NOTHING ->
                    "u"
                            + flow
                            + unopened
                            + (stop.isSafe()
                                    ? " All within limits."
                                    : sheet.build().battery().isGuarded()
                                            ? " No trip that is described is reached, but a limit is."
                                            : " The protection is on the charge lead alone: nothing"
                                                    + " opens, and a limit is exceeded.");
            case CHARGE_TRIP, OVERVOLTAGE_TRIP ->
                    opened(stop, trip(stop), Wording.FULL) + unopened + " U" + flow;
        };
    }

    private static String typically(FirstStop stop) {
        return stop.isDelayTypical() ? "typically " : "";
    }

    /** The stop on which the protection opens, and what is left of all braking then. */
    private String opened(FirstStop stop, String trip, Wording wording) {
        FirstStop.Opened opened = stop.opened().orElseThrow();
        String opens =
                (wording.isTerse() ? "the " : "the protection's ")
                        + trip
                        + Numbers.time(stop.opensAfter());
        if (!(opened.outcome() instanceof StopOutcome.Stopped stopped)) {
            return "it does not stop: " + opens + ", and then nothing slows it on level road.";
        }
        if (stopped.time() <= opened.after()) {
            return "it stops within "
                    + units.lengthText(stopped.distance())
                    + " before "
                    + opens
                    + ".";
        }
        return (stopped.distance() > OUT_OF_REASON
                        ? "it rolls on for more than " + units.distanceText(OUT_OF_REASON)
                        : "it stops within " + units.lengthText(stopped.distance()))
                + ": "
                + opens
                + (wording.isTight() ? "." : left(stop));
    }

    /** What is left of all braking. */
    private String left(FirstStop stop) {
        return "; then "
                + Numbers.down(stop.leftDeceleration(), 2)
                + " m/s² are left of all braking at "
                + units.speedText(stop.speed())
                + ", "
                + Numbers.down(stop.leftSlow(), 2)
                + " m/s² at a crawl.";
    }

    private String helpInFull(FirstStopHelp help) {
        return (help(help, Wording.FULL)
                        + help.stop()
                                .map(
                                        stop ->
                                                weaker(
                                                        !Numbers.isNothing(stop.safeRegen(), 1),
                                                        reach(help)))
                                .orElse(""))
                .strip();
    }

    private String help(FirstStopHelp help, Wording wording) {
        String cells =
                help.warmToC().isPresent()
                        ? "Warm the cells to "
                                + Numbers.up(help.warmToC().getAsDouble(), 0)
                                + " °C or more before the first stop."
                        : help.coolToC().isPresent()
                                ? "Let the cells cool to "
                                        + Numbers.down(help.coolToC().getAsDouble(), 0)
                                        + " °C or less before the first stop."
                                : "";
        if (help.stop().isEmpty()) {
            return cells;
        }
        return (cells + " " + remedy(help, help.stop().get(), !cells.isEmpty(), wording)).strip();
    }

    private String remedy(FirstStopHelp help, FirstStop stop, boolean isBesides, Wording wording) {
        boolean isTerse = wording.isTerse();
        Build build = sheet.build();
        List<String> ways = new ArrayList<>();
        double charge = stop.chargeTo().orElse(build.use().chargeFrom());
        if (charge > build.use().chargeTo()) {
            ways.add("charge to " + Numbers.down(100.0 * charge, 0) + " % only");
            ways.add(
                    "ride "
                            + units.distanceText(stop.rideFirst().orElseThrow())
                            + " at "
                            + units.speedText(build.use().speedMax())
                            + (isTerse ? " first" : " before braking hard"));
        }
        boolean none = Numbers.isNothing(stop.safeRegen(), 1);
        if (!none) {
            ways.add(
                    (isTerse ? "pack regen " : "lower the pack regen current to ")
                            + Numbers.down(stop.safeRegen(), 1)
                            + " A per controller");
        }
        help.taper()
                .map(
                        each ->
                                (isTerse
                                                ? "a high-voltage taper "
                                                : "set a high-voltage taper from ")
                                        + Numbers.down(each.begins(), 1)
                                        + (isTerse ? "–" : " to ")
                                        + Numbers.down(each.ends(), 1)
                                        + " V")
                .ifPresent(ways::add);
        String start = isBesides ? "besides, " : "";
        String list = ways.isEmpty() ? "" : Initial.capital(start + joined(ways, isTerse)) + ".";
        return (list
                        + (none
                                ? " At "
                                        + Numbers.percent(stop.charge())
                                        + " charge no current into the pack is safe, however low it"
                                        + " is set."
                                : ""))
                .strip();
    }

    private static String joined(List<String> ways, boolean isTerse) {
        int last = ways.size() - 1;
        return isTerse && last > 0
                ? String.join("; ", ways.subList(0, last)) + "; or " + ways.get(last)
                : String.join("; or ", ways);
    }

    private static String weaker(boolean regen, String reach) {
        if (regen) {
            return " A lower regen current weakens the electric brake at every charge"
                    + (reach.isEmpty() ? "." : ", a taper " + reach + ".");
        }
        return reach.isEmpty() ? "" : " A taper weakens the electric brake " + reach + ".";
    }

    private String reach(FirstStopHelp help) {
        if (help.taperFrom().isEmpty()) {
            return "";
        }
        double charge = help.taperFrom().getAsDouble();
        return charge <= sheet.build().use().chargeTo()
                ? "at every charge, too, the more the fuller the pack is"
                : "only above "
                        + Numbers.percent(charge)
                        + " charge, the more the fuller the pack is";
    }
}
