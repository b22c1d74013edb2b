package brakewright.cli.json;

import brakewright.cli.recording.Recordings;

/** Writes what the columns of recordings were taken for, as JSON. */
public final class InspectJson {

    private final Recordings read;

    /**
     * Takes what was read.
     *
     * @param read the files
     */
    public InspectJson(Recordings read) {
        this.read = read;
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
        RecordingJson.write(json, read);
        RecordingJson.repairs(json, read.repairs().all());
        json.endObject();
        return json.finish();
    }
}
