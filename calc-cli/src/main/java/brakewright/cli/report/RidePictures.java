package brakewright.cli.report;

import brakewright.cli.chart.Axis;
import brakewright.cli.chart.Bound;
import brakewright.cli.chart.Chart;
import brakewright.cli.chart.Line;
import brakewright.cli.chart.Plot;
import brakewright.cli.chart.Role;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Constraint;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Ride;
import brakewright.replay.AgainstModel;
import brakewright.replay.RidePoint;
import brakewright.replay.RouteRide;
import brakewright.replay.Traced;
import brakewright.worksheet.PackLimitSheet;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** A ride in pictures, with what is permitted drawn in: as it was recorded, or as it will be. */
final class RidePictures {

    private static final double MINUTE = 60.0;

    private static final String TAPERS = " Drawn in is where the tapers must have ended.";

    private static final String CURRENTS =
            " Drawn in is what the pack may give and take, as far as its charge does not lower it:"
                    + " a full pack takes less.";

    private final Worksheet sheet;
    private final UnitSystem units;

    /**
     * Takes what is permitted.
     *
     * @param sheet of the vehicle
     * @param units for speeds and distances
     */
    RidePictures(Worksheet sheet, UnitSystem units) {
        this.sheet = sheet;
        this.units = units;
    }

    /** What was recorded of speed, voltage and current. */
    List<Chart> recorded(Ride ride) {
        double[] minutes = times(ride);
        Axis time = Axis.exact("time", "min", 0.0, minutes[minutes.length - 1]);
        List<Chart> charts = new ArrayList<>();
        charts.add(
                plot(
                        "Speed",
                        "the speed",
                        time,
                        minutes,
                        units.speedUnit(),
                        List.of(
                                new Line(
                                        "recorded",
                                        Role.MEASURED,
                                        values(ride, ride.speed(), units::speed))),
                        List.of(speedLimit()),
                        " Drawn in is the highest speed in use."));
        if (ride.recording().has(Quantity.PACK_VOLTAGE)) {
            charts.add(
                    plot(
                            "Voltage of the pack",
                            "the voltage",
                            time,
                            minutes,
                            "V",
                            List.of(
                                    new Line(
                                            "recorded",
                                            Role.MEASURED,
                                            values(ride, Quantity.PACK_VOLTAGE, each -> each))),
                            voltageLimits(),
                            TAPERS));
        }
        if (ride.recording().has(Quantity.PACK_CURRENT)) {
            charts.add(
                    plot(
                            "Current out of the pack",
                            "the current",
                            time,
                            minutes,
                            "A",
                            List.of(
                                    new Line(
                                            "recorded",
                                            Role.MEASURED,
                                            values(ride, Quantity.PACK_CURRENT, each -> each))),
                            currentLimits(),
                            CURRENTS));
        }
        return charts;
    }

    /**
     * Current and voltage measured and as the model has them; none where they were not recorded.
     */
    List<Chart> against(AgainstModel model) {
        List<Traced> course = model.course();
        if (course.isEmpty()) {
            return List.of();
        }
        double[] minutes = course.stream().mapToDouble(each -> each.time() / MINUTE).toArray();
        Axis time = Axis.exact("time ridden", "min", 0.0, minutes[minutes.length - 1]);
        return List.of(
                beside(
                        "Current, measured and predicted",
                        "A",
                        1,
                        time,
                        minutes,
                        traced(course, Traced::measuredCurrent),
                        traced(course, Traced::predictedCurrent),
                        model.currentOff()),
                beside(
                        "Voltage, measured and predicted",
                        "V",
                        2,
                        time,
                        minutes,
                        traced(course, Traced::measuredVoltage),
                        traced(course, Traced::predictedVoltage),
                        model.voltageOff()));
    }

    /** A stretch behind a gap begins a new course. */
    private static double[] traced(List<Traced> course, ToDoubleFunction<Traced> what) {
        return course.stream()
                .mapToDouble(each -> each.follows() ? what.applyAsDouble(each) : Double.NaN)
                .toArray();
    }

    private static Plot beside(
            String title,
            String unit,
            int decimals,
            Axis time,
            double[] minutes,
            double[] measured,
            double[] predicted,
            OptionalDouble off) {
        return new Plot(
                title,
                off.isPresent()
                        ? "The model is off by "
                                + Numbers.nearest(off.getAsDouble(), decimals)
                                + " "
                                + unit
                                + " on the whole (root of the mean square)."
                        : "How far both are apart is not computed.",
                time,
                Axis.holding(
                        title.substring(0, title.indexOf(',')).toLowerCase(Locale.ROOT),
                        unit,
                        DoubleStream.concat(Arrays.stream(measured), Arrays.stream(predicted))
                                .toArray()),
                minutes,
                List.of(
                        new Line("predicted", Role.PROPOSED, predicted),
                        new Line("measured", Role.MEASURED, measured)),
                List.of());
    }

    /** What is predicted along a route. */
    List<Chart> predicted(RouteRide ride) {
        List<RidePoint> course = ride.course();
        double[] kilometres =
                course.stream().mapToDouble(each -> each.state().distance() / 1000.0).toArray();
        Axis way = Axis.exact("way", "km", 0.0, kilometres[kilometres.length - 1]);
        return List.of(
                plot(
                        "Speed along the way",
                        "the speed",
                        way,
                        kilometres,
                        units.speedUnit(),
                        List.of(
                                new Line(
                                        "allowed",
                                        Role.WANTED,
                                        along(course, each -> units.speed(each.allowed()))),
                                new Line(
                                        "predicted",
                                        Role.PRESENT,
                                        along(course, each -> units.speed(each.state().speed())))),
                        List.of(),
                        " The dots are what route, cap and the way ahead allow."),
                plot(
                        "Voltage of the pack along the way",
                        "the voltage",
                        way,
                        kilometres,
                        "V",
                        List.of(
                                new Line(
                                        "predicted",
                                        Role.PRESENT,
                                        along(course, RidePoint::packVoltage))),
                        voltageLimits(),
                        TAPERS),
                plot(
                        "Current out of the pack along the way",
                        "the current",
                        way,
                        kilometres,
                        "A",
                        List.of(
                                new Line(
                                        "predicted",
                                        Role.PRESENT,
                                        along(course, RidePoint::packCurrent))),
                        currentLimits(),
                        CURRENTS),
                plot(
                        "Height along the way",
                        "the height",
                        way,
                        kilometres,
                        units.lengthUnit(),
                        List.of(
                                new Line(
                                        "the road",
                                        Role.GROUND,
                                        along(course, each -> units.length(each.height())))),
                        List.of(),
                        ""));
    }

    private Bound speedLimit() {
        double highest = sheet.build().highestSpeed();
        return Bound.level("highest in use", Role.LIMIT, units.speed(highest), Bound.Beyond.MORE);
    }

    private List<Bound> voltageLimits() {
        return List.of(
                Bound.level(
                        "high taper must end",
                        Role.LIMIT,
                        sheet.permitted().highVoltageTaper().ends().stream()
                                .mapToDouble(Constraint::limit)
                                .min()
                                .orElseThrow(),
                        Bound.Beyond.MORE),
                Bound.level(
                        "low taper must end",
                        Role.LIMIT,
                        sheet.permitted().lowVoltageTaper().ends().stream()
                                .mapToDouble(Constraint::limit)
                                .max()
                                .orElseThrow(),
                        Bound.Beyond.LESS));
    }

    private List<Bound> currentLimits() {
        PackLimitSheet give = sheet.permitted().packDischarge();
        PackLimitSheet take = sheet.permitted().packRegen();
        return List.of(
                Bound.level(
                        "may give above " + Numbers.up(100.0 * give.holdsTo(), 0) + " %",
                        Role.LIMIT,
                        give.fixed().value(),
                        Bound.Beyond.MORE),
                Bound.level(
                        "may take below " + Numbers.down(100.0 * take.holdsTo(), 0) + " %",
                        Role.LIMIT,
                        -take.fixed().value(),
                        Bound.Beyond.LESS));
    }

    private static Plot plot(
            String title,
            String what,
            Axis across,
            double[] places,
            String unit,
            List<Line> lines,
            List<Bound> bounds,
            String drawn) {
        Line told = lines.get(lines.size() - 1);
        double[] known = Arrays.stream(told.values()).filter(Double::isFinite).toArray();
        double low = Arrays.stream(known).min().orElse(0.0);
        double high = Arrays.stream(known).max().orElse(0.0);
        Axis up =
                Axis.holding(
                        what.replaceFirst("^the ", ""),
                        unit,
                        Stream.of(
                                        lines.stream()
                                                .flatMapToDouble(
                                                        line -> Arrays.stream(line.values())),
                                        bounds.stream().mapToDouble(Bound::at))
                                .flatMapToDouble(each -> each)
                                .toArray());
        return new Plot(
                title,
                what.substring(0, 1).toUpperCase(Locale.ROOT)
                        + what.substring(1)
                        + " goes from "
                        + Numbers.nearest(low, 1)
                        + " to "
                        + Numbers.nearest(high, 1)
                        + " "
                        + unit
                        + "."
                        + drawn,
                across,
                up,
                places,
                lines,
                bounds);
    }

    private static double[] along(List<RidePoint> course, ToDoubleFunction<RidePoint> what) {
        return course.stream().mapToDouble(what).toArray();
    }

    /** One place more between two pieces, where nothing is known. */
    private static double[] times(Ride ride) {
        DoubleStream times = DoubleStream.empty();
        for (Piece piece : ride.recording().pieces()) {
            double[] own = new double[piece.rows() + 1];
            for (int row = 0; row <= piece.rows(); row++) {
                own[row] = piece.time(Math.min(row, piece.rows() - 1));
            }
            times = DoubleStream.concat(times, Arrays.stream(own));
        }
        double[] all = times.toArray();
        return Arrays.stream(all).map(each -> (each - all[0]) / MINUTE).toArray();
    }

    private static double[] values(Ride ride, Quantity quantity, DoubleUnaryOperator shown) {
        DoubleStream values = DoubleStream.empty();
        for (Piece piece : ride.recording().pieces()) {
            double[] own = new double[piece.rows() + 1];
            Arrays.fill(own, Double.NaN);
            for (int row = 0; row < piece.rows() && piece.has(quantity); row++) {
                own[row] = shown.applyAsDouble(piece.value(quantity, row));
            }
            values = DoubleStream.concat(values, Arrays.stream(own));
        }
        return values.toArray();
    }
}
