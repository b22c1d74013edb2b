package brakewright.cli.json;

import brakewright.buildfile.Problem;
import brakewright.cli.recording.Inspection;

/** Writes what the columns of recordings were taken for, as JSON. */
public final class InspectJson {

    private final Inspection found;

    /**
     * Takes what was read.
     *
     * @param found in the files
     */
    public InspectJson(Inspection found) {
        this.found = found;
    }

    /**
     * Returns the document.
     *
     * @return JSON
     */
    public String text() {
        JsonText json = new JsonText();
        json.startObject();
        json.text("schema", "brakewright.ride/1");
        RecordingJson.files(json, found.files());
        found.read()
                .ifPresent(
                        read -> {
                            RecordingJson.joined(json, read);
                            RecordingJson.repairs(json, read.repairs().all());
                        });
        if (!found.problems().isEmpty()) {
            json.texts("problems", found.problems().stream().map(Problem::told).toList());
        }
        json.endObject();
        return json.finish();
    }
}
