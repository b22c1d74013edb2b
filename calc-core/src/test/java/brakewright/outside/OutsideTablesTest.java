package brakewright.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The tables of expected values themselves. */
class OutsideTablesTest {

    private static final Path TABLES =
            Path.of("src", "test", "resources", "brakewright", "outside");
    private static final List<Class<?>> CHECKS =
            List.of(
                    DrivingOutsideTest.class,
                    DutyOutsideTest.class,
                    SagOutsideTest.class,
                    BatteryOutsideTest.class,
                    HeatOutsideTest.class,
                    JoinedOutsideTest.class,
                    RecordingOutsideTest.class,
                    MotorOutsideTest.class,
                    RegenerationOutsideTest.class,
                    RoadOutsideTest.class,
                    StoppingOutsideTest.class);

    @Test
    void everyRowIsCheckedByAMethod() throws IOException {
        Set<String> wanted = new TreeSet<>();
        for (String source : sources()) {
            for (OutsideRow row : OutsideTable.read(source).rows()) {
                wanted.add(source + ": " + row.quantity());
            }
        }
        Set<String> checked =
                CHECKS.stream()
                        .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                        .filter(method -> method.isAnnotationPresent(OutsideCheck.class))
                        .map(OutsideTablesTest::checkedBy)
                        .collect(Collectors.toCollection(TreeSet::new));
        assertThat(checked).isEqualTo(wanted);
    }

    @Test
    void aToleranceMayBeAbsoluteRelativeOrARange() {
        assertThat(row("10", "0.5").lowest()).isEqualTo(9.5);
        assertThat(row("10", "0.5").highest()).isEqualTo(10.5);
        assertThat(row("-10", "10%").lowest()).isEqualTo(-11.0);
        assertThat(row("-10", "10%").highest()).isEqualTo(-9.0);
        assertThat(row("10", "+0..+4%").lowest()).isEqualTo(10.0);
        assertThat(row("10", "+0..+4%").highest()).isEqualTo(10.4);
    }

    private static String checkedBy(Method method) {
        OutsideCheck check = method.getAnnotation(OutsideCheck.class);
        return check.source() + ": " + check.quantity();
    }

    private static OutsideRow row(String expected, String tolerance) {
        return new OutsideRow("X", "x", "derived", "x", "x=1", expected, tolerance, "1");
    }

    private static List<String> sources() throws IOException {
        try (Stream<Path> files = Files.list(TABLES)) {
            return files.map(file -> file.getFileName().toString())
                    .map(name -> name.substring(0, name.length() - ".csv".length()))
                    .toList();
        }
    }
}
