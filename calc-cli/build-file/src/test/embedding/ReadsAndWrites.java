package riding;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.Worksheet;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A program of its own: reads a build file, evaluates it, writes it back, and reads that again. */
public final class ReadsAndWrites {

    private ReadsAndWrites() {}

    public static void main(String[] names) throws Exception {
        ReferenceTables tables = ReferenceTables.load();
        BuildFile file = BuildFile.read(Files.readAllBytes(Path.of(names[0])), tables);
        Path written = Path.of(names[1]);
        Files.writeString(written, file.toml());
        BuildFile again = BuildFile.read(Files.readAllBytes(written), tables);
        System.out.println(again.build().equals(file.build()));
        System.out.println(Worksheet.of(file.build()).limits().motorBrake().value());
        try {
            BuildFile.read("{\"rider\": {}}".getBytes(StandardCharsets.UTF_8), tables);
        } catch (BuildFileException wrong) {
            System.out.println(wrong.problems().size());
        }
    }
}
