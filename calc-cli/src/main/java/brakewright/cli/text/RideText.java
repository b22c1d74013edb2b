package brakewright.cli.text;

import brakewright.cli.recording.FileNotes;
import brakewright.cli.recording.Recordings;
import brakewright.cli.words.Initial;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.fitting.Fits;
import brakewright.limit.ConstraintId;
import brakewright.recording.BothWays;
import brakewright.recording.ChargeBand;
import brakewright.recording.Energy;
import brakewright.recording.Exceeded;
import brakewright.recording.Extreme;
import brakewright.recording.Gap;
import brakewright.recording.HardChange;
import brakewright.recording.HeldLimits;
import brakewright.recording.Moment;
import brakewright.recording.Pace;
import brakewright.recording.Place;
import brakewright.recording.Recording;
import brakewright.recording.Ride;
import brakewright.recording.Satellites;
import brakewright.recording.Untold;
import brakewright.recording.Ways;
import brakewright.replay.AgainstModel;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/** Writes the page that tells what a ride was. */
public final class RideText {

    private static final int MOST_ROWS = 8;
    private static final String FROM = "from";

    private final String title;
    private final Recordings read;
    private final Ride ride;
    private final HeldLimits held;
    private final Optional<AgainstModel> model;
    private final Fits fits;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;
    private final RidePage lines;

    /**
     * Takes what is written.
     *
     * @param title of the vehicle
     * @param read the files
     * @param ride what it was
     * @param held where it went beyond the limits
     * @param model what it says of the ride; empty where it says nothing
     * @param fits what the ride says of the vehicle
     * @param units of speeds and distances
     * @param ink how the page looks
     */
    public RideText(
            String title,
            Recordings read,
            Ride ride,
            HeldLimits held,
            Optional<AgainstModel> model,
            Fits fits,
            UnitSystem units,
            Ink ink) {
        this.title = title;
        this.read = read;
        this.ride = ride;
        this.held = held;
        this.model = model;
        this.fits = fits;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
        this.lines = new RidePage(page, ink);
    }

    /**
     * Returns the page.
     *
     * @return lines of text
     */
    public String text() {
        lines.begin(title, "a recorded ride");
        limits();
        ways(ride.ways());
        pace(ride.pace());
        ride.energy().ifPresent(this::energy);
        changes("hard stops", ride.stops());
        changes("hard pulls", ride.pulls());
        extremes();
        bands();
        model.ifPresent(new ModelTable(page, ink, units)::write);
        new FitsTable(page, ink).write(fits);
        recorded(read.recording());
        RepairLines.write(page, ink, ride.repairs());
        untold();
        return lines.end();
    }

    private void row(String label, String text) {
        lines.row(label, text);
    }

    private void limits() {
        lines.section("beyond its limits");
        if (held.exceeded().isEmpty()) {
            page.note("nowhere, as far as it was recorded");
        }
        for (Exceeded each : held.exceeded()) {
            row(
                    named(each.what()),
                    "for "
                            + Numbers.time(each.seconds())
                            + " in "
                            + each.rows()
                            + (each.rows() == 1 ? " row" : " rows")
                            + ", worst "
                            + value(each.what(), each.worst().value())
                            + " where "
                            + value(each.what(), each.limit())
                            + " is the limit"
                            + each.boundBy().map(RideText::because).orElse("")
                            + "; "
                            + where(each.worst())
                            + "; first "
                            + place(each.first().place()));
        }
        page.note(
                switch (held.chargeFrom()) {
                            case RECORDED -> "Charge as recorded";
                            case COUNTED ->
                                    "Charge counted from use.charge_from, as none was recorded";
                            case NONE -> "Pack currents not held: neither charge nor current known";
                        }
                        + (held.isTemperatureRecorded()
                                ? "; cells as warm as recorded."
                                : "; cells as warm as the build file says."));
        page.blank();
    }

    private static String because(ConstraintId by) {
        return " (" + by.key() + ")";
    }

    private static String named(Exceeded.What what) {
        return switch (what) {
            case PACK_MAY_GIVE -> "out of the pack";
            case PACK_MAY_TAKE -> "into the pack";
            case MOTOR_CURRENT -> "motor current";
            case SPEED -> "speed";
            case CELL_FLOOR -> "below the cells' cut-off";
            case CELL_CEILING -> "above the cells' limit";
        };
    }

    private String value(Exceeded.What what, double value) {
        return switch (what) {
            case PACK_MAY_GIVE, PACK_MAY_TAKE, MOTOR_CURRENT -> Numbers.nearest(value, 1) + " A";
            case SPEED -> units.speedText(value);
            case CELL_FLOOR, CELL_CEILING -> Numbers.nearest(value, 2) + " V";
        };
    }

    private void ways(Ways ways) {
        lines.section("distance");
        row("measured", units.distanceMeasured(ways.measured()) + ", by " + ways.source().words());
        ways.byPosition().ifPresent(way -> row("by positions", units.distanceMeasured(way)));
        ways.byCounter().ifPresent(way -> row("by its own counter", units.distanceMeasured(way)));
        ways.positionsOverWheels()
                .ifPresent(
                        ratio ->
                                row(
                                        "positions over wheels",
                                        Numbers.nearest(ratio, 3)
                                                + held.impliedWheel().stream()
                                                        .mapToObj(RideText::wheel)
                                                        .collect(Collectors.joining())));
        ride.satellites().ifPresent(this::satellites);
        if (ways.acrossGaps() > 0.0) {
            row("across gaps at least", units.distanceMeasured(ways.acrossGaps()));
        }
        if (ways.unrecorded() > 0.0) {
            row("not recorded, as told", units.distanceMeasured(ways.unrecorded()));
        }
        if (ways.atLeast() > ways.measured()) {
            row("in all at least", units.distanceMeasured(ways.atLeast()));
        }
        page.blank();
    }

    private void satellites(Satellites received) {
        received.lag()
                .ifPresent(
                        lag ->
                                row(
                                        "satellites' speed",
                                        lag == 0.0
                                                ? "in step with the wheels"
                                                : Numbers.nearest(Math.abs(lag), 1)
                                                        + (lag > 0.0 ? " s behind" : " s ahead of")
                                                        + " the wheels"));
        if (received.dropOuts() > 0) {
            row(
                    "satellites lost",
                    received.dropOuts()
                            + (received.dropOuts() == 1 ? " time, " : " times, the longest ")
                            + Numbers.time(received.longestDropOut()));
        }
    }

    private static String wheel(double metres) {
        return "; both agree with wheels of " + Numbers.nearest(1000.0 * metres, 0) + " mm";
    }

    private void pace(Pace pace) {
        lines.section("speed");
        pace.held()
                .ifPresent(
                        top ->
                                row(
                                        "held for " + Numbers.time(pace.hold()),
                                        units.speedText(top.value())
                                                + ", at "
                                                + charge(top)
                                                + place(top.place())));
        pace.bothWays().ifPresent(this::bothWays);
        Optional.ofNullable(ride.extremes().get(Extreme.HIGHEST_SPEED))
                .ifPresent(top -> row("highest of any row", units.speedText(top.value())));
        row("mean while moving", units.speedText(pace.meanMoving()));
        row("mean with stands", units.speedText(pace.meanOverall()));
        row("moving", Numbers.time(pace.movingSeconds()) + " of " + Numbers.time(pace.seconds()));
        row(
                "stops",
                pace.stops()
                        + pace.stopsPerKilometre().stream()
                                .mapToObj(each -> ", " + Numbers.nearest(each, 1) + " each km")
                                .collect(Collectors.joining()));
        page.blank();
    }

    private void bothWays(BothWays ways) {
        row(
                "mean of both directions",
                units.speedText(ways.mean())
                        + ": "
                        + units.speedText(ways.faster().value())
                        + ", "
                        + place(ways.faster().place())
                        + ", and back "
                        + units.speedText(ways.slower().value())
                        + ", "
                        + place(ways.slower().place()));
    }

    private void energy(Energy energy) {
        lines.section("energy");
        amount("out of the pack", energy.outWh(), energy.outAh());
        amount("back into it", energy.backWh(), energy.backAh());
        amount("net", energy.netWh(), energy.netAh());
        row("returned", Numbers.percent(energy.returned()));
        present("consumption", energy.perKilometre(), " Wh/km");
        present("standing", energy.idlePower(), " W");
        present("a whole charge holds", energy.wholeChargeAh(), " Ah, by the charge it used");
        page.blank();
    }

    private void amount(String label, OptionalDouble wattHours, double ampereHours) {
        row(
                label,
                wattHours.stream()
                                .mapToObj(energy -> Numbers.nearest(energy, 1) + " Wh, ")
                                .collect(Collectors.joining())
                        + Numbers.nearest(ampereHours, 3)
                        + " Ah");
    }

    private void present(String label, OptionalDouble value, String behind) {
        value.ifPresent(known -> row(label, Numbers.nearest(known, 1) + behind));
    }

    private void changes(String heading, List<HardChange> changes) {
        if (changes.isEmpty()) {
            return;
        }
        lines.section(heading);
        for (HardChange each : changes.subList(0, Math.min(MOST_ROWS, changes.size()))) {
            row(
                    FROM + " " + units.speedText(each.begin().value()),
                    "to "
                            + units.speedText(each.to())
                            + " within "
                            + units.lengthText(each.distance())
                            + " and "
                            + Numbers.time(each.seconds())
                            + "; mean "
                            + Numbers.nearest(each.mean(), 2)
                            + ", highest "
                            + Numbers.nearest(each.highest(), 2)
                            + " m/s²; "
                            + place(each.begin().place()));
        }
        if (changes.size() > MOST_ROWS) {
            page.note("and " + (changes.size() - MOST_ROWS) + " more; --format json has them all");
        }
        page.blank();
    }

    private void extremes() {
        if (ride.extremes().keySet().equals(Set.of(Extreme.HIGHEST_SPEED))) {
            return;
        }
        lines.section("highest and lowest");
        extreme("lowest voltage", Extreme.LOWEST_VOLTAGE, 1, " V", perCell(held.lowestCell()));
        extreme("highest voltage", Extreme.HIGHEST_VOLTAGE, 1, " V", perCell(held.highestCell()));
        extreme("current out", Extreme.HIGHEST_CURRENT_OUT, 1, " A", "");
        extreme("current back", Extreme.HIGHEST_CURRENT_BACK, 1, " A", "");
        extreme("motor current", Extreme.HIGHEST_MOTOR_CURRENT, 1, " A", "");
        extreme("warmest cells", Extreme.WARMEST_PACK, 0, " °C", "");
        extreme("warmest motor", Extreme.WARMEST_MOTOR, 0, " °C", "");
        page.blank();
    }

    private static String perCell(Optional<Moment> cell) {
        return cell.map(each -> " (" + Numbers.nearest(each.value(), 3) + " V per cell)")
                .orElse("");
    }

    private void extreme(String label, Extreme extreme, int decimals, String unit, String beside) {
        Optional.ofNullable(ride.extremes().get(extreme))
                .ifPresent(
                        known ->
                                row(
                                        label,
                                        Numbers.nearest(known.value(), decimals)
                                                + unit
                                                + beside
                                                + ", "
                                                + where(known)));
    }

    private void bands() {
        if (ride.bands().isEmpty()) {
            return;
        }
        lines.section("top speed over the charge");
        for (ChargeBand band : ride.bands()) {
            row(
                    Numbers.percent(band.from()) + " to " + Numbers.percent(band.to()),
                    units.speedText(band.held()));
        }
        page.blank();
    }

    private void recorded(Recording recording) {
        lines.section("recording");
        row(
                "files",
                read.files().stream().map(FileNotes::source).collect(Collectors.joining(", ")));
        row(
                "rows",
                recording.rows()
                        + " in "
                        + recording.pieces().size()
                        + (recording.pieces().size() == 1 ? " piece, " : " pieces, ")
                        + Numbers.time(recording.seconds())
                        + "; rows more than "
                        + Numbers.time(recording.longestStep())
                        + " apart are a gap");
        for (Gap gap : recording.gaps()) {
            row("gap", gap(gap));
        }
        read.sign()
                .ifPresent(
                        sign ->
                                row(
                                        "current",
                                        (sign.isOutPositive() ? "positive" : "negative")
                                                + " out of the pack in the files: "
                                                + sign.proof().meaning()));
        page.blank();
    }

    private String gap(Gap gap) {
        return (gap.seconds().isPresent()
                        ? Numbers.time(gap.seconds().getAsDouble())
                        : "unknown, the clock began anew")
                + gap.leastDistance().stream()
                        .mapToObj(way -> ", at least " + units.lengthText(way))
                        .collect(Collectors.joining())
                + gap.voltageStep().stream()
                        .mapToObj(step -> ", rest voltage " + Numbers.nearest(step, 2) + " V more")
                        .collect(Collectors.joining())
                + "; after "
                + place(gap.after());
    }

    private void untold() {
        if (ride.untold().isEmpty()) {
            return;
        }
        page.blank();
        lines.section("cannot be told");
        for (Untold each : ride.untold()) {
            page.note(Initial.capital(each.meaning()) + ".");
        }
    }

    private String where(Moment moment) {
        return "at "
                + charge(moment)
                + moment.speed().stream()
                        .mapToObj(speed -> units.speedText(speed) + ", ")
                        .collect(Collectors.joining())
                + place(moment.place());
    }

    private static String charge(Moment moment) {
        return moment.charge().stream()
                .mapToObj(charge -> Numbers.percent(charge) + " charge, ")
                .collect(Collectors.joining());
    }

    private static String place(Place place) {
        return place.source() + " line " + place.line();
    }
}
