package brakewright.worksheet;

import brakewright.braking.StopOutcome;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Stops from one speed with the fullest pack in use, on level road.
 *
 * @param from speed at the beginning [m/s]
 * @param reaction distance ridden in the reaction time [m]
 * @param dry on dry road; empty for a side whose highest speed is less
 * @param wet on wet road; empty likewise
 */
public record CheckedStop(
        double from,
        double reaction,
        Both<Optional<StopOutcome>> dry,
        Both<Optional<StopOutcome>> wet) {

    static List<CheckedStop> all(Both<Worksheet> sheets, double[] speeds) {
        Build build = sheets.proposed().build();
        Both<List<StopOutcome>> dry =
                sheets.map(sheet -> outcomes(sheet, speeds, build.vehicle().grip()));
        Both<List<StopOutcome>> wet =
                sheets.map(sheet -> outcomes(sheet, speeds, build.vehicle().gripWet()));
        List<CheckedStop> all = new ArrayList<>();
        for (int i = 0; i < speeds.length; i++) {
            int place = i;
            all.add(
                    new CheckedStop(
                            speeds[i],
                            speeds[i] * build.use().effort().reaction(),
                            dry.map(outcomes -> at(outcomes, place)),
                            wet.map(outcomes -> at(outcomes, place))));
        }
        return all;
    }

    /** As far as the side's own highest speed; speeds are ascending. */
    private static List<StopOutcome> outcomes(Worksheet sheet, double[] speeds, double grip) {
        double top = sheet.operation().topSpeed();
        double[] met = Arrays.stream(speeds).filter(speed -> speed <= top).toArray();
        return StopTable.atFull(sheet.build(), sheet.operation(), met, grip);
    }

    private static Optional<StopOutcome> at(List<StopOutcome> outcomes, int place) {
        return place < outcomes.size() ? Optional.of(outcomes.get(place)) : Optional.empty();
    }
}
