package brakewright.cli.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.driving.Cruise;
import brakewright.operation.Sag;
import brakewright.tables.ReferenceTables;
import brakewright.worksheet.RangeSheet;
import brakewright.worksheet.SagSheet;
import brakewright.worksheet.ThrustMap;
import brakewright.worksheet.Worksheet;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the JSON says of driving is what the core computed, in the units that the keys name. */
class DrivingHalfTest {

    /** A conversion there and back: some ulps. */
    private static final double ROUNDING = 1e-12;

    private static Worksheet sheet(String name) throws IOException, BuildFileException {
        byte[] bytes = Files.readAllBytes(Path.of("examples", name + ".toml"));
        return Worksheet.of(BuildFile.read(bytes, ReferenceTables.load()).build());
    }

    /** Every value by its key, in the order of the text. */
    private static Map<String, List<String>> values(JsonText json) throws IOException {
        Map<String, List<String>> values = new HashMap<>();
        try (JsonParser parser = new JsonFactory().createParser(json.finish())) {
            String name = "";
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.FIELD_NAME) {
                    name = parser.currentName();
                } else if (token.isScalarValue()) {
                    values.computeIfAbsent(name, key -> new ArrayList<>()).add(parser.getText());
                }
            }
        }
        return values;
    }

    private static List<Double> numbers(Map<String, List<String>> values, String name) {
        return values.getOrDefault(name, List.of()).stream().map(Double::valueOf).toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "vineyard-trail-board",
                "ferry-dock-scooter",
                "parcel-trike",
                "salt-flat-tour-board"
            })
    void tellsTheThrustOfEveryChargeAndSpeed(String name) throws IOException, BuildFileException {
        Worksheet sheet = sheet(name);
        JsonText json = new JsonText();
        json.startObject();
        new DrivingJson(json).write(sheet);
        json.endObject();
        Map<String, List<String>> values = values(json);
        ThrustMap map = sheet.thrustMap();
        int points = map.charges().length * map.speeds().length;
        for (String key :
                List.of("thrust_N", "motor_current_A", "pack_current_A", "pack_voltage_V")) {
            assertThat(numbers(values, key)).as(key).hasSize(points);
        }
        assertThat(values.get("bound_by")).hasSize(points);
        assertThat(numbers(values, "thrust_N")).contains(map.pulls()[0][0].thrust());
        assertThat(numbers(values, "resistance_N")).hasSize(map.speeds().length);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "vineyard-trail-board",
                "ferry-dock-scooter",
                "parcel-trike",
                "salt-flat-tour-board"
            })
    void tellsTheRangeInKilometresAndWattHours(String name) throws IOException, BuildFileException {
        RangeSheet range = sheet(name).range();
        JsonText json = new JsonText();
        json.startObject();
        new RangeJson(json).write(range);
        json.endObject();
        Map<String, List<String>> values = values(json);
        List<Cruise> rides = new ArrayList<>(range.steady());
        rides.add(range.cruise());
        for (int i = 0; i < rides.size(); i++) {
            assertThat(numbers(values, "distance_held_km").get(i) * 1000.0)
                    .isCloseTo(
                            rides.get(i).distanceHeld(),
                            within(ROUNDING * rides.get(i).distance()));
            assertThat(numbers(values, "cells_Wh").get(2 * i) * 3600.0)
                    .isCloseTo(
                            rides.get(i).spent().sum(),
                            within(ROUNDING * rides.get(i).spent().sum()));
        }
        assertThat(values.get("change"))
                .containsExactly("rider-heavier", "colder", "higher", "headwind", "uphill");
        List<Double> perKilometre = numbers(values, "consumption_Wh_per_km");
        List<Double> perMile = numbers(values, "consumption_Wh_per_mi");
        assertThat(perMile).hasSameSizeAs(perKilometre);
        for (int i = 0; i < perMile.size(); i++) {
            assertThat(perMile.get(i))
                    .isCloseTo(1.609344 * perKilometre.get(i), within(ROUNDING * perMile.get(i)));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "vineyard-trail-board",
                "ferry-dock-scooter",
                "parcel-trike",
                "salt-flat-tour-board"
            })
    void tellsWhatEveryDrawMeets(String name) throws IOException, BuildFileException {
        Worksheet sheet = sheet(name);
        JsonText json = new JsonText();
        json.startObject();
        new SagJson(json, sheet).write();
        json.endObject();
        Map<String, List<String>> values = values(json);
        SagSheet sag = sheet.sag();
        assertThat(numbers(values, "draw_A"))
                .containsExactlyElementsOf(
                        sag.cases().stream().map(each -> each.draw().current()).toList());
        assertThat(values.get("event")).hasSize(sag.cases().size() * Sag.Event.values().length);
        assertThat(values.getOrDefault("meets_first", List.of()))
                .containsExactlyElementsOf(
                        sag.cases().stream()
                                .flatMap(each -> each.first().stream())
                                .map(met -> met.event().key())
                                .toList());
    }
}
