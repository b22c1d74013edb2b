package brakewright.limit;

import brakewright.battery.BatteryModel;

/**
 * The greatest share of the current that one of several packs carries; the last one found is kept.
 */
final class GreatestShare {

    private final BatteryModel model;
    private final int place;
    private volatile Found last = new Found(Double.NaN, Double.NaN);

    private record Found(double temperatureC, double share) {}

    GreatestShare(BatteryModel model, int place) {
        this.model = model;
        this.place = place;
    }

    double at(double temperatureC) {
        Found found = last;
        if (found.temperatureC() != temperatureC) {
            found = new Found(temperatureC, model.greatestShare(place, temperatureC));
            last = found;
        }
        return found.share();
    }
}
