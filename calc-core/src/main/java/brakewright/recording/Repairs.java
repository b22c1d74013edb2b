package brakewright.recording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Counts what is repaired, in the order in which it was first met. */
public final class Repairs {

    private record Kind(Repair.Rule rule, Optional<Quantity> quantity) {}

    private static final class Count {
        private int count;
        private final List<Place> places = new ArrayList<>();
    }

    private final Map<Kind, Count> counts = new LinkedHashMap<>();

    /** Begins with none. */
    public Repairs() {}

    /**
     * Counts a row.
     *
     * @param rule what was done with it
     * @param place where it is
     */
    public void row(Repair.Rule rule, Place place) {
        add(new Kind(rule, Optional.empty()), place);
    }

    /**
     * Counts a field.
     *
     * @param rule what was done with it
     * @param quantity of which
     * @param place where it is
     */
    public void field(Repair.Rule rule, Quantity quantity, Place place) {
        add(new Kind(rule, Optional.of(quantity)), place);
    }

    private void add(Kind kind, Place place) {
        Count count = counts.computeIfAbsent(kind, unused -> new Count());
        count.count++;
        if (count.places.size() < Repair.MOST_PLACES) {
            count.places.add(place);
        }
    }

    /**
     * Returns what was counted.
     *
     * @return one for each rule and quantity
     */
    public List<Repair> all() {
        return counts.entrySet().stream()
                .map(
                        each ->
                                new Repair(
                                        each.getKey().rule(),
                                        each.getKey().quantity(),
                                        each.getValue().count,
                                        each.getValue().places))
                .toList();
    }
}
