package brakewright.cli.words;

import brakewright.review.Condition;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.review.Signal;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Says a verdict and its conditions in sentences. */
public final class VerdictWords {

    private final UnitSystem units;
    private final FindingWords findings;

    /**
     * Makes the words.
     *
     * @param build the vehicle
     * @param units for speeds
     */
    public VerdictWords(Build build, UnitSystem units) {
        this.findings = new FindingWords(build, units);
        this.units = units;
    }

    /**
     * Says a verdict.
     *
     * @param review what the verdict rests on
     * @return one or more sentences
     */
    public List<String> of(Review review) {
        Verdict verdict = review.verdict();
        return switch (verdict.outcome()) {
            case WITHIN_LIMITS ->
                    review.findings().stream().anyMatch(each -> each.signal() == Signal.DANGER)
                            ? List.of(
                                    "No limit is exceeded over the charge, speed and temperature in"
                                            + " use. But there is a danger of another kind: read"
                                            + " the first of the findings below.")
                            : List.of(
                                    "No limit is exceeded over the charge, speed and temperature in"
                                            + " use.");
            case OUTSIDE_LIMITS -> exceeded(review);
            case CONDITIONAL -> conditions(verdict.conditions());
        };
    }

    /** Names what is exceeded whatever the charge state, gravest first. */
    private List<String> exceeded(Review review) {
        List<String> sentences = new ArrayList<>();
        for (Finding finding : review.findings()) {
            if (finding.condition().filter(Condition.Never.class::isInstance).isPresent()) {
                sentences.add(findings.of(finding));
            }
        }
        return sentences;
    }

    private List<String> conditions(List<Condition> conditions) {
        Set<String> sentences = new LinkedHashSet<>();
        strictest(conditions).stream()
                .sorted(Comparator.comparingInt(VerdictWords::rank))
                .forEach(condition -> sentences.add(sentence(condition)));
        return List.copyOf(sentences);
    }

    /** Of several bounds of one kind only the strictest matters. */
    private static List<Condition> strictest(List<Condition> conditions) {
        List<Condition> kept = new ArrayList<>();
        for (Condition condition : conditions) {
            if (conditions.stream().noneMatch(other -> isStricter(other, condition))) {
                kept.add(condition);
            }
        }
        return kept;
    }

    private static boolean isStricter(Condition other, Condition condition) {
        if (other instanceof Condition.CellsFrom least) {
            return isColderThan(condition, least.temperatureC());
        }
        if (other instanceof Condition.ChargeBelow a
                && condition instanceof Condition.ChargeBelow b) {
            return a.charge() < b.charge() && a.temperatureC() == b.temperatureC();
        }
        if (other instanceof Condition.ChargeAbove a
                && condition instanceof Condition.ChargeAbove b) {
            return a.charge() > b.charge() && a.temperatureC() == b.temperatureC();
        }
        return false;
    }

    /** Where the cells must be warmer anyway, what holds in the cold says nothing. */
    private static boolean isColderThan(Condition condition, double temperatureC) {
        if (condition instanceof Condition.CellsFrom from) {
            return from.temperatureC() < temperatureC;
        }
        if (condition instanceof Condition.ChargeBelow below) {
            return below.temperatureC() < temperatureC;
        }
        return condition instanceof Condition.ChargeAbove above
                && above.temperatureC() < temperatureC;
    }

    /** Bounds on the charge come first: they are met on every ride. */
    private static int rank(Condition condition) {
        return condition instanceof Condition.ChargeBelow
                ? 0
                : condition instanceof Condition.ChargeAbove ? 1 : 2;
    }

    /**
     * Says a condition.
     *
     * @param condition the condition
     * @return a sentence
     */
    public String sentence(Condition condition) {
        if (condition instanceof Condition.ChargeBelow below) {
            String start =
                    "Braking is safe for the pack below "
                            + Numbers.down(100.0 * below.charge(), 1)
                            + " % charge at any speed in use";
            String there =
                    below.speedThere().isPresent() && below.speedThere().getAsDouble() > 0.0
                            ? ", and at "
                                    + Numbers.percent(below.highestCharge())
                                    + " only up to "
                                    + units.speedDown(below.speedThere().getAsDouble())
                            : "";
            return start + there + cells(below.temperatureC()) + ".";
        }
        if (condition instanceof Condition.ChargeAbove above) {
            return "Driving is safe for the pack above "
                    + Numbers.up(100.0 * above.charge(), 1)
                    + " % charge, not down to "
                    + Numbers.percent(above.lowestCharge())
                    + cells(above.temperatureC())
                    + ".";
        }
        if (condition instanceof Condition.CellsFrom from) {
            return "It holds with the cells at "
                    + Numbers.up(from.temperatureC(), 0)
                    + " °C or warmer.";
        }
        if (condition instanceof Condition.CellsUpTo upTo) {
            return "It holds with the cells at "
                    + Numbers.nearest(upTo.temperatureC(), 0)
                    + " °C or cooler.";
        }
        return "It never holds.";
    }

    private static String cells(double temperatureC) {
        return " (cells at " + Numbers.nearest(temperatureC, 0) + " °C)";
    }
}
