package brakewright.cli.text;

import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.replay.BeyondLimit;
import brakewright.replay.HeldBack;
import brakewright.replay.RidePoint;
import brakewright.replay.RideTotals;
import brakewright.replay.RouteRide;

/** Writes the page that tells what a ride along a route will be. */
public final class RouteText {

    private static final String NOT_KNOWN = "not known: thermal figures are missing";
    private static final double HOUR = 3600.0;

    private final String title;
    private final RouteRide ride;
    private final UnitSystem units;
    private final Page page;
    private final RidePage lines;

    /**
     * Takes what is written.
     *
     * @param title of the vehicle
     * @param ride along the route
     * @param units of speeds and distances
     * @param ink how the page looks
     */
    public RouteText(String title, RouteRide ride, UnitSystem units, Ink ink) {
        this.title = title;
        this.ride = ride;
        this.units = units;
        this.page = new Page(ink);
        this.lines = new RidePage(page, ink);
    }

    /**
     * Returns the page.
     *
     * @return lines of text
     */
    public String text() {
        lines.begin(title, "a ride along a route, predicted");
        lines.section("ride");
        row("ends", end());
        row("distance", units.distanceMeasured(ride.distance()));
        row("time", Numbers.time(ride.time()) + ", " + units.speedText(ride.meanSpeed()) + " mean");
        row("fastest", units.speedText(ride.fastest().state().speed()) + at(ride.fastest()));
        page.blank();
        energy(ride.totals());
        warmth();
        heldBack();
        beyond();
        page.note("Nothing opens here: where a protection would, the ride goes on.");
        return lines.end();
    }

    private void row(String label, String text) {
        lines.row(label, text);
    }

    private String end() {
        return switch (ride.end()) {
            case ARRIVES -> "it arrives";
            case CHARGE_USED -> "the charge in use is gone on the way";
            case STUCK -> "it stands on the way: what pulls is too weak there";
            case CANNOT_STOP ->
                    "it cannot stop where it has to, but comes with "
                            + units.speedText(ride.last().speed());
        };
    }

    private String at(RidePoint point) {
        return ", at " + units.distanceMeasured(point.state().distance());
    }

    private void energy(RideTotals totals) {
        lines.section("energy");
        row("out of the pack", Numbers.nearest(totals.drawn() / HOUR, 1) + " Wh");
        row("back into it", Numbers.nearest(totals.returned() / HOUR, 1) + " Wh");
        row("returned", Numbers.percent(totals.returnedShare()));
        if (ride.distance() > 0.0) {
            row("consumption", Numbers.nearest(ride.consumption() / 3.6, 1) + " Wh/km");
        }
        row("charge at the end", Numbers.percent(ride.last().charge()));
        row(
                "lowest voltage",
                Numbers.nearest(ride.lowestVoltage().packVoltage(), 1)
                        + " V"
                        + at(ride.lowestVoltage()));
        row(
                "current out",
                Numbers.nearest(ride.highestDraw().packCurrent(), 1)
                        + " A"
                        + at(ride.highestDraw()));
        if (ride.highestReturn().packCurrent() < 0.0) {
            row(
                    "current back",
                    Numbers.nearest(-ride.highestReturn().packCurrent(), 1)
                            + " A"
                            + at(ride.highestReturn()));
        }
        page.blank();
    }

    private void warmth() {
        lines.section("heat");
        row(
                "warmest cells",
                !ride.isCellHeatKnown()
                        ? NOT_KNOWN
                        : Numbers.nearest(ride.warmestCells().state().cellsC(), 0)
                                + " °C"
                                + at(ride.warmestCells())
                                + ride.cellsTooWarm()
                                        .map(point -> "; too warm" + from(point))
                                        .orElse(""));
        row(
                "warmest winding",
                !ride.isWindingHeatKnown()
                        ? NOT_KNOWN
                        : Numbers.nearest(ride.warmestWinding().state().windingC(), 0)
                                + " °C"
                                + at(ride.warmestWinding())
                                + ride.windingTooHot()
                                        .map(point -> "; beyond its limit" + from(point))
                                        .orElse(""));
        page.blank();
    }

    private String from(RidePoint point) {
        return " from " + units.distanceMeasured(point.state().distance()) + " on";
    }

    private void beyond() {
        lines.section("beyond the limits");
        if (ride.beyond().isEmpty()) {
            page.note("nowhere: the packs bear all that flows");
        }
        for (BeyondLimit each : ride.beyond()) {
            row(
                    each.isReturned() ? "into the pack" : "out of the pack",
                    Numbers.nearest(each.current(), 1)
                            + " A where "
                            + Numbers.down(each.permitted(), 1)
                            + " A are permitted ("
                            + LimitWords.of(each.heldBy())
                            + ")"
                            + at(each.worst())
                            + "; the first time"
                            + at(each.first()).substring(1));
        }
        page.blank();
    }

    private void heldBack() {
        lines.section("held back");
        if (ride.heldBack().isEmpty()) {
            page.note("nowhere");
        }
        for (HeldBack each : ride.heldBack()) {
            row(
                    units.distanceMeasured(each.from()),
                    "to "
                            + units.distanceMeasured(each.to())
                            + (each.isTooFast() ? ": too fast, up to " : ": down to ")
                            + units.speedText(each.worst())
                            + " where "
                            + units.speedText(each.allowed())
                            + " is allowed ("
                            + each.holder().key()
                            + ")");
        }
        page.blank();
    }
}
