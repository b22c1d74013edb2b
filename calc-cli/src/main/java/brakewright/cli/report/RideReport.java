package brakewright.cli.report;

import brakewright.cli.chart.Chart;
import brakewright.cli.text.Piece;
import brakewright.cli.words.UnitSystem;
import brakewright.recording.Ride;
import brakewright.replay.AgainstModel;
import brakewright.replay.RouteRide;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A ride as a document: as it was recorded, or as it will be along a route. */
public final class RideReport {

    private RideReport() {}

    /**
     * Tells a recorded ride.
     *
     * @param title what the vehicle is called
     * @param pieces what the page of text tells, its title first
     * @param ride what it was
     * @param model what the model says of it; empty where it says nothing
     * @param sheet what is permitted
     * @param units for speeds and distances
     * @return pictures over the time, then what the page tells
     */
    public static Report recorded(
            String title,
            List<Piece> pieces,
            Ride ride,
            Optional<AgainstModel> model,
            Worksheet sheet,
            UnitSystem units) {
        RidePictures pictures = new RidePictures(sheet, units);
        List<Chart> charts = new ArrayList<>(pictures.recorded(ride));
        model.ifPresent(each -> charts.addAll(pictures.against(each)));
        return told(title, "A recorded ride", pieces, charts);
    }

    /**
     * Tells a ride along a route.
     *
     * @param title what the vehicle is called
     * @param pieces what the page of text tells, its title first
     * @param ride what it will be
     * @param sheet what is permitted
     * @param units for speeds and distances
     * @return pictures over the way, then what the page tells
     */
    public static Report predicted(
            String title, List<Piece> pieces, RouteRide ride, Worksheet sheet, UnitSystem units) {
        return told(
                title,
                "A ride along a route, predicted",
                pieces,
                new RidePictures(sheet, units).predicted(ride));
    }

    private static Report told(String title, String kind, List<Piece> pieces, List<Chart> charts) {
        List<Chapter> chapters = new ArrayList<>();
        chapters.add(
                new Chapter(
                        "The ride in pictures",
                        charts.stream().<Block>map(Block.Picture::new).toList()));
        chapters.addAll(Chapters.of(pieces.subList(1, pieces.size())));
        return new Report(title, kind, List.of(), List.of(), chapters);
    }
}
