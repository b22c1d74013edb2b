package brakewright.review;

import brakewright.limit.ConstraintId;
import java.util.ArrayList;
import java.util.List;

/**
 * A part of a verdict: what is exceeded, and under which conditions all else is well.
 *
 * @param exceeded the findings that no condition mends, gravest first
 * @param conditions the strictest of each kind
 */
public record VerdictPart(List<Finding> exceeded, List<Condition> conditions) {

    /** Copies the lists. */
    public VerdictPart {
        exceeded = List.copyOf(exceeded);
        conditions = List.copyOf(conditions);
    }

    /** Of the whole verdict. */
    static VerdictPart of(List<Finding> findings, Verdict verdict) {
        return new VerdictPart(never(findings), strictest(verdict.conditions()));
    }

    /** Of the findings that are about the packs, or of the others. */
    static VerdictPart of(List<Finding> findings, boolean isOfPack) {
        List<Finding> own = new ArrayList<>();
        List<Condition> conditions = new ArrayList<>();
        for (Finding finding : findings) {
            if (isOfPack(finding) == isOfPack) {
                own.add(finding);
                if (finding.condition().isPresent() && !isNever(finding)) {
                    conditions.add(finding.condition().get());
                }
            }
        }
        return new VerdictPart(never(own), strictest(conditions));
    }

    private static List<Finding> never(List<Finding> findings) {
        List<Finding> never = new ArrayList<>();
        for (Finding finding : findings) {
            if (isNever(finding)) {
                never.add(finding);
            }
        }
        return never;
    }

    /** Whether a finding is about what the cells and their protection bear. */
    private static boolean isOfPack(Finding finding) {
        return switch (finding.constraint().orElse(ConstraintId.GRIP)) {
            case CELL_CHARGE_RATING,
                    CELL_CHARGE_RATING_AT_CHARGE,
                    CELL_DISCHARGE_RATING,
                    VOLTAGE_CEILING,
                    VOLTAGE_FLOOR,
                    PROTECTION_CHARGE_TRIP,
                    REGEN_OVERSHOOT,
                    PROTECTION_DISCHARGE_TRIP,
                    PROTECTION_OVERVOLTAGE_TRIP,
                    PROTECTION_UNDERVOLTAGE_TRIP,
                    TEMPERATURE_WINDOW ->
                    true;
            default -> false;
        };
    }

    /**
     * Returns whether nothing is exceeded in all of the use.
     *
     * @return true where neither is told
     */
    public boolean isWell() {
        return exceeded.isEmpty() && conditions.isEmpty();
    }

    private static boolean isNever(Finding finding) {
        return finding.condition().isPresent()
                && finding.condition().get() instanceof Condition.Never;
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
            return isColderThan(condition, least);
        }
        if (other instanceof Condition.CellsUpTo a && condition instanceof Condition.CellsUpTo b) {
            return a.temperatureC() < b.temperatureC()
                    && a.excess().isReturned() == b.excess().isReturned();
        }
        if (other instanceof Condition.ChargeBelow a
                && condition instanceof Condition.ChargeBelow b) {
            return a.charge() < b.charge() && a.temperatureC() == b.temperatureC();
        }
        if (other instanceof Condition.ChargeAbove a
                && condition instanceof Condition.ChargeAbove b) {
            return a.charge() > b.charge() && a.temperatureC() == b.temperatureC();
        }
        return other instanceof Condition.RiddenUpTo a
                && condition instanceof Condition.RiddenUpTo b
                && isSooner(a, b);
    }

    /** Whoever stops where one pack is too warm never comes to where another one is. */
    private static boolean isSooner(Condition.RiddenUpTo a, Condition.RiddenUpTo b) {
        return a.time() < b.time() && a.limitC() <= b.limitC()
                || a.time() == b.time() && a.limitC() < b.limitC();
    }

    /** Where the cells must be warmer anyway, what holds in the cold says nothing. */
    private static boolean isColderThan(Condition condition, Condition.CellsFrom least) {
        boolean returned = least.excess().isReturned();
        if (condition instanceof Condition.CellsFrom from) {
            return from.excess().isReturned() == returned
                    && from.temperatureC() < least.temperatureC();
        }
        if (condition instanceof Condition.ChargeBelow below) {
            return returned && below.temperatureC() < least.temperatureC();
        }
        return condition instanceof Condition.ChargeAbove above
                && !returned
                && above.temperatureC() < least.temperatureC();
    }
}
