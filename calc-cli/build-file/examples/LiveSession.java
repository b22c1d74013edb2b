import brakewright.buildfile.BuildFile;
import brakewright.live.Horizon;
import brakewright.live.LiveLimits;
import brakewright.live.MeasuringDoubt;
import brakewright.tables.ReferenceTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * A live session: each row of a ride as it comes in, and beside what was measured what was permitted.
 * The ride is invented. At the top of the project, once it is built:
 *
 * <pre>{@code
 * java -cp calc-cli/target/brakewright.jar calc-cli/build-file/examples/LiveSession.java \
 *     calc-cli/examples/vineyard-trail-board.toml calc-cli/build-file/examples/invented-ride.csv
 * }</pre>
 */
public final class LiveSession {

    /** Of this sensor: 0.1 V, 0.3 A, and the resistance of the pack to a fifth. */
    private static final MeasuringDoubt DOUBT = new MeasuringDoubt(0.1, 0.3, 0.2);

    private LiveSession() {}

    /**
     * Prints one line for each row.
     *
     * @param files a build file and a ride
     * @throws Exception if one of them cannot be read
     */
    public static void main(String[] files) throws Exception {
        byte[] board = Files.readAllBytes(Path.of(files[0]));
        LiveLimits live =
                LiveLimits.of(BuildFile.read(board, ReferenceTables.load()).build()); // once
        System.out.println(
                "   time   speed  voltage  charge, fullest | into the pack, permitted |"
                        + " out of it, permitted | brake per motor  a voltage alone, 10 s");
        System.out.println(
                "      s     m/s        V       %        % |         A          A      |"
                        + "      A          A    |               A                  A");
        for (String line : Files.readAllLines(Path.of(files[1]))) {
            if (Character.isDigit(line.charAt(0))) {
                row(live, Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray());
            }
        }
    }

    /** What a program on board does many times a second. */
    private static void row(LiveLimits live, double[] row) {
        double speed = row[1];
        double voltage = row[2];
        double out = row[3];
        double cells = row[4];
        double charge = live.charge(voltage, -out, cells);
        double fullest = live.greatestCharge(voltage, -out, cells, DOUBT);
        double emptiest = live.leastCharge(voltage, -out, cells, DOUBT);
        double mayTake = live.permittedRegenOrZeroA(fullest, cells);
        double mayGive = live.permittedDrawOrZeroA(emptiest, cells);
        double brake = live.permittedBrakeOrZeroA(speed, fullest, cells);
        double further = live.furtherRegenOrZeroA(voltage, cells, Horizon.TEN_SECONDS);
        double into = Math.max(0.0, -out);
        double drawn = Math.max(0.0, out);
        System.out.printf(
                Locale.ROOT,
                "%7.0f %7.1f %8.2f %7.1f %8.1f | %9.1f %10.2f %s | %6.1f %10.2f %s | %14.2f %18.2f%n",
                row[0],
                speed,
                voltage,
                100.0 * charge,
                100.0 * fullest,
                into,
                mayTake,
                into > mayTake ? "!!" : "  ",
                drawn,
                mayGive,
                drawn > mayGive ? "!!" : "  ",
                brake,
                further);
    }
}
