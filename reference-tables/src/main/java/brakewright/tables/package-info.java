/**
 * What is known of cells, wires, fuses, plugs and ordinary vehicles when a build file does not say,
 * and where it is known from.
 *
 * <p>The entry is {@link brakewright.tables.ReferenceTables#load()}, which reads the
 * comma-separated files beside these classes once. Every figure carries the id of a {@link
 * brakewright.tables.Source} and a {@link brakewright.tables.SourceKind}; a row without them does
 * not load, nor does one that claims to be published and names no document. A bad row is a fault of
 * the program's own data and throws {@link brakewright.tables.TableException} with table, line and
 * column: there is no partial result.
 *
 * <p>Figures are in the units their tables state: SI, with Ah for capacities and °C for
 * temperatures. Cell ratings are those of new cells at the temperatures the maker names; where
 * sources contradict each other the tables hold the cautious figure and say so in the note. Nothing
 * here is computed with: a {@link brakewright.spec.Curve} stays at its end value beyond its ends,
 * and the other figures are handed on as they stand. The datasheet that came with a part goes
 * before these tables.
 *
 * <p>{@link brakewright.tables.ReferenceTables#version()} names the edition; worksheets print it. A
 * correction raises the edition and adds a line to the history at the head of the file.
 *
 * <pre>{@code
 * ReferenceTables tables = ReferenceTables.load();
 * CellEntry cell = tables.cell("samsung-30q").orElseThrow();
 * double ampereHours = cell.figure("capacity").value();
 * String readIn = tables.source(cell.figure("capacity").source()).orElseThrow().title();
 * }</pre>
 */
@NullMarked
package brakewright.tables;

import org.jspecify.annotations.NullMarked;
