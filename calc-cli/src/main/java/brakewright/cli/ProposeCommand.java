package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.json.ProposeJson;
import brakewright.cli.report.Report;
import brakewright.cli.report.SetsReport;
import brakewright.cli.text.Ink;
import brakewright.cli.text.Manuscript;
import brakewright.cli.text.ProposeText;
import brakewright.profile.Proposals;
import brakewright.profile.Recommendation;
import brakewright.profile.Situation;
import brakewright.worksheet.Worksheet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Proposes complete sets of settings. */
@Command(
        name = "propose",
        description = "Propose complete sets of settings that hold together, to paste.",
        mixinStandardHelpOptions = true)
final class ProposeCommand implements Callable<Integer> {

    @Mixin BuildArgument build = new BuildArgument();

    @Mixin DocumentOption form = new DocumentOption();

    @Mixin SituationOptions asked = new SituationOptions();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        BuildFile file = asked.applied(build.read());
        Situation situation = Vehicles.of(file).situation();
        Proposals proposals = Proposals.of(situation, file.build().settings(), page.units.entry());
        Recommendation present = Recommendation.judged(situation, file.build().settings());
        output.write(
                form.told(
                        () -> text(file, proposals, present, output.ink(page)),
                        () -> ProposeJson.of(file.title(), file.changes(), proposals, present),
                        () -> report(file, proposals, present)),
                spec.commandLine().getOut());
        return proposals.obstacle().isEmpty() ? ExitStatus.FINE : ExitStatus.OUTSIDE;
    }

    private String text(BuildFile file, Proposals proposals, Recommendation present, Ink ink) {
        return new ProposeText(file.title(), file.changes(), proposals, present, page.units, ink)
                .text();
    }

    private Report report(BuildFile file, Proposals proposals, Recommendation present) {
        Manuscript written = new Manuscript();
        text(file, proposals, present, written.ink());
        Map<String, Worksheet> sheets = new LinkedHashMap<>();
        sheets.put("present", Worksheet.of(present.build()));
        proposals
                .sets()
                .forEach(
                        each ->
                                sheets.put(
                                        each.kind().key().replace('-', ' '),
                                        Worksheet.of(each.set().build())));
        return SetsReport.of(
                file.title(), "Sets that hold together", written.pieces(), sheets, page.units);
    }
}
