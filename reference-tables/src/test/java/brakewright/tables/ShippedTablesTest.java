package brakewright.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What holds for the tables that come with the program. */
@Tag("law")
class ShippedTablesTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();

    @Test
    void nameTheirEdition() {
        assertThat(TABLES.version()).isEqualTo("2026-11.10");
    }

    @Test
    void everySourceIsKnownAndEveryDocumentIsUsed() {
        Set<String> used = new HashSet<>();
        TABLES.cells().forEach(cell -> cell.figures().values().forEach(f -> used.add(f.source())));
        TABLES.curves().forEach(curve -> used.addAll(curve.sources()));
        TABLES.chemistries().forEach(chemistry -> used.add(chemistry.source()));
        TABLES.wires().forEach(wire -> used.add(wire.resistancePerMetre().source()));
        TABLES.wires().forEach(wire -> used.add(wire.ampacity().source()));
        TABLES.fuseFamilies().forEach(fuse -> used.add(fuse.source()));
        TABLES.plugs().forEach(plug -> used.add(plug.source()));
        TABLES.defaults().forEach(entry -> used.add(entry.figure().source()));
        assertThat(used).allMatch(id -> TABLES.source(id).isPresent());
        assertThat(TABLES.sources())
                .extracting(Source::id)
                .containsExactlyInAnyOrderElementsOf(used);
    }

    @Test
    void nothingIsInvented() {
        assertThat(TABLES.cells())
                .flatExtracting(cell -> cell.figures().values())
                .extracting(Figure::kind)
                .doesNotContain(SourceKind.INVENTED);
        assertThat(TABLES.defaults())
                .extracting(entry -> entry.figure().kind())
                .doesNotContain(SourceKind.INVENTED);
    }

    @Test
    void holdManyKindsOfCells() {
        assertThat(TABLES.cells()).hasSizeGreaterThanOrEqualTo(14);
        assertThat(TABLES.cells()).extracting(CellEntry::chemistry).contains("nmc", "lfp", "lco");
        assertThat(TABLES.cell("samsung-30q")).isPresent();
        assertThat(TABLES.cell("no-such-cell")).isEmpty();
    }

    @Test
    void everyCellTakesLessThanItGives() {
        for (CellEntry cell : TABLES.cells()) {
            assertThat(cell.figure("charge_current").value())
                    .as(cell.id())
                    .isLessThan(cell.figure("discharge_current").value());
            cell.figureIfGiven("standard_charge_current")
                    .ifPresent(
                            figure ->
                                    assertThat(figure.value())
                                            .as(cell.id())
                                            .isLessThanOrEqualTo(
                                                    cell.figure("charge_current").value()));
        }
    }

    @Test
    void everyCellBearsItsRatedCurrentWithinItsVoltages() {
        for (CellEntry cell : TABLES.cells()) {
            double atMidCharge =
                    TABLES.curve(cell.openCircuitVoltage()).orElseThrow().curve().at(0.5);
            double sag =
                    cell.figure("discharge_current").value() * cell.figure("resistance").value();
            assertThat(atMidCharge - sag)
                    .as(cell.id())
                    .isGreaterThan(cell.figure("voltage_min").value());
        }
    }

    /**
     * The lowest charge by mass is that of the APR18650M1B: 1.15 Ah in 41.5 g, 27.7 Ah/kg.
     *
     * <p>Source: Lithium Werks SF000007 rev. 2 (2022), source {@code apr18650m1b-sheet}.
     */
    @Test
    void everyCellHasAMassThatFitsItsSize() {
        for (CellEntry cell : TABLES.cells()) {
            double mass = cell.figure("mass").value();
            assertThat(mass).as(cell.id()).isBetween(0.035, 0.160);
            double ampereHoursPerKg = cell.figure("capacity").value() / mass;
            assertThat(ampereHoursPerKg).as(cell.id()).isBetween(27.0, 75.0);
        }
    }

    @Test
    void noCellMayBeChargedBelowFreezing() {
        assertThat(TABLES.cells())
                .allMatch(cell -> cell.figure("charge_temperature_low").value() >= 0.0);
    }

    @Test
    void openCircuitVoltagesNeverFallAndStayWithinTheLimitsOfTheirCells() {
        for (CellEntry cell : TABLES.cells()) {
            CurveEntry entry = TABLES.curve(cell.openCircuitVoltage()).orElseThrow();
            assertThat(entry.curve().neverFalls()).as(entry.id()).isTrue();
            assertThat(entry.curve().at(1.0))
                    .as(cell.id())
                    .isLessThanOrEqualTo(cell.figure("voltage_max").value());
        }
    }

    @Test
    void resistanceCurvesAreOneAtTheirReference() {
        for (CurveEntry entry : TABLES.curves()) {
            double reference =
                    switch (entry.quantity()) {
                        case OPEN_CIRCUIT_VOLTAGE -> 1.0;
                        case RESISTANCE_BY_CHARGE, SUSTAINED_RISE_BY_CHARGE ->
                                entry.curve().at(0.5);
                        case RESISTANCE_INTO_BY_CHARGE, RESISTANCE_COLD_BY_CHARGE -> 1.0;
                        case CHARGE_CURRENT_BY_CHARGE -> entry.curve().at(0.0);
                        case RESISTANCE_BY_TEMPERATURE -> entry.curve().at(25.0);
                    };
            assertThat(reference).as(entry.id()).isEqualTo(1.0);
        }
    }

    @Test
    void aCurveOfTwoCellsNamesBothSources() {
        CurveEntry entry = TABLES.curve("nmc-resistance-by-temperature").orElseThrow();
        assertThat(entry.sources()).containsExactly("plett-e2", "ornl-leaf");
        assertThat(entry.source()).isEqualTo("plett-e2");
        assertThat(entry.kind()).isEqualTo(SourceKind.PUBLISHED);
    }

    @Test
    void thickerWireCarriesMoreAndResistsLess() {
        for (boolean metric : List.of(true, false)) {
            List<WireEntry> wires =
                    TABLES.wires().stream().filter(wire -> wire.isMetric() == metric).toList();
            for (int i = 1; i < wires.size(); i++) {
                WireEntry thin = wires.get(i - 1);
                WireEntry thick = wires.get(i);
                assertThat(thick.areaMm2()).isGreaterThan(thin.areaMm2());
                assertThat(thick.ampacity().value()).isGreaterThan(thin.ampacity().value());
                assertThat(thick.resistancePerMetre().value())
                        .isLessThan(thin.resistancePerMetre().value());
            }
        }
    }

    @Test
    void wireSizesMayBeSpelledInSeveralWays() {
        assertThat(TABLES.wire("8AWG")).isPresent().isEqualTo(TABLES.wire("8 AWG"));
        assertThat(TABLES.wire("8 awg")).isEqualTo(TABLES.wire("8 AWG"));
        assertThat(TABLES.wire("10mm2")).isPresent().isEqualTo(TABLES.wire("10 mm²"));
        assertThat(TABLES.wire("2.5 mm2")).isPresent().isEqualTo(TABLES.wire("2.5mm²"));
        assertThat(TABLES.wire("9 AWG")).isEmpty();
    }

    @Test
    void unknownPlugFiguresAreAbsent() {
        assertThat(TABLES.plug("sb50").orElseThrow().peakCurrent()).isEmpty();
        assertThat(TABLES.plug("xt60").orElseThrow().peakCurrent()).hasValue(60.0);
    }

    @Test
    void everyChemistryHasCurvesOfItsOwn() {
        for (ChemistryEntry chemistry : TABLES.chemistries()) {
            assertThat(TABLES.chemistry(chemistry.id())).contains(chemistry);
            assertThat(TABLES.curve(chemistry.openCircuitVoltage())).isPresent();
        }
    }

    @Test
    void defaultsFollowTheStance() {
        assertThat(TABLES.defaultFor("vehicle.drag_area", Map.of("stance", "standing-sideways")))
                .hasValueSatisfying(entry -> assertThat(entry.value()).isEqualTo(0.65));
        assertThat(TABLES.defaultFor("vehicle.drag_area", Map.of())).isEmpty();
        assertThat(TABLES.defaultFor("margins.trip", Map.of("stance", "seated")))
                .hasValueSatisfying(entry -> assertThat(entry.figure().unit()).isEqualTo("1"));
        assertThat(TABLES.defaultFor("no.such.key", Map.of())).isEmpty();
    }

    @Test
    void everyStanceHasEveryDefaultThatDependsOnIt() {
        for (Default entry : TABLES.defaults()) {
            if (!entry.when().containsKey("stance")) {
                continue;
            }
            for (String stance : List.of("standing-sideways", "standing-forward", "seated")) {
                assertThat(TABLES.defaultFor(entry.key(), Map.of("stance", stance)))
                        .as(entry.key() + " for " + stance)
                        .isPresent();
            }
        }
    }

    @Test
    void everyChemistryHasASpecificHeat() {
        for (ChemistryEntry chemistry : TABLES.chemistries()) {
            Default heat =
                    TABLES.defaultFor(
                                    "pack.cell.specific_heat", Map.of("chemistry", chemistry.id()))
                            .orElseThrow();
            assertThat(heat.figure().unit()).isEqualTo("J/(kg*K)");
            assertThat(heat.value()).as(chemistry.id()).isBetween(800.0, 1100.0);
        }
    }

    @Test
    void anUnknownChemistryWarmsMost() {
        double unknown =
                TABLES.defaultFor("pack.cell.specific_heat", Map.of()).orElseThrow().value();
        assertThat(TABLES.defaults())
                .filteredOn(entry -> entry.key().equals("pack.cell.specific_heat"))
                .allMatch(entry -> entry.value() >= unknown);
    }

    @Test
    void rangeIsToldForCalmAirAndATown() {
        assertThat(plain("use.idle_power", "W")).isEqualTo(5.0);
        assertThat(plain("use.headwind", "m/s")).isZero();
        assertThat(plain("use.stops_per_km", "1/km")).isEqualTo(2.96);
    }

    private static double plain(String key, String unit) {
        Default entry = TABLES.defaultFor(key, Map.of()).orElseThrow();
        assertThat(entry.figure().unit()).as(key).isEqualTo(unit);
        return entry.value();
    }

    @Test
    void theRiderCanBearTheBrakingThatIsAskedFor() {
        for (String stance : List.of("standing-sideways", "standing-forward", "seated")) {
            Map<String, String> facts = Map.of("stance", stance);
            double asked =
                    TABLES.defaultFor("criteria.deceleration_min", facts).orElseThrow().value();
            double borne =
                    TABLES.defaultFor("criteria.rider_deceleration_max", facts)
                            .orElseThrow()
                            .value();
            assertThat(asked).as(stance).isLessThanOrEqualTo(borne);
        }
    }

    @Test
    void aMissingFigureIsNamed() {
        CellEntry cell = TABLES.cell("samsung-30q").orElseThrow();
        assertThatThrownBy(() -> cell.figure("colour"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("cell samsung-30q has no figure for colour");
    }

    @Test
    void theListsAndTheFindersAgree() {
        assertThat(TABLES.cells()).allMatch(cell -> TABLES.cell(cell.id()).isPresent());
        assertThat(TABLES.plugs()).allMatch(plug -> TABLES.plug(plug.id()).isPresent());
        assertThat(TABLES.curves()).allMatch(curve -> TABLES.curve(curve.id()).isPresent());
        assertThat(TABLES.wires()).allMatch(wire -> TABLES.wire(wire.size()).isPresent());
        assertThat(TABLES.fuseFamilies()).allMatch(fuse -> fuse.continuousShare() <= 0.75);
    }
}
