package brakewright.cli.doubt;

import brakewright.buildfile.Spread;
import brakewright.profile.Uncertain;
import java.util.List;

/** The spreads of a build file as the inputs that a calculation takes to be uncertain. */
public final class Ranges {

    private Ranges() {}

    /**
     * Makes the uncertain inputs.
     *
     * @param spreads of a build file
     * @return one of each, in the same order
     */
    public static List<Uncertain> of(List<Spread> spreads) {
        return spreads.stream().map(Ranges::of).toList();
    }

    static Uncertain of(Spread spread) {
        return new Uncertain(spread.place().input(), spread.nominal(), spread.low(), spread.high());
    }
}
