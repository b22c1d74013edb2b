package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.formula.Derivation;
import brakewright.formula.Origin;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.formula.WrittenFormula;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Wiring;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** Every limit follows from the terms of its derivation by the formulas printed beside them. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class DerivationProperties {

    private static final double RELATIVE = 1e-9;

    /** A force or a current may be a small difference of large ones [any unit]. */
    private static final double ABSOLUTE = 1e-9;

    /** To which the current that heats a winding is searched, magnified by what it heats [A]. */
    private static final double SEARCHED = 1e-6;

    /**
     * What comes from no step and no input: a constant, what is searched, the charge state that is
     * asked about, the share of one of several packs, the voltage of the others, and the limit of
     * the pack current that has an explanation of its own.
     */
    private static final Set<String> STARTS = Set.of("g", "I", "s", "w", "U_o", "I_p");

    private static final String SINCE = Constraint.NO_BOUND;

    private static List<Build> builds() {
        Build board = Builds.trailBoard();
        return List.of(
                board,
                Builds.parcelTrike(),
                Builds.dockCart(),
                joined(board, Joining.PARALLEL),
                joined(board, Joining.SERIES),
                late(board),
                late(Builds.dockCart()),
                late(joined(board, Joining.PARALLEL)),
                late(joined(board, Joining.SERIES)));
    }

    /** A regen limiter that the charge trip does not wait for. */
    private static Build late(Build build) {
        return Builds.withLateLimiter(build, 0.02, 0.009);
    }

    /** A second pack like the first, but with fewer cells and other joints. */
    private static Build joined(Build build, Joining joining) {
        Pack first = Builds.pack(build);
        Pack second =
                first.withSeries(joining == Joining.PARALLEL ? first.series() : 2)
                        .withParallel(first.parallel() / 2)
                        .withJointResistance(2.0 * first.jointResistance());
        return Builds.withBattery(
                build, new Battery(List.of(first, second), joining, Wiring.NONE, 0.004));
    }

    /** All constraints of all limits, those of the packs at one charge state and temperature. */
    private static List<Constraint> constraints(Build build, double charge, double temperatureC) {
        Limits limits = Limits.of(build);
        List<Constraint> all = new ArrayList<>();
        for (Limit limit :
                List.of(
                        limits.motorDrive(),
                        limits.motorBrake(),
                        limits.speedCap(),
                        limits.packRegen().at(charge, temperatureC),
                        limits.packRegen().staticPart(temperatureC),
                        limits.packDischarge().at(charge, temperatureC),
                        limits.packDischarge().staticPart(temperatureC))) {
            all.addAll(limit.constraints());
        }
        for (TaperLimit taper : List.of(limits.lowVoltageTaper(), limits.highVoltageTaper())) {
            all.addAll(taper.ends());
            all.add(taper.band());
        }
        for (int place = 0; place < build.battery().packs().size(); place++) {
            all.addAll(OnePack.giving(build, place).at(charge, temperatureC).constraints());
            all.addAll(OnePack.taking(build, place).at(charge, temperatureC).constraints());
        }
        return all;
    }

    /** The formula, evaluated as it is written; it names all terms, once each. */
    private static double evaluated(String formula, Derivation derivation) {
        WrittenFormula.Evaluated evaluated =
                WrittenFormula.evaluate(formula, values(derivation.terms()));
        assertThat(evaluated.used()).isEqualTo(values(derivation.terms()).keySet());
        return evaluated.value();
    }

    private static Map<String, Double> values(List<Term> terms) {
        Map<String, Double> values = new HashMap<>();
        for (Term term : terms) {
            assertThat(values.put(term.symbol(), term.value())).as(term.symbol()).isNull();
        }
        return values;
    }

    private static void isGivenBy(double value, Derivation derivation, double absolute) {
        assertThat(evaluated(derivation.formula(), derivation))
                .as(derivation::toString)
                .isCloseTo(value, within(RELATIVE * Math.abs(value) + absolute));
        assertThat(derivation.source()).isNotBlank().doesNotEndWith(".");
    }

    /** A constraint that permits any value says which inequality makes it so. */
    private static void isFree(Derivation derivation) {
        assertThat(derivation.formula()).startsWith(SINCE);
        String inequality = derivation.formula().substring(SINCE.length());
        boolean isLeast = inequality.contains("≥");
        String[] sides = inequality.split("[≥≤]");
        assertThat(sides).hasSize(2);
        double left = evaluated(sides[0], derivation);
        double right = WrittenFormula.evaluate(sides[1], Map.of()).value();
        assertThat(isLeast ? left - right : right - left).isNotNegative();
    }

    private static void recompute(Constraint constraint, boolean strictly) {
        double absolute =
                constraint.id() == ConstraintId.WINDING_HEAT && !strictly ? SEARCHED : ABSOLUTE;
        for (int place = 0; place < constraint.steps().size(); place++) {
            Step step = constraint.steps().get(place);
            isGivenBy(step.result().value(), step.derivation(), ABSOLUTE);
            isFound(constraint, step.derivation().terms(), place);
            assertThat(step.result().origin()).isEqualTo(Origin.Found.WORKED_OUT);
        }
        if (Double.isInfinite(constraint.limit())) {
            isFree(constraint.derivation());
        } else {
            isGivenBy(constraint.limit(), constraint.derivation(), absolute);
        }
        isFound(constraint, constraint.derivation().terms(), constraint.steps().size());
        isReadable(constraint);
    }

    /**
     * What is said to be worked out above is, and little comes from neither a step nor an input.
     */
    private static void isFound(Constraint constraint, List<Term> terms, int before) {
        List<Term> found =
                constraint.steps().subList(0, before).stream().map(Step::result).toList();
        for (Term term : terms) {
            if (term.origin() == Origin.Found.WORKED_OUT) {
                assertThat(found).as(constraint::toString).contains(term);
            } else if (term.origin() instanceof Origin.Found) {
                assertThat(STARTS).as(constraint::toString).contains(term.symbol());
            }
        }
    }

    /**
     * No step is idle: a later one or a curve needs it; none is told twice, and what is printed
     * fits its columns.
     */
    private static void isReadable(Constraint constraint) {
        Set<String> symbols = new HashSet<>();
        List<Term> used = new ArrayList<>(constraint.derivation().terms());
        constraint.steps().forEach(step -> used.addAll(step.derivation().terms()));
        used.addAll(constraint.conditions());
        for (Step step : constraint.steps()) {
            assertThat(symbols.add(step.result().symbol())).as(step::toString).isTrue();
            assertThat(used).as(step::toString).contains(step.result());
        }
        used.forEach(
                term -> {
                    assertThat(term.value()).isNotNaN();
                    assertThat(term.symbol()).hasSizeBetween(1, 6);
                    assertThat(term.meaning()).isNotBlank().hasSizeLessThan(35);
                });
    }

    @Example
    void everyLimitOfTheExampleBuildsFollowsFromItsTerms() {
        for (Build build : builds()) {
            for (double charge : new double[] {0.0, 0.55, 0.9, 1.0}) {
                for (double temperature : new double[] {-30.0, 2.0, 25.0, 70.0}) {
                    constraints(build, charge, temperature)
                            .forEach(constraint -> recompute(constraint, true));
                }
            }
        }
    }

    @Property(tries = 150)
    void everyLimitFollowsFromItsTerms(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -25.0, max = 65.0) double temperatureC) {
        constraints(build, charge, temperatureC)
                .forEach(constraint -> recompute(constraint, false));
        constraints(build, charge, build.battery().temperatureC())
                .forEach(constraint -> recompute(constraint, false));
    }

    @Example
    void theExampleBuildsHaveEveryConstraintBetweenThem() {
        Set<ConstraintId> found = EnumSet.noneOf(ConstraintId.class);
        for (Build build : builds()) {
            constraints(build, 0.5, 25.0).forEach(each -> found.add(each.id()));
        }
        // What the settings leave of the brake and what a fuse breaks is asked in a review; cells
        // whose charge rating falls with the charge are drawn in the law above.
        assertThat(found)
                .isEqualTo(
                        EnumSet.complementOf(
                                EnumSet.of(
                                        ConstraintId.CELL_CHARGE_RATING_AT_CHARGE,
                                        ConstraintId.FUSE_VOLTAGE_RATING,
                                        ConstraintId.REMAINING_BRAKE,
                                        ConstraintId.WANTED_DECELERATION)));
    }

    /** A number that names an input is that input, not something worked out from it. */
    @Property(tries = 100)
    void whatNamesAnInputIsThatInput(@ForAll Build build) {
        Map<Input, Double> given = new HashMap<>();
        given.put(Input.VEHICLE_GRIP, build.vehicle().grip());
        given.put(Input.VEHICLE_MASS_CENTRE_HEIGHT, build.vehicle().axles().massCentreHeight());
        given.put(Input.RIDER_SUPPORT_HALF_LENGTH, build.rider().supportHalfLength());
        given.put(Input.CRITERIA_RIDER_DECELERATION_MAX, build.criteria().riderDecelerationMax());
        given.put(Input.MOTOR_WINDING_LIMIT, build.motor().windingLimitC());
        given.put(Input.USE_AMBIENT, build.use().climate().ambientC());
        given.put(Input.USE_SPEED_MAX, build.use().speedMax());
        given.put(Input.USE_CHARGE_FROM, build.use().chargeFrom());
        given.put(Input.USE_CHARGE_TO, build.use().chargeTo());
        given.put(Input.CONTROLLER_VOLTAGE_RATING, build.controllers().voltageRating());
        given.put(Input.CONTROLLER_COUNT, (double) build.controllers().count());
        for (Constraint constraint : constraints(build, 0.5, 25.0)) {
            Stream.concat(
                            Stream.of(constraint.derivation()),
                            constraint.steps().stream().map(Step::derivation))
                    .flatMap(derivation -> derivation.terms().stream())
                    .forEach(
                            term -> {
                                if (term.origin() instanceof Origin.Given from
                                        && given.containsKey(from.input())) {
                                    assertThat(term.value())
                                            .as(term::toString)
                                            .isEqualTo(given.get(from.input()));
                                }
                            });
        }
    }

    /** The law can fail: another formula, another number and a term too many are noticed. */
    @Example
    void anotherDerivationWouldBeFound() {
        Constraint grip =
                Limits.of(Builds.trailBoard()).motorBrake().constraints().stream()
                        .filter(each -> each.id() == ConstraintId.GRIP)
                        .findFirst()
                        .orElseThrow();
        recompute(grip, true);
        Derivation right = grip.derivation();
        for (Derivation wrong :
                List.of(
                        new Derivation(right.formula() + " + 1", right.source(), right.terms()),
                        new Derivation(
                                right.formula().replace("I_d", "0"), right.source(), right.terms()),
                        new Derivation(
                                right.formula(),
                                right.source(),
                                right.terms().subList(1, right.terms().size())))) {
            assertThatThrownBy(() -> recompute(with(grip, wrong, grip.steps()), true))
                    .isInstanceOfAny(AssertionError.class, IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> recompute(with(grip, right, List.of()), true))
                .isInstanceOf(AssertionError.class);
    }

    private static Constraint with(Constraint like, Derivation derivation, List<Step> steps) {
        return new Constraint(
                like.id(),
                like.limit(),
                like.decisive(),
                like.conditions(),
                steps,
                derivation,
                like.pack());
    }
}
