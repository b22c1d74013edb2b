package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.worksheet.TimedAnswer;
import brakewright.worksheet.Worksheet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** For how long a current is taken to flow in what a page tells: the longer, the more it shifts. */
final class HorizonLine {

    private static final List<Map.Entry<TimedAnswer, String>> TOLD =
            List.of(
                    Map.entry(TimedAnswer.STOP, "stops"),
                    Map.entry(TimedAnswer.MAY_GIVE, "draw"),
                    Map.entry(TimedAnswer.MAY_TAKE, "what they take"),
                    Map.entry(TimedAnswer.DESCENT, "slopes"),
                    Map.entry(TimedAnswer.RANGE, "range"));

    private final Worksheet sheet;

    HorizonLine(Worksheet sheet) {
        this.sheet = sheet;
    }

    /** One sentence; answers of one length stand together. */
    String text() {
        Map<String, List<String>> byTime =
                TOLD.stream()
                        .collect(
                                Collectors.groupingBy(
                                        entry -> lasts(entry.getKey()),
                                        LinkedHashMap::new,
                                        Collectors.mapping(
                                                Map.Entry::getValue, Collectors.toList())));
        return "Packs resist as after "
                + byTime.entrySet().stream()
                        .map(
                                each ->
                                        each.getKey()
                                                + " ("
                                                + String.join(", ", each.getValue())
                                                + ")")
                        .collect(Collectors.joining(", "))
                + ".";
    }

    private String lasts(TimedAnswer answer) {
        double seconds = answer.horizon().seconds(sheet);
        return Double.isInfinite(seconds) ? "endless flow" : Numbers.time(seconds);
    }
}
