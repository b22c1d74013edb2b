package brakewright.replay;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;

/** Roads of a few legs, steep and level, some with a stop. */
public final class AnyRoute extends DomainContextBase {

    @Provide
    public Arbitrary<Route> routes() {
        return legs().list().ofMinSize(1).ofMaxSize(5).map(Route::new);
    }

    private static Arbitrary<Leg> legs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(5.0, 900.0),
                        Arbitraries.doubles().between(-0.08, 0.08),
                        Arbitraries.doubles().between(1.0, 15.0),
                        Arbitraries.of(List.of(0.0, 0.0, 5.0, 90.0)))
                .as(
                        (length, steepness, speed, standing) ->
                                new Leg(length, length * steepness, speed, standing));
    }
}
