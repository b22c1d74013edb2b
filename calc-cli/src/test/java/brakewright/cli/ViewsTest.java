package brakewright.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.FuseDuty;
import brakewright.braking.Descent;
import brakewright.braking.DescentEnd;
import brakewright.braking.StopOutcome;
import brakewright.cli.text.AskingView;
import brakewright.cli.text.CalculatingView;
import brakewright.cli.text.MakingView;
import brakewright.cli.text.SearchingView;
import brakewright.driving.Climb;
import brakewright.driving.Cruise;
import brakewright.driving.MeasuredRange;
import brakewright.driving.StandingStart;
import brakewright.driving.StopAndGo;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.Fitted;
import brakewright.fitting.WarmResistance;
import brakewright.heat.DoubtedHeat;
import brakewright.heat.PackHeat;
import brakewright.heat.RepeatedStops;
import brakewright.heat.WarmRide;
import brakewright.limit.BrakingTime;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Signal;
import brakewright.limit.Standing;
import brakewright.limit.TaperLimit;
import brakewright.operation.FirstStop;
import brakewright.operation.HardPull;
import brakewright.operation.Recovery;
import brakewright.operation.RegenOvershoot;
import brakewright.operation.Sag;
import brakewright.operation.Sharing;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.Spending;
import brakewright.powertrain.TopSpeed;
import brakewright.profile.Situation;
import brakewright.profile.Solver;
import brakewright.profile.Variation;
import brakewright.recording.BothWays;
import brakewright.recording.ChargeBand;
import brakewright.recording.CurrentSign;
import brakewright.recording.Energy;
import brakewright.recording.Exceeded;
import brakewright.recording.Extreme;
import brakewright.recording.Gap;
import brakewright.recording.HardChange;
import brakewright.recording.HeldLimits;
import brakewright.recording.Moment;
import brakewright.recording.Pace;
import brakewright.recording.Piece;
import brakewright.recording.Place;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repair;
import brakewright.recording.Repairs;
import brakewright.recording.Ride;
import brakewright.recording.Satellites;
import brakewright.recording.SpeedSource;
import brakewright.recording.Untold;
import brakewright.recording.Ways;
import brakewright.replay.AgainstModel;
import brakewright.replay.BeyondLimit;
import brakewright.replay.Compared;
import brakewright.replay.Figure;
import brakewright.replay.HeldBack;
import brakewright.replay.Holder;
import brakewright.replay.RidePoint;
import brakewright.replay.RideTotals;
import brakewright.replay.Route;
import brakewright.replay.RouteEnd;
import brakewright.replay.RouteRide;
import brakewright.replay.Traced;
import brakewright.replay.Underway;
import brakewright.review.BrakeVerdict;
import brakewright.review.Condition;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import brakewright.review.FindingDetail;
import brakewright.review.Review;
import brakewright.review.Topic;
import brakewright.review.Verdict;
import brakewright.review.VerdictPart;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import org.junit.jupiter.api.Test;

/**
 * Views read what the core has worked out: they call no model and make nothing of the core. {@link
 * LayersTest} holds the views to it, here each rule finds one that does not keep it.
 */
class ViewsTest {

    private static final String[] VIEWS = {
        "brakewright.cli.words..",
        "brakewright.cli.text..",
        "brakewright.cli.json..",
        "brakewright.cli.report..",
        "brakewright.cli.html..",
        "brakewright.cli.markdown.."
    };

    /** What sheets, profiles and findings hold: records, and the names of things. */
    private static final Class<?>[] RESULTS = {
        FuseDuty.class,
        BrakingTime.class,
        Constraint.class,
        ConstraintId.class,
        Limit.class,
        LimitId.class,
        Signal.class,
        Standing.class,
        TaperLimit.class,
        DriveState.class,
        TopSpeed.Holder.class,
        TopSpeed.Result.class,
        BrakeVerdict.class,
        Condition.class,
        Evaluation.class,
        Finding.class,
        FindingDetail.class,
        FirstStop.class,
        HardPull.Opened.class,
        HardPull.Opening.class,
        Recovery.class,
        RegenOvershoot.class,
        Review.class,
        Sag.class,
        Sharing.class,
        Topic.class,
        Verdict.class,
        VerdictPart.class,
        Climb.class,
        Cruise.class,
        Descent.class,
        DescentEnd.class,
        DoubtedHeat.class,
        MeasuredRange.class,
        PackHeat.class,
        StandingStart.Reached.class,
        RepeatedStops.class,
        Spending.class,
        StopAndGo.class,
        StopOutcome.class,
        WarmRide.class,
        BothWays.class,
        Satellites.class,
        ChargeBand.class,
        CurrentSign.class,
        Energy.class,
        Exceeded.class,
        Extreme.class,
        Gap.class,
        HardChange.class,
        HeldLimits.class,
        Moment.class,
        Pace.class,
        Piece.class,
        Place.class,
        Quantity.class,
        Recording.class,
        Repair.class,
        Repairs.class,
        Ride.class,
        SpeedSource.class,
        Untold.class,
        Ways.class,
        Fit.class,
        Fit.Found.class,
        Fit.Refused.class,
        Fits.class,
        Fitted.class,
        WarmResistance.class,
        AgainstModel.class,
        BeyondLimit.class,
        Compared.class,
        Figure.class,
        HeldBack.class,
        Holder.class,
        RidePoint.class,
        RideTotals.class,
        Route.class,
        RouteEnd.class,
        RouteRide.class,
        Traced.class,
        Underway.class,
    };

    /** They ask a vehicle over and over. */
    private static final Class<?>[] SEARCHES = {Situation.class, Solver.class, Variation.class};

    @ArchTest
    static final ArchRule VIEWS_KNOW_RESULTS_AND_NO_MODEL =
            classes()
                    .that()
                    .resideInAnyPackage(VIEWS)
                    .should()
                    .onlyDependOnClassesThat(
                            resideOutsideOfPackage("brakewright..")
                                    .or(
                                            resideInAnyPackage(
                                                    "brakewright.cli.*..",
                                                    "brakewright.buildfile..",
                                                    "brakewright.assembly..",
                                                    "brakewright.spec..",
                                                    "brakewright.formula..",
                                                    "brakewright.explain..",
                                                    "brakewright.tables..",
                                                    "brakewright.worksheet..",
                                                    "brakewright.profile.."))
                                    .or(
                                            describe(
                                                    "are results",
                                                    type ->
                                                            belongToAnyOf(RESULTS)
                                                                    .test(
                                                                            type
                                                                                    .getBaseComponentType()))));

    @ArchTest
    static final ArchRule VIEWS_SEARCH_FOR_NOTHING =
            noClasses()
                    .that()
                    .resideInAnyPackage(VIEWS)
                    .should()
                    .dependOnClassesThat(belongToAnyOf(SEARCHES));

    /** A sheet is made by a command; a view that made one would compute what it prints. */
    @ArchTest
    static final ArchRule VIEWS_MAKE_NOTHING_OF_THE_CORE =
            noClasses()
                    .that()
                    .resideInAnyPackage(VIEWS)
                    .should()
                    .accessTargetWhere(
                            describe(
                                    "it makes something of the core",
                                    (JavaAccess<?> access) -> isMaking(access)));

    /** Constructors, and static methods but those that every enum has. */
    private static boolean isMaking(JavaAccess<?> access) {
        return access.getTarget() instanceof CodeUnitAccessTarget target
                && target.getOwner().getPackageName().startsWith("brakewright.")
                && !target.getOwner().getPackageName().startsWith("brakewright.cli")
                && !target.getOwner().getPackageName().startsWith("brakewright.buildfile")
                && !target.getOwner().isEnum()
                && (target.getName().equals("<init>")
                        || target.resolveMember()
                                .filter(
                                        member ->
                                                member.getModifiers().contains(JavaModifier.STATIC))
                                .isPresent());
    }

    @Test
    void aViewThatCallsAModelIsFound() {
        assertThat(isBroken(VIEWS_KNOW_RESULTS_AND_NO_MODEL, CalculatingView.class)).isTrue();
        assertThat(isBroken(VIEWS_KNOW_RESULTS_AND_NO_MODEL, AskingView.class)).isTrue();
    }

    @Test
    void aViewThatSearchesIsFound() {
        assertThat(isBroken(VIEWS_SEARCH_FOR_NOTHING, SearchingView.class)).isTrue();
    }

    @Test
    void aViewThatMakesASheetIsFound() {
        assertThat(isBroken(VIEWS_MAKE_NOTHING_OF_THE_CORE, MakingView.class)).isTrue();
        assertThat(isBroken(VIEWS_KNOW_RESULTS_AND_NO_MODEL, MakingView.class)).isFalse();
    }

    private static boolean isBroken(ArchRule rule, Class<?> view) {
        return rule.evaluate(new ClassFileImporter().importClasses(view)).hasViolation();
    }
}
