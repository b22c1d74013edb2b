package brakewright.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.FuseDuty;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.formula.Origin;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.formula.WrittenFormula;
import brakewright.operation.Sag;
import brakewright.operation.Sharing;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Unit;
import brakewright.spec.Wiring;
import brakewright.worksheet.HeatSheet;
import brakewright.worksheet.WarmStart;
import brakewright.worksheet.Worksheet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** Every step follows from its terms by the formula that is printed beside it. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class WorkingsProperties {

    private static final double RELATIVE = 1e-9;

    /** A temperature or a difference may be small beside what it comes from [any unit]. */
    private static final double ABSOLUTE = 1e-9;

    /** To which the worksheet finds a rest [s]. */
    private static final double REST = 1e-6;

    /**
     * What a search leaves open in vehicles that nobody would build: a speed [m/s] or current [A],
     * found to 1e-9, that the formula magnifies.
     */
    private static final double SEARCHED = 1e-5;

    /**
     * Likewise a time, told as the temperature that it stands for [K]: where the winding hardly
     * warms or cools any more, the time itself is hardly determined.
     */
    private static final double SEARCHED_TEMPERATURE = 1e-3;

    /** What is not set is taken from its limit, which has an explanation of its own. */
    private static final Set<String> STARTS = Set.of("I_m", "I_s");

    private static List<Build> builds() {
        Build board = Builds.trailBoard();
        return List.of(
                board,
                Builds.parcelTrike(),
                Builds.dockCart(),
                joined(board, Joining.PARALLEL),
                joined(board, Joining.SERIES));
    }

    /** A second pack like the first, but with half the cells and other joints. */
    private static Build joined(Build build, Joining joining) {
        Pack first = Builds.pack(build);
        Pack second =
                first.withSeries(joining == Joining.PARALLEL ? first.series() : 2)
                        .withParallel(first.parallel() / 2)
                        .withJointResistance(2.0 * first.jointResistance());
        return Builds.withBattery(
                build, new Battery(List.of(first, second), joining, Wiring.NONE, 0.004));
    }

    private static Optional<Working> working(Worksheet sheet, ResultId id) {
        WorkingOutcome outcome = Workings.of(sheet, id);
        assertThat(outcome.id()).isEqualTo(id);
        if (outcome instanceof WorkingMissing missing) {
            assertThat(missing.reason()).endsWith(".").hasSizeGreaterThan(20);
            return Optional.empty();
        }
        return Optional.of((Working) outcome);
    }

    /** The formula, evaluated as it is written, gives the value; it names all terms, once each. */
    private static void recompute(Step step, boolean strictly) {
        boolean searched = !strictly && step.note().startsWith("Found by search");
        double absolute =
                searched ? leftOpen(step) : step.result().symbol().equals("t_r") ? REST : ABSOLUTE;
        Map<String, Double> values = new HashMap<>();
        for (Term term : step.derivation().terms()) {
            assertThat(values.put(term.symbol(), term.value())).as(step.toString()).isNull();
        }
        WrittenFormula.Evaluated evaluated =
                WrittenFormula.evaluate(step.derivation().formula(), values);
        assertThat(evaluated.used()).as(step.toString()).isEqualTo(values.keySet());
        assertThat(evaluated.value())
                .as(step.toString())
                .isCloseTo(
                        step.result().value(),
                        within(RELATIVE * Math.abs(step.result().value()) + absolute));
        assertThat(step.derivation().source()).isNotBlank();
        assertThat(step.result().meaning()).isNotBlank().hasSizeLessThan(43);
        assertThat(step.derivation().terms())
                .allSatisfy(term -> assertThat(term.meaning()).hasSizeLessThan(43));
    }

    /** The formula of a time ends with the part that changes most and its rate. */
    private static double leftOpen(Step step) {
        if (step.result().unit() != Unit.SECOND) {
            return SEARCHED;
        }
        List<Term> terms = step.derivation().terms();
        double part = terms.get(terms.size() - 2).value();
        double rate = terms.get(terms.size() - 1).value();
        return SEARCHED_TEMPERATURE
                / Math.abs(part * rate * Math.exp(rate * step.result().value()));
    }

    /** What is said to be worked out above is the result of an earlier step. */
    private static void isFound(Working working, int place) {
        List<Term> found = working.steps().subList(0, place).stream().map(Step::result).toList();
        assertThat(working.steps().get(place).derivation().terms())
                .filteredOn(term -> term.origin() == Origin.Found.WORKED_OUT)
                .allSatisfy(
                        term ->
                                assertThat(found)
                                        .as(working.id() + ": " + working.steps().get(place))
                                        .contains(term));
    }

    /** What comes from no step that is told and from no input. */
    private static List<Term> unexplained(Step step) {
        return step.derivation().terms().stream()
                .filter(term -> term.origin() == Origin.Found.MODELLED)
                .filter(term -> !STARTS.contains(term.symbol()))
                .toList();
    }

    private static void check(Build build, boolean strictly) {
        Worksheet sheet = Worksheet.of(build);
        for (ResultId id : ResultId.values()) {
            working(sheet, id)
                    .ifPresent(
                            working -> {
                                working.steps().forEach(step -> recompute(step, strictly));
                                for (int i = 0; i < working.steps().size(); i++) {
                                    isFound(working, i);
                                }
                                assertThat(working.value()).isEqualTo(onSheet(sheet, id));
                                assertThat(last(working).result().unit()).isEqualTo(working.unit());
                                assertThat(last(working).result().value())
                                        .isEqualTo(working.value());
                            });
        }
    }

    private static Step last(Working working) {
        return working.steps().get(working.steps().size() - 1);
    }

    private static double onSheet(Worksheet sheet, ResultId id) {
        HeatSheet heat = sheet.heat();
        return switch (id) {
            case TOP_SPEED -> sheet.drive().topSpeedFlat().speed();
            case LAUNCH -> sheet.drive().launch();
            case CLIMB -> sheet.drive().climb().steepest();
            case TIME_TO_CRUISE -> sheet.drive().toCruise().orElseThrow().time();
            case SAG -> sag(sheet);
            case RANGE -> sheet.range().cruise().distance();
            case TOWN_RANGE -> sheet.range().town().orElseThrow().distance();
            case CONSUMPTION -> sheet.range().cruise().consumption();
            case CONTINUOUS_CURRENT -> heat.known().orElseThrow().continuousCurrent();
            case PULL_TIME ->
                    heat.known().orElseThrow().afterCruise() instanceof WarmStart.Borne borne
                                    && borne.lasts().isPresent()
                            ? borne.lasts().getAsDouble()
                            : heat.known().orElseThrow().timeAtDriveSetting().orElseThrow();
            case RECOVERY -> heat.known().orElseThrow().recovery().orElseThrow();
            case PACK_WARMING -> heat.packCruising().orElseThrow().endC();
            case PACK_SHARING ->
                    sheet.sharing().loads().stream()
                            .filter(Sharing.Load::isDraw)
                            .max((a, b) -> Double.compare(a.use(), b.use()))
                            .orElseThrow()
                            .current();
            case JOINING ->
                    sheet.sharing().joints().stream()
                            .mapToDouble(Sharing.Joint::difference)
                            .min()
                            .orElseThrow();
            case FIRST_STOP_TRIP -> sheet.firstStops().get(0).opensAfter();
            case HARD_PULL_TRIP -> sheet.hardPulls().get(0).after();
            case SHORT_CIRCUIT_CURRENT -> FuseDuty.hardest(sheet.build().battery()).current();
        };
    }

    /** The sheet has the charge state of the first meeting; the sag there follows by Ohm's law. */
    private static double sag(Worksheet sheet) {
        Sag.Case set = sheet.sag().cases().get(0);
        Sag.Draw drawn = set.draw();
        double charge = set.first().map(Sag.Meeting::charge).orElse(sheet.build().use().chargeTo());
        PackState state =
                PackState.of(new BatteryModel(sheet.build().battery()), charge, drawn.cellsC());
        double current = sheet.operation().drive().settledPackLimit(state);
        return state.voltage() - state.terminalVoltage(-current);
    }

    @Example
    void everyStepOfTheExampleBuildsFollowsFromItsTerms() {
        builds().forEach(build -> check(build, true));
    }

    /** Cells so soft that electronics leave less to the motors than the settings permit. */
    @Example
    void theStepsToCruiseSpeedFollowFromTheirTermsWherePowerIsShort() {
        int shorts = 0;
        for (double times = 5.0; times < 60.0; times *= 1.01) {
            Curve factor = Curve.constant(times);
            Build soft =
                    Builds.withCells(
                            Builds.trailBoard(),
                            cell -> Builds.withResistanceByCharge(cell, factor));
            working(Worksheet.of(soft), ResultId.TIME_TO_CRUISE)
                    .ifPresent(each -> each.steps().forEach(step -> recompute(step, false)));
            shorts += isShort(soft) ? 1 : 0;
        }
        assertThat(shorts).isPositive();
    }

    private static boolean isShort(Build build) {
        Worksheet sheet = Worksheet.of(build);
        double cruise = build.use().riding().cruiseSpeed();
        PackState pack =
                PackState.of(
                        sheet.limits().battery(),
                        sheet.drive().charge(),
                        build.battery().temperatureC());
        ElectricDrive drive = sheet.operation().drive();
        StandingStart pull = new StandingStart(build, drive, Road.LEVEL);
        return sheet.drive().toCruise().isPresent()
                && pull.thrust(cruise, pack) < drive.at(cruise, pack).thrust() - 1e-3;
    }

    @Property(tries = 100)
    void everyStepFollowsFromItsTerms(@ForAll Build build) {
        check(build, false);
    }

    @Example
    void theExampleBuildsHaveEveryResultBetweenThem() {
        Set<ResultId> found = EnumSet.noneOf(ResultId.class);
        for (Build build : builds()) {
            Worksheet sheet = Worksheet.of(build);
            for (ResultId id : ResultId.values()) {
                working(sheet, id).ifPresent(working -> found.add(working.id()));
            }
        }
        assertThat(found).containsExactlyInAnyOrder(ResultId.values());
    }

    @Example
    void onePackIsNeitherSharedNorJoined() {
        Worksheet sheet = Worksheet.of(Builds.trailBoard());
        assertThat(working(sheet, ResultId.PACK_SHARING)).isEmpty();
        assertThat(working(sheet, ResultId.JOINING)).isEmpty();
    }

    /** At the top speed the least thrust is the resistance. */
    @Example
    void thrustAndResistanceMeetAtTheTopSpeed() {
        for (Build build : builds()) {
            Working working = working(Worksheet.of(build), ResultId.TOP_SPEED).orElseThrow();
            assertThat(step(working, "F_t").result().value())
                    .isCloseTo(step(working, "F").result().value(), within(1e-6));
        }
    }

    /** The quarters of an integral agree with Simpson's rule on many points. */
    @Example
    void theQuartersOfTheTimeToCruiseAreIntegrals() {
        for (Build build : builds()) {
            Worksheet sheet = Worksheet.of(build);
            Optional<Working> working = working(sheet, ResultId.TIME_TO_CRUISE);
            if (working.isEmpty()) {
                continue;
            }
            PackState state =
                    PackState.of(
                            new BatteryModel(build.battery()),
                            sheet.drive().charge(),
                            build.battery().temperatureC());
            StandingStart pull = new StandingStart(build, sheet.operation().drive(), Road.LEVEL);
            double cruise = build.use().riding().cruiseSpeed();
            List<Term> parts = last(working.get()).derivation().terms();
            for (int part = 0; part < parts.size(); part++) {
                double time =
                        simpson(
                                speed -> 1.0 / pull.acceleration(speed, state),
                                cruise * part / parts.size(),
                                cruise * (part + 1) / parts.size());
                // The thrust bends where another limit takes over, so the rule is less exact.
                assertThat(parts.get(part).value()).isCloseTo(time, within(1e-5 * time));
            }
        }
    }

    /** Likewise the mean voltages of the range, against the roots of the quadratic itself. */
    @Example
    void theQuartersOfTheLoadedVoltageAreMeans() {
        for (Build build : builds()) {
            Working working = working(Worksheet.of(build), ResultId.RANGE).orElseThrow();
            Step mean = step(working, "V");
            double power = step(working, "p").result().value();
            double from = build.use().chargeFrom();
            double to = step(working, "E").derivation().terms().get(2).value();
            BatteryModel model = new BatteryModel(build.battery());
            DoubleUnaryOperator loaded =
                    charge -> {
                        double u = model.openCircuitVoltage(charge);
                        double r =
                                model.resistance(
                                        charge,
                                        build.battery().temperatureC(),
                                        Double.POSITIVE_INFINITY);
                        return (u + Math.sqrt(u * u - 4.0 * r * power)) / 2.0;
                    };
            for (int part = 0; part < 4; part++) {
                double upper = from + (to - from) * part / 4;
                double lower = from + (to - from) * (part + 1) / 4;
                // Simpson's rule meets knots of the curves inside a panel.
                assertThat(mean.derivation().terms().get(part).value())
                        .isCloseTo(simpson(loaded, lower, upper) / (upper - lower), within(1e-6));
            }
        }
    }

    private static double simpson(DoubleUnaryOperator integrand, double from, double to) {
        int panels = 20_000;
        double width = (to - from) / panels;
        double sum = integrand.applyAsDouble(from) + integrand.applyAsDouble(to);
        for (int i = 1; i < panels; i++) {
            sum += (i % 2 == 0 ? 2.0 : 4.0) * integrand.applyAsDouble(from + i * width);
        }
        return sum * width / 3.0;
    }

    private static Step step(Working working, String symbol) {
        return working.steps().stream()
                .filter(step -> step.result().symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    /** Only integrals, readings and searches come from nowhere: few, and said so in their names. */
    @Example
    void whatComesFromNoStepSaysWhatItIs() {
        for (Build build : builds()) {
            Worksheet sheet = Worksheet.of(build);
            for (ResultId id : EnumSet.of(ResultId.CONSUMPTION, ResultId.CLIMB, ResultId.LAUNCH)) {
                Optional<Working> working = working(sheet, id);
                working.ifPresent(
                        each ->
                                each.steps()
                                        .forEach(
                                                step ->
                                                        assertThat(unexplained(step))
                                                                .as(step.toString())
                                                                .isEmpty()));
            }
        }
    }

    @Example
    void anotherFormulaWouldBeFound() {
        assertThat(WrittenFormula.evaluate("√(a² + b²)/2", Map.of("a", 3.0, "b", 4.0)).value())
                .isEqualTo(2.5);
        assertThat(WrittenFormula.evaluate("−a + ½·b^2", Map.of("a", 3.0, "b", 4.0)).value())
                .isEqualTo(5.0);
        assertThatThrownBy(() -> WrittenFormula.evaluate("a·c", Map.of("a", 3.0)))
                .hasMessageContaining("no term");
    }
}
