package brakewright.cli;

import brakewright.cli.text.Ink;
import brakewright.cli.words.UnitSystem;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How text is shown. */
final class PageOptions {

    @Option(names = "--plain", description = "Use plain ASCII and no colour.")
    boolean plain;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "Show speeds and distances in ${COMPLETION-CANDIDATES} (default: si).")
    UnitSystem units = UnitSystem.SI;

    @Spec(Spec.Target.MIXEE)
    CommandSpec command = CommandSpec.create();

    /** As wide as the help of the command, which follows the terminal. */
    Ink ink() {
        return new Ink(
                !plain && Ansi.AUTO.enabled(),
                plain || Terminal.isPlain(),
                command.root().usageMessage().width());
    }
}
