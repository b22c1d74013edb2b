package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Changes;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.json.CheckJson;
import brakewright.cli.report.CheckReport;
import brakewright.cli.report.RecordBox;
import brakewright.cli.text.CheckText;
import brakewright.profile.Headrooms;
import brakewright.profile.Situation;
import brakewright.worksheet.CheckSheet;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Puts a proposal beside the present settings. */
@Command(
        name = "check",
        description = {
            "Say whether other settings are safe, and what they buy.",
            "Where keys of [use] are changed, both the present settings and those proposed are"
                    + " judged in the changed use."
        },
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    @Mixin BuildArgument build = new BuildArgument();

    @Mixin DocumentOption form = new DocumentOption();

    @Mixin StrictOption strict = new StrictOption();

    @Mixin ShowOptions.OfCheck show = new ShowOptions.OfCheck();

    @Mixin RecordOptions notes = new RecordOptions();

    @Mixin SituationOptions situation = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        show.settle(form.isText());
        RecordBox record = notes.box(form);
        BuildFile file = build.read();
        if (situation.isNone()) {
            throw new Unusable(
                    "nothing to check: give --with KEY=VALUE, for example --with"
                            + " motor_brake_current=42A, or --proposal NAME");
        }
        Changes changes = situation.changes(file);
        BuildFile present = SituationOptions.applied(file, changes.ofUse());
        BuildFile proposed = SituationOptions.applied(file, changes);
        CheckSheet check = CheckSheet.of(present.build(), proposed.build());
        Optional<Tolerated> tolerated = tolerated(proposed);
        Situation vehicle = Vehicles.of(proposed).situation();
        Headrooms headrooms =
                Headrooms.of(
                        vehicle,
                        check.present().build().settings(),
                        check.proposed().build().settings());
        Judged judged = Judged.of(vehicle, check.proposed(), tolerated);
        output.write(
                form.told(
                        () ->
                                text(
                                        new CheckText(
                                                proposed,
                                                check,
                                                headrooms,
                                                judged,
                                                page.units,
                                                output.ink(page))),
                        () -> CheckJson.of(proposed, check, headrooms, judged),
                        () ->
                                new CheckReport(
                                                proposed,
                                                check,
                                                headrooms,
                                                judged,
                                                page.units,
                                                record)
                                        .report()),
                spec.commandLine().getOut());
        return strict.status(judged.review().verdict().outcome(), judged.brake().word());
    }

    private String text(CheckText text) {
        return show.isAll()
                ? text.all()
                : show.isNone() ? text.onePage() : text.some(show.chosen());
    }

    private static Optional<Tolerated> tolerated(BuildFile file) {
        try {
            return Tolerated.of(file, 0, 0);
        } catch (BuildFileException wrong) {
            throw new Unusable("the tolerances reach values that do not go together", wrong);
        }
    }
}
