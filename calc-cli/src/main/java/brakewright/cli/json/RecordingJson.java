package brakewright.cli.json;

import brakewright.cli.recording.ColumnNote;
import brakewright.cli.recording.FileNotes;
import brakewright.cli.recording.Recordings;
import brakewright.recording.Gap;
import brakewright.recording.Place;
import brakewright.recording.Repair;
import java.util.List;

/** Writes what was read, and what of it was not taken as it stood. */
final class RecordingJson {

    private RecordingJson() {}

    static void write(JsonText json, Recordings read) {
        files(json, read.files());
        joined(json, read);
    }

    static void files(JsonText json, List<FileNotes> files) {
        json.startArray("files");
        for (FileNotes file : files) {
            json.startObject();
            json.text("file", file.source());
            json.text("encoding", file.charset());
            json.text("separator", file.separator());
            json.text("decimal_mark", file.decimalMark());
            if (file.rows() >= 0) {
                json.number("rows", file.rows());
            }
            json.startArray("columns");
            for (ColumnNote column : file.columns()) {
                json.startObject();
                json.text("heading", column.heading());
                column.quantity()
                        .ifPresent(
                                quantity -> {
                                    json.text("quantity", quantity.key());
                                    json.text("written_in", column.unit());
                                });
                json.text("why", column.why());
                json.endObject();
            }
            json.endArray();
            json.endObject();
        }
        json.endArray();
    }

    static void joined(JsonText json, Recordings read) {
        read.sign()
                .ifPresent(
                        sign -> {
                            json.startObject("current_sign");
                            json.text(
                                    "in_files",
                                    sign.isOutPositive()
                                            ? "out-of-pack-positive"
                                            : "out-of-pack-negative");
                            json.text("shown_by", sign.proof().key());
                            json.endObject();
                        });
        json.number("rows", read.recording().rows());
        json.number("pieces", read.recording().pieces().size());
        json.number("recorded_s", read.recording().seconds());
        json.number("longest_step_s", read.recording().longestStep());
        json.startArray("gaps");
        for (Gap gap : read.recording().gaps()) {
            json.startObject();
            place(json, "after", gap.after());
            place(json, "before", gap.before());
            json.number("lasts_s", gap.seconds());
            json.number("least_distance_m", gap.leastDistance());
            json.number("rest_voltage_step_V", gap.voltageStep());
            json.endObject();
        }
        json.endArray();
    }

    static void repairs(JsonText json, List<Repair> repairs) {
        json.startArray("repairs");
        for (Repair repair : repairs) {
            json.startObject();
            json.text("rule", repair.rule().key());
            repair.quantity().ifPresent(quantity -> json.text("quantity", quantity.key()));
            json.number("count", repair.count());
            json.startArray("places");
            for (Place place : repair.places()) {
                json.startObject();
                json.text("file", place.source());
                json.number("line", place.line());
                json.endObject();
            }
            json.endArray();
            json.endObject();
        }
        json.endArray();
    }

    static void place(JsonText json, String name, Place place) {
        json.startObject(name);
        json.text("file", place.source());
        json.number("line", place.line());
        json.endObject();
    }
}
