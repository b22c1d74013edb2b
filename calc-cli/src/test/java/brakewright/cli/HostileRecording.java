package brakewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Recordings of rides, spoiled in a few places. */
final class HostileRecording {

    private static final List<String> HEADS =
            List.of(
                    "time [s];speed [km/h];voltage [V];current [A];charge [%];lat;lon;altitude [m]",
                    "time,speed,voltage,current,soc,latitude,longitude,elevation",
                    "Timestamp\twheel speed\tvolts\tamps\tcharge\tlat\tlon\talt",
                    "distance [m];altitude [m];speed [km/h];stop [s]");

    private static final int MOST_ROWS = 80;
    private static final int MOST_FAULTS = 8;

    private final SplittableRandom random;
    private final List<List<String>> rows = new ArrayList<>();
    private final char separator;

    private HostileRecording(SplittableRandom random, String head) {
        this.random = random;
        this.separator = head.indexOf('\t') > 0 ? '\t' : head.indexOf(';') > 0 ? ';' : ',';
        rows.add(new ArrayList<>(List.of(head.split(String.valueOf(separator)))));
    }

    static String text(SplittableRandom random) {
        HostileRecording made = new HostileRecording(random, any(HEADS, random));
        made.ride();
        int faults = random.nextInt(MOST_FAULTS);
        for (int i = 0; i < faults; i++) {
            made.spoil();
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : made.rows) {
            text.append(String.join(String.valueOf(made.separator), row));
            text.append(random.nextInt(200) == 0 ? "" : "\n");
        }
        return text.toString();
    }

    private static <T> T any(List<T> of, SplittableRandom random) {
        return of.get(random.nextInt(of.size()));
    }

    private void ride() {
        int count = random.nextInt(MOST_ROWS);
        double speed = 0.0;
        for (int row = 0; row < count; row++) {
            speed = Math.max(0.0, Math.min(30.0, speed + random.nextInt(9) - 3.5));
            List<String> fields = new ArrayList<>();
            double[] values = {
                row, speed, 40.0 - speed / 10.0, speed - 8.0, 90.0 - row / 10.0, 45.0, 7.0, 200.0
            };
            for (int field = 0; field < rows.get(0).size(); field++) {
                fields.add(String.valueOf(values[field]));
            }
            rows.add(fields);
        }
    }

    private void spoil() {
        List<String> row = any(rows, random);
        int field = row.isEmpty() ? 0 : random.nextInt(row.size());
        switch (random.nextInt(9)) {
            case 0 -> set(row, field, any(HostileBuild.TEXTS, random));
            case 1 -> set(row, field, any(HostileBuild.NUMBERS, random));
            case 2 -> set(row, field, "\"");
            case 3 -> set(row, field, "");
            case 4 -> row.add(any(HostileBuild.NUMBERS, random));
            case 5 -> rows.add(random.nextInt(rows.size() + 1), new ArrayList<>(row));
            case 6 -> {
                if (!row.isEmpty()) {
                    row.remove(field);
                }
            }
            case 7 -> rows.remove(random.nextInt(Math.max(1, rows.size() - 1)));
            default -> column(field);
        }
        if (rows.isEmpty()) {
            rows.add(new ArrayList<>());
        }
    }

    private static void set(List<String> row, int field, String text) {
        if (!row.isEmpty()) {
            row.set(field, text);
        }
    }

    /** One and the same in every row. */
    private void column(int field) {
        String text = any(HostileBuild.NUMBERS, random);
        rows.stream()
                .skip(1)
                .filter(row -> row.size() > field)
                .forEach(row -> row.set(field, text));
    }
}
