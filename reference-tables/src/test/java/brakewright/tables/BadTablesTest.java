package brakewright.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A row that cannot be right stops the load and the message says where it is. */
class BadTablesTest {

    /** Each case changes one row of the shipped tables: in the first row that holds {@code old}. */
    @ParameterizedTest(name = "{0}: {2} for {1}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            textBlock =
                    """
            cell-figures.csv|35,A,samsung-40t-quoted,published|35,A,,published|source|a text
            cell-figures.csv|35,A,samsung-40t-quoted,published|35,A,hearsay,published|source|the id of a source
            cell-figures.csv|35,A,samsung-40t-quoted,published|35,A,samsung-40t-quoted,|kind|a text
            cell-figures.csv|35,A,samsung-40t-quoted,published|35,A,samsung-40t-quoted,sure|kind|published, common-practice
            cell-figures.csv|35,A,samsung-40t-quoted,published|35,A,from-memory,published|kind|no document
            cell-figures.csv|discharge_current,35,A|discharge_current,NaN,A|value|a finite number
            cell-figures.csv|discharge_current,35,A|discharge_current,Infinity,A|value|a finite number
            cell-figures.csv|discharge_current,35,A|discharge_current,many,A|value|a number
            cell-figures.csv|discharge_current,35,A|discharge_current,,A|value|a text
            cell-figures.csv|discharge_current,35,A|discharge_current,-35,A|value|above zero
            cell-figures.csv|discharge_current,35,A|discharge_current,35,mA|unit|A
            cell-figures.csv|discharge_current,35,A|colour,35,A|quantity|a quantity of cells
            cell-figures.csv|samsung-40t,charge_current|samsung-40t,discharge_current|quantity|no earlier row
            cell-figures.csv|samsung-40t,charge_current|samsung-40x,charge_current|cell|the id of a cell
            cells.csv|samsung-30q,Samsung|samsung-25r,Samsung|id|no earlier row
            cells.csv|samsung-30q,Samsung INR18650-30Q,nmc|samsung-30q,Samsung INR18650-30Q,tin|chemistry|a chemistry
            cells.csv|30Q,nmc,nmc-samsung-30q|30Q,nmc,nmc-p43a|open_circuit_voltage|open-circuit-voltage
            cells.csv|30Q,nmc,nmc-samsung-30q|30Q,nmc,nmc-resistance-by-charge|open_circuit_voltage|open-circuit-voltage
            curves.csv|nmc-p42a,open-circuit-voltage,0.1,|nmc-p42a,open-circuit-voltage,0.05,|x|more than the row before
            curves.csv|nmc-p42a,open-circuit-voltage,0.1,3.334|nmc-p42a,open-circuit-voltage,0.1,3.1|y|does not fall
            curves.csv|nmc-p42a,open-circuit-voltage,1,|nmc-p42a,open-circuit-voltage,1.1,|x|from 0 to 1
            curves.csv|nmc-p42a,open-circuit-voltage,0.1,|nmc-p42a,resistance-by-charge,0.1,|quantity|first row
            curves.csv|nmc-p42a,open-circuit-voltage,0.1,|nmc-p42a,weight,0.1,|quantity|open-circuit-voltage,
            curves.csv|nmc-p42a,open-circuit-voltage,0.1,|lone,open-circuit-voltage,0.1,|curve|at least two points
            curves.csv|by-temperature,25,1,|by-temperature,25,2,|y|does not rise
            curves.csv|nmc-p42a,open-circuit-voltage,0,2.506|nmc-p42a,open-circuit-voltage,0,0|y|above zero
            curves.csv|cold-by-charge,0.2,0.09|cold-by-charge,0.2,-0.09|y|zero or a number above
            curves.csv|charge-current-by-charge,0.8,0.25|charge-current-by-charge,0.8,1.25|y|does not rise
            cells.csv|fast-charge-to-80-percent|nmc-resistance-by-charge|charge_current_by_charge|charge-current-by-charge
            sources.csv|samsung-30q-spec,|samsung-25r-spec,|id|no earlier row
            sources.csv|2015,section 3,|2015,,|place|where in the document
            wires.csv|10 AWG,awg|12 awg,awg|size|no earlier row
            wires.csv|10 AWG,awg|10 AWG,swg|system|awg or metric
            plugs.csv|xt60,XT60,30|xt60,XT60,0|current_a|above zero
            plugs.csv|xt60,XT60,30,60|xt60,XT60,30,x|peak_a|a number
            plugs.csv|xt60,XT60,30,60,500,,no|xt60,XT60,30,60,500,,perhaps|anti_spark|yes or no
            fuses.csv|1000,0.75|1000,1.75|continuous_share|at most 1
            defaults.csv|vehicle.drag_area,stance=seated|vehicle.drag_area,stance=standing-forward|when|exclude
            defaults.csv|vehicle.drag_area,stance=seated|vehicle.drag_area,seated|when|fact=value
            defaults.csv|vehicle.drag_area,stance=seated,0.56,m2|vehicle.drag_area,stance=seated,0.56,ft2|unit|m2
            """)
    void isNamedWithItsTableLineAndColumn(
            String table, String old, String changed, String column, String expected) {
        String shipped = text(table);
        assertThat(shipped).contains(old);
        long line = shipped.substring(0, shipped.indexOf(old)).lines().count();
        long offByOne = shipped.charAt(shipped.indexOf(old) - 1) == '\n' ? 1 : 0;

        assertThatThrownBy(() -> loadWith(table, first(shipped, old, changed)))
                .isInstanceOf(TableException.class)
                .hasMessageStartingWith(
                        table + ", line " + (line + offByOne) + ", column " + column + ": expected")
                .hasMessageContaining(expected);
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            samsung-40t,resistance,|a figure for resistance
            samsung-40t,charge_temperature_high,|a figure for charge_temperature_high
            a123-26650m1,pulse_time,|both a pulse current and a pulse time
            """)
    void aCellThatLacksAFigureIsNamed(String beginning, String expected) {
        String shipped = text("cell-figures.csv");
        int begin = shipped.indexOf(beginning);
        int end = shipped.indexOf('\n', begin) + 1;
        String without = shipped.substring(0, begin) + shipped.substring(end);

        assertThatThrownBy(() -> loadWith("cell-figures.csv", without))
                .isInstanceOf(TableException.class)
                .hasMessageStartingWith("cells.csv, line ")
                .hasMessageContaining(expected)
                .hasMessageContaining(beginning.substring(0, beginning.indexOf(',')));
    }

    @Test
    void aCellWhoseVoltagesDoNotAscendIsNamed() {
        String changed =
                first(
                        text("cell-figures.csv"),
                        "samsung-40t,voltage_min,2.5",
                        "samsung-40t,voltage_min,4.2");
        assertThatThrownBy(() -> loadWith("cell-figures.csv", changed))
                .isInstanceOf(TableException.class)
                .hasMessageContaining("voltage_min is below its voltage_max");
    }

    @Test
    void aMissingTableIsNamed() {
        assertThatThrownBy(() -> loadWith("plugs.csv", null))
                .isInstanceOf(TableException.class)
                .hasMessage("plugs.csv: the table is missing");
    }

    @Test
    void anEmptyTableIsNamed() {
        assertThatThrownBy(() -> loadWith("tables.csv", "version,note\n"))
                .isInstanceOf(TableException.class)
                .hasMessage("tables.csv: expected at least one row");
    }

    @Test
    void wrongColumnsAreNamed() {
        assertThatThrownBy(() -> loadWith("tables.csv", "# note\nedition,note\n1,x\n"))
                .isInstanceOf(TableException.class)
                .hasMessage(
                        "tables.csv, line 2: expected the columns version,note, was edition,note");
    }

    @Test
    void aRowWithTooFewFieldsIsNamed() {
        assertThatThrownBy(() -> loadWith("tables.csv", "version,note\n2026-11\n"))
                .isInstanceOf(TableException.class)
                .hasMessageStartingWith("tables.csv: cannot be read")
                .hasMessageContaining("2");
    }

    @Test
    void theShippedTablesLoadByThisWayToo() {
        assertThat(loadWith("tables.csv", "version,note\nother,\n").version()).isEqualTo("other");
    }

    private static ReferenceTables loadWith(String table, @Nullable String text) {
        return ReferenceTables.read(
                name -> {
                    if (!name.equals(table)) {
                        return ReferenceTables.shipped(name);
                    }
                    return text == null ? null : new StringReader(text);
                });
    }

    private static String first(String text, String old, String changed) {
        int at = text.indexOf(old);
        return text.substring(0, at) + changed + text.substring(at + old.length());
    }

    private static String text(String table) {
        StringWriter text = new StringWriter();
        try (Reader reader = ReferenceTables.shipped(table)) {
            assertThat(reader).as(table).isNotNull();
            if (reader != null) {
                reader.transferTo(text);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return text.toString();
    }
}
