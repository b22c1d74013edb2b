package brakewright.cli.text;

import brakewright.cli.doubt.Measurements.Measurement;
import brakewright.cli.words.FindingWords;
import brakewright.cli.words.InputWords;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** The measurements that matter most, a line each. */
final class MeasureLines {

    private final Showing showing;
    private final Page page;
    private final boolean isNarrow;

    MeasureLines(Showing showing) {
        this.showing = showing;
        this.page = showing.page();
        this.isNarrow = showing.ink().isNarrow();
    }

    void print() {
        List<Measurement> first = showing.asked().measurements().first();
        boolean areValues = first.stream().anyMatch(Measurement.OfValue.class::isInstance);
        page.line(
                showing.ink()
                        .heading(
                                "What to measure or look up first"
                                        + (isNarrow && areValues ? "; brake safe to" : "")));
        if (first.isEmpty()) {
            page.note(
                    "No value that is taken from tables moves the verdict within its usual spread.");
        }
        first.forEach(this::print);
    }

    private void print(Measurement measurement) {
        if (measurement instanceof Measurement.OfValue value) {
            page.line(
                    String.format(
                            Locale.ROOT,
                            isNarrow ? "  %-30s  %-22s  %s" : "  %-30s  %-22s  brake safe to %s",
                            value.name(),
                            showing.ink()
                                    .settle(
                                            InputWords.nearest(
                                                            value.range().input(),
                                                            value.range().low(),
                                                            showing.units())
                                                    + " to "
                                                    + InputWords.nearest(
                                                            value.range().input(),
                                                            value.range().high(),
                                                            showing.units())),
                            safe(value)));
        } else if (measurement instanceof Measurement.OfFact fact) {
            page.note(
                    new FindingWords(showing.sheet().build(), showing.units())
                            .missing(fact.finding()));
        }
    }

    private String safe(Measurement.OfValue value) {
        String low = safe(value.safeAtLow());
        String high = safe(value.safeAtHigh());
        return low.equals(high) ? low + " either way" : low + " or " + high;
    }

    private String safe(double charge) {
        return charge > 0.0
                ? new MeasureWords(showing.units())
                        .value(Quantity.SAFE_CHARGE, OptionalDouble.of(charge))
                : "no charge";
    }
}
