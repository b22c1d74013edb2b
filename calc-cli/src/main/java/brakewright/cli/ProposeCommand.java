package brakewright.cli;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.json.ProposeJson;
import brakewright.cli.text.ProposeText;
import brakewright.profile.Proposals;
import brakewright.profile.Recommendation;
import brakewright.profile.Situation;
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

    @Mixin FormatOption form = new FormatOption();

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
                form.isJson()
                        ? ProposeJson.of(file.title(), file.changes(), proposals, present)
                        : new ProposeText(
                                        file.title(),
                                        file.changes(),
                                        proposals,
                                        present,
                                        page.units,
                                        output.ink(page))
                                .text(),
                spec.commandLine().getOut());
        return proposals.obstacle().isEmpty() ? ExitStatus.FINE : ExitStatus.OUTSIDE;
    }
}
