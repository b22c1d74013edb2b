package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * How a file is laid out, found out from its bytes and its first lines.
 *
 * @param charset in which it is written
 * @param separator between fields
 * @param mark of decimals
 * @param headerLine in which the columns are named, counted from 1
 * @param headings of the columns
 */
record Layout(
        Charset charset, char separator, DecimalMark mark, int headerLine, List<Heading> headings) {

    /** So many lines tell how a file is laid out. */
    private static final int SAMPLE = 200;

    /** The first of these that parts nearly all lines alike: a comma may be a decimal mark. */
    private static final char[] SEPARATORS = {';', '\t', '|', ','};

    private static final double NEARLY_ALL = 0.8;

    private static final int LONGEST_LINE = 100_000;

    static Layout of(Path file) throws IOException, BuildFileException {
        Charset charset = charset(file);
        List<String> lines = sample(file, charset);
        for (char separator : SEPARATORS) {
            int count = usual(lines, separator);
            if (count > 0 && share(lines, separator, count) >= NEARLY_ALL) {
                return laidOut(charset, separator, count, lines);
            }
        }
        throw new BuildFileException(
                List.of(
                        new Problem(
                                0,
                                "",
                                "no separator parts its lines into columns",
                                "lines of fields parted by ; , | or tabs, the first of them the"
                                        + " names of the columns")));
    }

    /** Parts the file, behind its mark of byte order, into rows; whoever asks closes it. */
    CsvReader<CsvRecord> records(Path file) throws IOException {
        return CsvReader.builder()
                .fieldSeparator(separator)
                .skipEmptyLines(true)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .allowExtraCharsAfterClosingQuote(true)
                .ofCsvRecord(reader(file, charset));
    }

    private static Reader reader(Path file, Charset charset) throws IOException {
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(Files.newInputStream(file), charset));
        reader.mark(1);
        if (reader.read() != '\ufeff') {
            reader.reset();
        }
        return reader;
    }

    /** What is no UTF-8 is Latin-1, in which every byte is a letter. */
    private static Charset charset(Path file) throws IOException {
        byte[] bytes = new byte[1 << 16];
        var decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length);
        try (var in = Files.newInputStream(file)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            boolean isFirst = true;
            int read = in.read(bytes, 0, bytes.length);
            while (read >= 0) {
                buffer.limit(buffer.position() + read).position(0);
                if (isFirst && read >= 2 && isUtf16(bytes)) {
                    return StandardCharsets.UTF_16;
                }
                isFirst = false;
                text.clear();
                var result = decoder.decode(buffer, text, false);
                if (result.isError()) {
                    result.throwException();
                }
                buffer.compact();
                read = in.read(bytes, buffer.position(), bytes.length - buffer.position());
            }
            return StandardCharsets.UTF_8;
        } catch (CharacterCodingException noUtf8) {
            return StandardCharsets.ISO_8859_1;
        }
    }

    private static boolean isUtf16(byte[] bytes) {
        int mark = (bytes[0] & 0xff) << 8 | (bytes[1] & 0xff);
        return mark == 0xfeff || mark == 0xfffe;
    }

    private static List<String> sample(Path file, Charset charset) throws IOException {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        try (Reader reader = reader(file, charset)) {
            int letter = reader.read();
            while (letter >= 0 && lines.size() < SAMPLE && line.length() < LONGEST_LINE) {
                if (letter == '\n') {
                    lines.add(line.toString());
                    line.setLength(0);
                } else if (letter != '\r') {
                    line.append((char) letter);
                }
                letter = reader.read();
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static int count(String line, char separator) {
        int count = 0;
        boolean isQuoted = false;
        for (int i = 0; i < line.length(); i++) {
            isQuoted ^= line.charAt(i) == '"';
            count += !isQuoted && line.charAt(i) == separator ? 1 : 0;
        }
        return count;
    }

    private static int usual(List<String> lines, char separator) {
        List<Integer> counts =
                lines.stream()
                        .filter(line -> !line.isBlank())
                        .map(line -> count(line, separator))
                        .sorted()
                        .toList();
        return counts.isEmpty() ? 0 : counts.get(counts.size() / 2);
    }

    private static double share(List<String> lines, char separator, int count) {
        List<String> written = lines.stream().filter(line -> !line.isBlank()).toList();
        long alike = written.stream().filter(line -> count(line, separator) == count).count();
        return (double) alike / written.size();
    }

    private static Layout laidOut(Charset charset, char separator, int count, List<String> lines)
            throws BuildFileException {
        DecimalMark mark = mark(lines, separator);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (count(line, separator) == count || isAlikeButForTheEnd(lines, i, separator)) {
                List<String> fields = split(line, separator);
                if (!isHeader(fields, mark)) {
                    break;
                }
                return new Layout(
                        charset, separator, mark, i + 1, fields.stream().map(Heading::of).toList());
            }
        }
        throw new BuildFileException(
                List.of(
                        new Problem(
                                1,
                                "",
                                "there is no line that names the columns",
                                "a first line such as time [s]" + separator + "speed [km/h]")));
    }

    /** Some recorders end every row with a separator, or the header, and not the other. */
    private static boolean isAlikeButForTheEnd(List<String> lines, int line, char separator) {
        if (line + 1 == lines.size()) {
            return false;
        }
        String own = lines.get(line);
        String next = lines.get(line + 1);
        String end = String.valueOf(separator);
        return own.endsWith(end) != next.endsWith(end)
                && fields(own, separator) == fields(next, separator);
    }

    private static int fields(String line, char separator) {
        return count(line, separator) + (line.endsWith(String.valueOf(separator)) ? 0 : 1);
    }

    private static boolean isHeader(List<String> fields, DecimalMark mark) {
        long words =
                fields.stream()
                        .filter(field -> !field.isBlank() && Double.isNaN(mark.number(field)))
                        .count();
        return 2 * words > fields.size();
    }

    /** What more fields have, if the comma is not what parts them. */
    private static DecimalMark mark(List<String> lines, char separator) {
        if (separator == ',') {
            return DecimalMark.POINT;
        }
        int commas = 0;
        int points = 0;
        for (String line : lines) {
            for (String field : split(line, separator)) {
                commas += field.indexOf(',') >= 0 && isNumber(field, DecimalMark.COMMA) ? 1 : 0;
                points += field.indexOf('.') >= 0 && isNumber(field, DecimalMark.POINT) ? 1 : 0;
            }
        }
        return commas > points ? DecimalMark.COMMA : DecimalMark.POINT;
    }

    private static boolean isNumber(String field, DecimalMark mark) {
        return !Double.isNaN(mark.number(field));
    }

    private static List<String> split(String line, char separator) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean isQuoted = false;
        for (int i = 0; i < line.length(); i++) {
            char letter = line.charAt(i);
            if (letter == '"') {
                isQuoted = !isQuoted;
            } else if (letter == separator && !isQuoted) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(letter);
            }
        }
        fields.add(field.toString());
        return fields;
    }
}
