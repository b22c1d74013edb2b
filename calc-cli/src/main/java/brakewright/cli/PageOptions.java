package brakewright.cli;

import brakewright.cli.text.Ink;
import brakewright.cli.words.UnitSystem;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Option;

/** How text is shown. */
final class PageOptions {

    @Option(names = "--plain", description = "Use plain ASCII and no colour.")
    boolean plain;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "Show speeds and distances in ${COMPLETION-CANDIDATES} (default: si).")
    UnitSystem units = UnitSystem.SI;

    Ink ink() {
        return new Ink(!plain && Ansi.AUTO.enabled(), plain || Terminal.isPlain());
    }
}
