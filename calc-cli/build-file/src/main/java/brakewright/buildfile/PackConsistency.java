package brakewright.buildfile;

import brakewright.assembly.Values;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Whether what a file says of the protection and the charge of its packs can be. */
final class PackConsistency {

    private final Given given;
    private final ReferenceTables tables;
    private final List<Problem> problems;

    PackConsistency(Given given, ReferenceTables tables, List<Problem> problems) {
        this.given = given;
        this.tables = tables;
        this.problems = problems;
    }

    void check() {
        given.packs().forEach(this::checkTrips);
        if (given.isInSeries()) {
            checkCharges();
        }
    }

    /** A protection that is open throughout protects nothing. */
    private void checkTrips(GivenPack pack) {
        OptionalDouble lower = number(pack, Input.PROTECTION_UNDERVOLTAGE_TRIP);
        OptionalDouble upper = number(pack, Input.PROTECTION_OVERVOLTAGE_TRIP);
        OptionalDouble full = pack.ofCell(Input.CELL_VOLTAGE_MAX, "voltage_max", tables);
        OptionalDouble empty = pack.ofCell(Input.CELL_VOLTAGE_MIN, "voltage_min", tables);
        if (isReached(lower, upper)) {
            tell(
                    pack,
                    Input.PROTECTION_UNDERVOLTAGE_TRIP,
                    lower,
                    "not below cell_overvoltage_trip",
                    upper);
        } else if (isReached(lower, full)) {
            tell(
                    pack,
                    Input.PROTECTION_UNDERVOLTAGE_TRIP,
                    lower,
                    "not below the cell's voltage_max",
                    full);
        }
        if (isReached(empty, upper)) {
            tell(
                    pack,
                    Input.PROTECTION_OVERVOLTAGE_TRIP,
                    upper,
                    "not above the cell's voltage_min",
                    empty);
        }
    }

    private static boolean isReached(OptionalDouble low, OptionalDouble high) {
        return low.isPresent() && high.isPresent() && low.getAsDouble() >= high.getAsDouble();
    }

    private void tell(
            GivenPack pack, Input trip, OptionalDouble at, String relation, OptionalDouble other) {
        String key = pack.key(trip);
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        Plain.number(at.orElseThrow())
                                + " V is "
                                + relation
                                + ", "
                                + Plain.number(other.orElseThrow())
                                + " V: the protection would never let the pack be used",
                        Consistency.expected(key, given.spelling())));
    }

    /** Packs in series count as full together; another charge would go unheard. */
    private void checkCharges() {
        long different =
                given.packs().stream()
                        .map(pack -> Optional.ofNullable(pack.values().get(Input.PACK_CHARGE)))
                        .distinct()
                        .count();
        if (different < 2 || given.packs().stream().anyMatch(this::hasUnreadableCharge)) {
            return;
        }
        String key =
                given.packs().stream()
                        .filter(pack -> pack.values().containsKey(Input.PACK_CHARGE))
                        .reduce((before, after) -> after)
                        .orElseThrow()
                        .key(Input.PACK_CHARGE);
        problems.add(
                new Problem(
                        given.line(key),
                        key,
                        "packs in series must be equally full, and these are not all told to be:"
                                + " the fullest would be overcharged, the emptiest over-discharged",
                        "no charge of single packs (balance them first; use.charge_from tells how"
                                + " full all are), or the same one in each, for example "
                                + given.spelling().example(Schema.of(Input.PACK_CHARGE), key)));
    }

    private boolean hasUnreadableCharge(GivenPack pack) {
        return given.lines().containsKey(pack.key(Input.PACK_CHARGE))
                && !pack.values().containsKey(Input.PACK_CHARGE);
    }

    private static OptionalDouble number(GivenPack pack, Input input) {
        return new Values(pack.values()).optional(input);
    }
}
