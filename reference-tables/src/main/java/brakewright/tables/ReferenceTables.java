package brakewright.tables;

import brakewright.assembly.Defaults;
import brakewright.assembly.Taken;
import brakewright.spec.Input;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** All published figures that come with the program, each with its source. Immutable. */
public final class ReferenceTables implements Defaults {

    private final String version;
    private final Sources sources;
    private final Map<String, CurveEntry> curves;
    private final Map<String, ChemistryEntry> chemistries;
    private final Map<String, CellEntry> cells;
    private final Map<String, WireEntry> wires;
    private final Map<String, FuseFamily> fuseFamilies;
    private final Map<String, PlugEntry> plugs;
    private final DefaultTable defaults;
    private final Function<String, @Nullable Reader> files;
    private volatile @Nullable SpreadTable spreads;

    private ReferenceTables(Function<String, @Nullable Reader> files) {
        this.files = files;
        version =
                TableFile.read(files, "tables.csv", "version,note").get(0).requiredText("version");
        sources =
                Sources.of(
                        TableFile.read(
                                files, "sources.csv", "id,title,organisation,year,place,note"));
        curves =
                CurveTable.of(
                        TableFile.read(files, "curves.csv", "curve,quantity,x,y,source,kind"),
                        sources);
        chemistries =
                PartTables.chemistries(
                        TableFile.read(
                                files,
                                "chemistries.csv",
                                "id,name,open_circuit_voltage,resistance_by_charge,resistance_into_by_charge,resistance_cold_by_charge,sustained_rise_by_charge,resistance_by_temperature,source,kind,note"),
                        curves,
                        sources);
        cells =
                CellTable.of(
                        TableFile.read(
                                files,
                                "cells.csv",
                                "id,name,chemistry,open_circuit_voltage,resistance_by_charge,resistance_by_temperature,charge_current_by_charge"),
                        TableFile.read(
                                files,
                                "cell-figures.csv",
                                "cell,quantity,value,unit,source,kind,note"),
                        curves,
                        chemistries,
                        sources);
        wires =
                PartTables.wires(
                        TableFile.read(
                                files,
                                "wires.csv",
                                "size,system,area_mm2,resistance_ohm_per_m,resistance_source,resistance_kind,ampacity_a,ampacity_source,ampacity_kind,note"),
                        sources);
        fuseFamilies =
                PartTables.fuseFamilies(
                        TableFile.read(
                                files,
                                "fuses.csv",
                                "family,voltage_rating_v,current_max_a,breaking_capacity_a,continuous_share,source,kind,note"),
                        sources);
        plugs =
                PartTables.plugs(
                        TableFile.read(
                                files,
                                "plugs.csv",
                                "id,name,current_a,peak_a,voltage_v,resistance_ohm,anti_spark,source,kind,note"),
                        sources);
        defaults =
                DefaultTable.of(
                        TableFile.read(
                                files, "defaults.csv", "key,when,value,unit,source,kind,note"),
                        sources);
    }

    /** Read when they are first asked for, which few are: only doubts are told from them. */
    private SpreadTable spreads() {
        SpreadTable read = spreads;
        if (read == null) {
            read =
                    SpreadTable.of(
                            TableFile.read(files, "spreads.csv", "key,of,spread,source,kind,note"),
                            sources);
            spreads = read;
        }
        return read;
    }

    /**
     * Reads the tables that come with the program. Each call reads them anew.
     *
     * @return the tables
     * @throws TableException if a row lacks its provenance or cannot be right; the message names
     *     table, line, column and what was expected
     */
    public static ReferenceTables load() {
        return read(ReferenceTables::shipped);
    }

    static ReferenceTables read(Function<String, @Nullable Reader> files) {
        return new ReferenceTables(files);
    }

    static @Nullable Reader shipped(String table) {
        InputStream bytes = ReferenceTables.class.getResourceAsStream(table);
        return bytes == null ? null : new InputStreamReader(bytes, StandardCharsets.UTF_8);
    }

    /**
     * Returns the edition of the tables, for the worksheet.
     *
     * @return year and month, and a number if the month has several
     */
    public String version() {
        return version;
    }

    /**
     * Returns every source that a figure may name.
     *
     * @return the sources in the order of their table
     */
    public List<Source> sources() {
        return List.copyOf(sources.byId().values());
    }

    /**
     * Finds the source that a figure names.
     *
     * @param id its id
     * @return the source; empty if there is none of this id
     */
    public Optional<Source> source(String id) {
        return Optional.ofNullable(sources.byId().get(id));
    }

    /**
     * Returns every cell a build file may name.
     *
     * @return the cells in the order of their table
     */
    public List<CellEntry> cells() {
        return List.copyOf(cells.values());
    }

    /**
     * Finds a cell a build file names.
     *
     * @param id its id, or what is printed on its wrap, with or without the maker, for example
     *     {@code INR21700-50S}; blanks, dashes and case of a print do not matter
     * @return the cell; empty if there is none, or if a print may mean several
     */
    public Optional<CellEntry> cell(String id) {
        CellEntry exact = cells.get(id);
        if (exact != null) {
            return Optional.of(exact);
        }
        List<CellEntry> printed = CellPrints.find(id, cells.values());
        return printed.size() == 1 ? Optional.of(printed.get(0)) : Optional.empty();
    }

    /**
     * Returns every chemistry a build file may name.
     *
     * @return the chemistries in the order of their table
     */
    public List<ChemistryEntry> chemistries() {
        return List.copyOf(chemistries.values());
    }

    /**
     * Finds the curves that stand for a chemistry.
     *
     * @param id its id
     * @return the chemistry; empty if there is none of this id
     */
    public Optional<ChemistryEntry> chemistry(String id) {
        return Optional.ofNullable(chemistries.get(id));
    }

    /**
     * Returns every curve.
     *
     * @return the curves in the order of their table
     */
    public List<CurveEntry> curves() {
        return List.copyOf(curves.values());
    }

    /**
     * Finds a curve a cell, a chemistry or a build file names.
     *
     * @param id its id
     * @return the curve; empty if there is none of this id
     */
    public Optional<CurveEntry> curve(String id) {
        return Optional.ofNullable(curves.get(id));
    }

    /**
     * Returns every size of wire.
     *
     * @return the wires in the order of their table
     */
    public List<WireEntry> wires() {
        return List.copyOf(wires.values());
    }

    /**
     * Finds the wire of a size. Sizes between those of the table are not interpolated.
     *
     * @param size for example {@code 8 AWG}, {@code 10 mm²} or {@code 10mm2}; blanks and case do
     *     not matter
     * @return the wire; empty if the table has no such size
     */
    public Optional<WireEntry> wire(String size) {
        return Optional.ofNullable(wires.get(PartTables.wireKey(size)));
    }

    /**
     * Returns every plug a build file may name.
     *
     * @return the plugs in the order of their table
     */
    public List<PlugEntry> plugs() {
        return List.copyOf(plugs.values());
    }

    /**
     * Finds a plug a build file names.
     *
     * @param id its id
     * @return the plug; empty if there is none of this id
     */
    public Optional<PlugEntry> plug(String id) {
        return Optional.ofNullable(plugs.get(id));
    }

    /**
     * Returns every family of fuses.
     *
     * @return the families in the order of their table
     */
    public List<FuseFamily> fuseFamilies() {
        return List.copyOf(fuseFamilies.values());
    }

    /**
     * Finds a family of fuses a build file names.
     *
     * @param id its id
     * @return the family; empty if there is none of this id
     */
    public Optional<FuseFamily> fuseFamily(String id) {
        return Optional.ofNullable(fuseFamilies.get(id));
    }

    /**
     * Returns every default.
     *
     * @return the defaults, those of one key together
     */
    public List<Default> defaults() {
        return defaults.all();
    }

    /**
     * Finds what is taken where a build file leaves a key out.
     *
     * @param key the dotted key
     * @param facts what is known of the build, for example {@code stance} is {@code seated}
     * @return of the key's rows whose conditions the facts meet, the one with the most conditions;
     *     empty if there is none
     */
    public Optional<Default> defaultFor(String key, Map<String, String> facts) {
        return defaults.find(key, facts);
    }

    @Override
    public Optional<Taken> defaultOf(String key, Map<String, String> facts) {
        return defaultFor(key, facts).map(Default::figure).map(Figure::taken);
    }

    @Override
    public Optional<Map<Input, Taken>> ofCell(String id) {
        return cell(id).map(new TakenParts(curves)::of);
    }

    @Override
    public Optional<Map<Input, Taken>> ofChemistry(String id) {
        return chemistry(id).map(new TakenParts(curves)::of);
    }

    /**
     * Finds by what share of itself a value usually misses that was not measured. Their table is
     * read when the first is looked for.
     *
     * @param key the dotted key of the build file
     * @param kind how well the value is known, as {@link SourceKind#text} has it
     * @return the share, either way; empty where none is known
     * @throws TableException if a row of that table lacks its provenance or cannot be right
     */
    public Optional<Figure> usualSpread(String key, String kind) {
        return spreads().find(key, kind);
    }
}
