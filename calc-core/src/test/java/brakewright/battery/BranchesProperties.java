package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Tag("law")
class BranchesProperties {

    private static final double ROUNDING = 1e-12;

    @Provide
    Arbitrary<Branches.Branch> branch() {
        return Combinators.combine(
                        Arbitraries.doubles().between(5.0, 100.0).ofScale(6),
                        Arbitraries.doubles().between(0.001, 1.0).ofScale(6))
                .as(Branches.Branch::new);
    }

    @Provide
    Arbitrary<List<Branches.Branch>> branches() {
        return branch().list().ofMinSize(1).ofMaxSize(5);
    }

    @Property
    void theCurrentsAddUpToTheWhole(
            @ForAll("branches") List<Branches.Branch> all,
            @ForAll @Scale(6) @DoubleRange(min = -500.0, max = 500.0) double drawn) {
        Branches branches = new Branches(all);
        double sum =
                IntStream.range(0, all.size()).mapToDouble(k -> branches.current(k, drawn)).sum();
        assertThat(sum).isCloseTo(drawn, within(amperes(all, drawn)));
    }

    @Property
    void allStandAtOneVoltage(
            @ForAll("branches") List<Branches.Branch> all,
            @ForAll @Scale(6) @DoubleRange(min = -500.0, max = 500.0) double drawn) {
        Branches branches = new Branches(all);
        for (int k = 0; k < all.size(); k++) {
            double own =
                    all.get(k).voltage() - branches.current(k, drawn) * all.get(k).resistance();
            assertThat(own).isCloseTo(branches.voltage(drawn), within(ROUNDING * (100.0 + 500.0)));
        }
    }

    /** At rest a current flows from the higher pack into the lower, and they meet in between. */
    @Property
    void withoutLoadTwoPacksEvenOut(
            @ForAll("branch") Branches.Branch one, @ForAll("branch") Branches.Branch other) {
        Branches branches = new Branches(List.of(one, other));
        double flows = Branches.equalisingCurrent(one, other);
        double accuracy = amperes(List.of(one, other), 0.0);
        assertThat(branches.current(0, 0.0)).isCloseTo(flows, within(accuracy));
        assertThat(branches.current(1, 0.0)).isCloseTo(-flows, within(accuracy));
        assertThat(Branches.equalisingCurrent(other, one)).isEqualTo(-flows);
        assertThat(branches.voltage(0.0))
                .isBetween(
                        Math.min(one.voltage(), other.voltage()) - ROUNDING * 100.0,
                        Math.max(one.voltage(), other.voltage()) + ROUNDING * 100.0);
    }

    @Property
    void anAcceptableDifferenceLetsTheCurrentFlowThatBothBear(
            @ForAll("branch") Branches.Branch lower,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1.0) double resistance,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double bearable) {
        Branches.Branch higher = new Branches.Branch(lower.voltage(), resistance);
        double difference = Branches.acceptableDifference(bearable, higher, lower);
        double flows =
                Branches.equalisingCurrent(
                        new Branches.Branch(lower.voltage() + difference, resistance), lower);
        assertThat(flows).isCloseTo(bearable, within(amperes(List.of(lower, higher), bearable)));
    }

    /** A pack that gives half, of two alike, gives half whatever the two rest at. */
    @Property
    void moreLoadIsDividedAsTheConductancesAre(
            @ForAll("branches") List<Branches.Branch> all,
            @ForAll @Scale(6) @DoubleRange(min = -500.0, max = 500.0) double drawn,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double more) {
        Branches branches = new Branches(all);
        double conductance = all.stream().mapToDouble(each -> 1.0 / each.resistance()).sum();
        for (int k = 0; k < all.size(); k++) {
            double share = 1.0 / (all.get(k).resistance() * conductance);
            assertThat(branches.current(k, drawn + more) - branches.current(k, drawn))
                    .isCloseTo(share * more, within(amperes(all, drawn)));
        }
    }

    /** What the voltages are rounded to, across the least resistance. */
    private static double amperes(List<Branches.Branch> all, double drawn) {
        double least = all.stream().mapToDouble(Branches.Branch::resistance).min().orElseThrow();
        return ROUNDING * (Math.abs(drawn) + 100.0 / least * all.size());
    }
}
