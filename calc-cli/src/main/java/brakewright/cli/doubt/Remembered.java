package brakewright.cli.doubt;

import brakewright.assembly.Resolved;
import brakewright.buildfile.BuildFile;
import brakewright.limit.UsedInput;
import brakewright.worksheet.Worksheet;
import java.util.List;

/** What a verdict rests on that is known from memory alone. */
public final class Remembered {

    private Remembered() {}

    /**
     * Names such inputs.
     *
     * @param file where the vehicle is from
     * @param sheet of the vehicle
     * @return the names that worksheets have for them, in the order in which the limits use them
     */
    public static List<String> in(BuildFile file, Worksheet sheet) {
        return sheet.restsOn().stream()
                .filter(each -> isRemembered(file, each))
                .map(each -> BuildFile.nameOf(each.input(), each.pack()))
                .distinct()
                .toList();
    }

    private static boolean isRemembered(BuildFile file, UsedInput used) {
        return file.find(used.input(), used.pack()).map(Resolved::isFromMemory).orElse(false);
    }
}
