package brakewright.cli;

import brakewright.buildfile.KeyGuide;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the guide's list of keys from the table of keys, and the defaults from theirs. */
final class GuideKeys {

    /** What stands above the keys of each table of a build file, in the order of the list. */
    private static final String HEADINGS =
            """
            **Top** of the file
            **`[rider]`**
            **`[vehicle]`**
            **`[vehicle.friction_brake]`**
            **`[drive]`**
            **`[motor]`**
            **`[controller]`**
            **`[pack]`** or `[[packs]]` for each of several
            **`[pack.cell]`** or `[packs.cell]`; required only where `cell` is no id of the tables
            **`[pack.group_spread]`** or `[packs.group_spread]`; how far the worst group in series departs from the mean
            **`[pack.protection]`** or `[packs.protection]`; without it the worksheet cannot know what opens first
            **`[pack.wiring]`** or `[packs.wiring]`
            **`[battery]`** only with `[[packs]]`
            **`[use]`**
            **`[margins]`** what is kept from each bound
            **`[criteria]`**
            **`[settings]`** what is in the controller now; `[proposals.NAME]` has the same keys, each laid over these, and those of `[use]` with their table, as `use.charge_from = "88 %"`
            **`[recording]`** how recordings of rides are written; nothing of it bears on the vehicle
            **`[recording.columns]`** which column holds what
            **`[recording.units]`** of columns whose head names none
            """;

    private final KeyGuide guide;

    GuideKeys(KeyGuide guide) {
        this.guide = guide;
    }

    /** The list as the tables have it now. */
    String list() {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        HEADINGS.lines().forEach(heading -> rows.put(heading, new ArrayList<>()));
        for (KeyGuide.Entry entry : guide.all()) {
            add(rows, entry.key(), entry.example(), entry.leftOut(), entry.what());
        }
        StringBuilder text = new StringBuilder("\n");
        rows.forEach(
                (heading, ofTable) -> {
                    text.append(heading).append("\n\n");
                    text.append("| key | example | left out | what it is |\n|---|---|---|---|\n");
                    ofTable.forEach(text::append);
                    text.append('\n');
                });
        return text.toString();
    }

    private static void add(
            Map<String, List<String>> rows,
            String key,
            String example,
            String without,
            String what) {
        int dot = key.lastIndexOf('.');
        String begin = dot < 0 ? "**Top**" : "**`[" + key.substring(0, dot) + "]`**";
        List<String> list =
                rows.entrySet().stream()
                        .filter(each -> each.getKey().startsWith(begin))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no heading for " + key))
                        .getValue();
        list.add(
                "| `"
                        + key.substring(dot + 1)
                        + "` | `"
                        + example
                        + "` | "
                        + without
                        + " | "
                        + what
                        + " |\n");
    }
}
