package brakewright.cli;

import brakewright.cli.history.History;
import brakewright.cli.json.HistoryJson;
import brakewright.cli.report.HistoryReport;
import brakewright.cli.text.HistoryText;
import brakewright.cli.text.Manuscript;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Tells what changed from one worksheet that was kept to the next. */
@Command(
        name = "history",
        description = {
            "Say what changed in settings and results between worksheets that were kept as JSON.",
            "They follow each other in the order of their names, so begin these with the date."
        },
        mixinStandardHelpOptions = true)
final class HistoryCommand implements Callable<Integer> {

    @Parameters(
            index = "0",
            paramLabel = "FOLDER",
            description =
                    "Where they were kept: worksheet --format json --output FOLDER/NAME.json.")
    Path folder = Path.of("");

    @Mixin DocumentOption form = new DocumentOption();

    @Mixin OutputOptions output = new OutputOptions();

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        if (!Files.isDirectory(folder)) {
            throw new Unusable(folder + ": there is no such folder");
        }
        output.claim();
        History history = read();
        if (history.sheets().isEmpty()) {
            throw new Unusable(
                    folder
                            + ": no worksheet was kept here; for example brakewright worksheet"
                            + " board.toml --format json --output board/2026-05-02.json");
        }
        output.write(
                form.told(
                        () -> new HistoryText(history, page.units, output.ink(page)).text(),
                        () -> HistoryJson.of(history),
                        () -> {
                            Manuscript written = new Manuscript();
                            new HistoryText(history, page.units, written.ink()).text();
                            return HistoryReport.of(history, written.pieces(), page.units);
                        }),
                spec.commandLine().getOut());
        return ExitStatus.FINE;
    }

    private History read() {
        try {
            return History.of(folder);
        } catch (IOException unreadable) {
            throw new Unusable(folder + ": a worksheet cannot be read", unreadable);
        }
    }
}
