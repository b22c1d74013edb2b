package brakewright.cli;

import brakewright.buildfile.KeyGuide;
import brakewright.cli.text.KeyText;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains the keys of a build file. */
@Command(
        name = "keys",
        description =
                "Explain a key of the build file: what it is, its range and units, an example, where"
                        + " to find its value, what is taken without it.",
        mixinStandardHelpOptions = true)
final class KeysCommand implements Callable<Integer> {

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "KEY",
            completionCandidates = Offered.Keys.class,
            description = {
                "A key, for example pack.series, or its last part; or a table, for example"
                        + " pack.protection. Without it all keys are listed."
            })
    String key = "";

    @Mixin PageOptions page = new PageOptions();

    @Spec CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        ReferenceTables tables = Ahead.tables();
        KeyGuide guide = new KeyGuide(tables);
        KeyText text = new KeyText(tables, page.ink());
        List<KeyGuide.Entry> found = key.isBlank() ? guide.all() : guide.find(key);
        if (found.isEmpty()) {
            throw new Unusable(
                    "\""
                            + key
                            + "\" is no key of a build file"
                            + guide.nearest(key)
                                    .map(nearest -> "; the nearest is " + nearest)
                                    .orElse("; brakewright keys lists them all"));
        }
        spec.commandLine()
                .getOut()
                .print(found.size() == 1 ? text.one(found.get(0)) : text.list(found));
        return ExitStatus.FINE;
    }
}
