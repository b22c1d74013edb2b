package brakewright.review;

import brakewright.battery.ShortCircuit;
import brakewright.limit.Signal;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Pack;
import brakewright.spec.Unit;
import brakewright.spec.Wiring;
import java.util.List;
import java.util.stream.Stream;

/**
 * Looks whether the packs are connected to the controllers' empty capacitors through a resistor
 * first. One such plug on the way is enough: it is the one to connect last.
 */
final class PlugReview {

    /**
     * From this voltage on a bare plug is said to spark [V].
     *
     * <p>Assumption: common practice of builders, who fit such plugs from some six cells in series
     * on; no source was found.
     */
    private static final double SPARKS_FROM = 25.0;

    private final Battery battery;

    PlugReview(Build build) {
        this.battery = build.battery();
    }

    List<Finding> findings() {
        double voltage = new ShortCircuit(battery).voltage();
        List<Wiring> plugged =
                Stream.concat(
                                battery.packs().stream().map(Pack::wiring),
                                Stream.of(battery.trunk()))
                        .filter(wiring -> wiring.plugRating().isPresent())
                        .toList();
        if (plugged.isEmpty()
                || plugged.stream().anyMatch(Wiring::plugIsAntiSpark)
                || voltage < SPARKS_FROM) {
            return List.of();
        }
        return List.of(
                Finding.of(Topic.PLUG_SPARKS, Signal.NOTICE)
                        .valued(voltage, SPARKS_FROM, Unit.VOLT)
                        .build());
    }
}
