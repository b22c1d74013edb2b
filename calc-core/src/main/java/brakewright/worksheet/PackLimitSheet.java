package brakewright.worksheet;

import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.PackLimit;
import brakewright.limit.Standing;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the packs may give or take, cells at their own temperature unless said otherwise, each
 * number worked out when it is asked for. Currents are of all controllers together.
 */
public final class PackLimitSheet {

    private final Build build;
    private final PackLimit limit;
    private final OptionalDouble setting;
    private final double endOfUse;
    private final double cellsC;

    /** Of a setting per controller, and the end of the charge in use that the limit is about. */
    PackLimitSheet(Build build, PackLimit limit, OptionalDouble setting, double endOfUse) {
        this.build = build;
        this.limit = limit;
        this.setting = setting;
        this.endOfUse = endOfUse;
        this.cellsC = build.battery().temperatureC();
    }

    /**
     * At another temperature of the cells.
     *
     * @param cellsC the temperature [°C]
     * @param limit whatever the charge
     * @param standing of the current that is set
     */
    public record AtCells(double cellsC, Limit limit, Standing standing) {}

    /**
     * Returns which current is limited.
     *
     * @return the limit's identity
     */
    public LimitId id() {
        return limit.id();
    }

    /**
     * Returns whether the limit is about what flows into the packs.
     *
     * @return false for what is drawn from them
     */
    public boolean isTaking() {
        return limit.id() == LimitId.PACK_REGEN_CURRENT;
    }

    /**
     * Returns the part that does not depend on the charge state.
     *
     * @return the limit whatever the charge
     */
    public Limit fixed() {
        return limit.staticPart(cellsC);
    }

    /**
     * Returns that part at the coldest and the warmest cells in use, where it is less than at their
     * own temperature.
     *
     * @return none where it is nowhere less
     */
    public List<AtCells> lessElsewhere() {
        double own = fixed().value();
        return Arrays.stream(build.cellTemperatures())
                .mapToObj(this::at)
                .filter(each -> each.limit().value() < own)
                .toList();
    }

    private AtCells at(double cells) {
        Limit there = limit.staticPart(cells);
        return new AtCells(cells, there, Standing.of(set(), there.value()));
    }

    /**
     * Returns the charge state to which the part that does not depend on it is permitted.
     *
     * @return below which it holds for what is taken, above which for what is given [1]
     */
    public double holdsTo() {
        return limit.chargeBound(fixed().value(), cellsC);
    }

    /**
     * Returns the current that is set.
     *
     * @return [A]; empty where none is set
     */
    public OptionalDouble set() {
        return build.controllers().together(setting);
    }

    /**
     * Returns the charge state to which the current that is set is permitted.
     *
     * @return below which it holds for what is taken, above which for what is given [1]; empty
     *     where none is set
     */
    public OptionalDouble setHoldsTo() {
        OptionalDouble set = set();
        return set.isPresent()
                ? OptionalDouble.of(limit.chargeBound(set.getAsDouble(), cellsC))
                : OptionalDouble.empty();
    }

    /**
     * Returns the end of the charge in use at which least is permitted.
     *
     * @return the fullest for what is taken, the emptiest for what is given [1]
     */
    public double endOfUse() {
        return endOfUse;
    }

    /**
     * Returns the limit at that end.
     *
     * @return all constraints with their working
     */
    public Limit atEndOfUse() {
        return limit.at(endOfUse, cellsC);
    }
}
