package riding;

import brakewright.assembly.Value;
import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * A program of its own: reads a build file, evaluates it, writes it back, reads that again, and tells
 * the program that has the core alone every input.
 */
public final class ReadsAndWrites {

    private ReadsAndWrites() {}

    public static void main(String[] names) throws Exception {
        ReferenceTables tables = ReferenceTables.load();
        BuildFile file = BuildFile.read(Files.readAllBytes(Path.of(names[0])), tables);
        Path written = Path.of(names[1]);
        Files.writeString(written, file.toml());
        BuildFile again = BuildFile.read(Files.readAllBytes(written), tables);
        Files.write(Path.of(names[2]), told(file));
        System.out.println(again.build().equals(file.build()));
        System.out.println(Worksheet.of(file.build()).limits().motorBrake().value());
        try {
            BuildFile.read("{\"rider\": {}}".getBytes(StandardCharsets.UTF_8), tables);
        } catch (BuildFileException wrong) {
            System.out.println(wrong.problems().size());
        }
    }

    /** A key, which form its value has, and the value; not what only build files look up. */
    private static List<String> told(BuildFile file) {
        Set<Input> lookedUp =
                Set.of(
                        Input.WIRING_WIRE,
                        Input.WIRING_LENGTH,
                        Input.WIRING_PLUG,
                        Input.WIRING_FUSE_FAMILY);
        return file.inputs().entrySet().stream()
                .filter(each -> !lookedUp.contains(each.getKey()))
                .map(each -> each.getKey().key() + " " + told(each.getValue().value()))
                .toList();
    }

    private static String told(Value value) {
        if (value instanceof Value.Number number) {
            return "number " + number.quantity().value();
        }
        if (value instanceof Value.Pair pair) {
            return "pair " + pair.first() + " " + pair.second();
        }
        if (value instanceof Value.Points points) {
            return "curve "
                    + DoubleStream.concat(
                                    Arrays.stream(points.curve().abscissas()),
                                    Arrays.stream(points.curve().ordinates()))
                            .mapToObj(String::valueOf)
                            .collect(Collectors.joining(" "));
        }
        return "word " + ((Value.Word) value).text();
    }
}
