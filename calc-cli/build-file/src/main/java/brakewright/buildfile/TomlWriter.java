package brakewright.buildfile;

import brakewright.assembly.Completed;
import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Writes a build file anew: what it says in its own words and with its own comments, and as
 * comments of ours what is taken where it says nothing. Read again it is the same vehicle, and
 * writes itself.
 */
final class TomlWriter {

    private static final Pattern BARE = Pattern.compile("[A-Za-z0-9_-]+");

    private final Given given;
    private final Completed completed;
    private final TomlComments.Owned comments;
    private final Set<String> told = new LinkedHashSet<>();
    private final StringBuilder text = new StringBuilder();

    TomlWriter(Given given, Completed completed) {
        this.given = given;
        this.completed = completed;
        this.comments = given.source().comments();
    }

    String text() {
        line(
                TomlComments.MADE
                        + " Lines that begin like this one tell what is taken where the file says nothing.");
        text.append('\n');
        said("title", "title", given.title());
        if (!given.notes().isEmpty()) {
            said("notes", "notes", given.notes());
        }
        Set<String> tables = tables();
        for (String table : tables) {
            if (!isOfPack(table)) {
                table(table, PackPlace.one(), given.values(), completed.whole());
            } else if (table.equals(PackPlace.ONE)) {
                packs(tables.stream().filter(TomlWriter::isOfPack).toList());
            }
        }
        given.proposals().forEach(this::proposal);
        recording();
        rest();
        return text.toString();
    }

    /** The tables of the schema, in its order. */
    private static Set<String> tables() {
        Set<String> tables = new LinkedHashSet<>();
        Schema.all().forEach(entry -> tables.add(table(entry.key())));
        return tables;
    }

    private static boolean isOfPack(String table) {
        return table.equals(PackPlace.ONE) || table.startsWith(PackPlace.ONE + ".");
    }

    private void packs(List<String> tables) {
        for (int i = 0; i < given.packs().size(); i++) {
            GivenPack pack = given.packs().get(i);
            for (String table : tables) {
                table(table, pack.place(), pack.values(), completed.packs().get(i));
            }
        }
    }

    private void table(
            String table, PackPlace place, Map<Input, Value> values, Map<Input, Resolved> all) {
        List<Schema.Entry> entries =
                Schema.all().stream()
                        .filter(entry -> table(entry.key()).equals(table))
                        .filter(entry -> all.containsKey(entry.input()))
                        .toList();
        boolean isPack = table.equals(PackPlace.ONE);
        if (entries.isEmpty() && !isPack) {
            return;
        }
        boolean isSaid =
                isPack || entries.stream().anyMatch(entry -> values.containsKey(entry.input()));
        text.append('\n');
        heading(table, place, isSaid);
        if (isPack) {
            cell(place);
        }
        for (Schema.Entry entry : entries) {
            Value own = values.get(entry.input());
            if (own != null) {
                given(entry, place.key(entry.input()), own);
            } else {
                Resolved taken = all.get(entry.input());
                if (taken != null) {
                    made(name(entry.key()) + " = " + TomlLiteral.of(entry, taken.value()), taken);
                }
            }
        }
    }

    /** A heading of nothing but what is taken is a comment, too: an empty table says something. */
    private void heading(String table, PackPlace place, boolean isSaid) {
        String key = place.key(table + ".").replaceAll("\\.$", "");
        boolean isOneOfSeveral = !place.table().equals(PackPlace.ONE) && isOfPack(table);
        String heading =
                isOneOfSeveral && table.equals(PackPlace.ONE)
                        ? "[[" + PackPlace.SEVERAL + "]]"
                        : place.heading(table);
        if (isSaid) {
            commented(table.equals(PackPlace.ONE) ? place.table() : key, heading);
        } else {
            line(TomlComments.MADE + " " + heading);
        }
    }

    private void cell(PackPlace place) {
        String key = place.key(GivenPack.CELL);
        given.packs().stream()
                .filter(pack -> pack.place().equals(place) && !pack.cell().isEmpty())
                .forEach(pack -> said(key, "cell", pack.cell()));
    }

    private void given(Schema.Entry entry, String key, Value value) {
        Optional<String> source = given.changes().sourceOf(entry.input());
        source.ifPresent(from -> line(TomlComments.MADE + " from " + from));
        Object raw = source.isPresent() ? null : given.source().raw().get(key);
        commented(
                key,
                name(entry.key())
                        + " = "
                        + (raw == null ? TomlLiteral.of(entry, value) : TomlLiteral.ofRaw(raw)));
    }

    private void said(String key, String name, String value) {
        commented(key, name + " = " + TomlLiteral.quoted(value));
    }

    /** A value that the file does not give, with where it is from. */
    private void made(String assignment, Resolved taken) {
        boolean isNew = !taken.kind().isEmpty() && !taken.kind().equals(taken.source());
        String kind = isNew ? ", " + taken.kind() : "";
        line(
                TomlComments.MADE
                        + " "
                        + assignment
                        + "  # "
                        + taken.from().key()
                        + ", "
                        + taken.source()
                        + kind);
    }

    private void proposal(String name, Changes changes) {
        String key = Changes.PROPOSALS + name;
        text.append('\n');
        commented(
                key,
                "[proposals." + (BARE.matcher(name).matches() ? name : '"' + name + '"') + "]");
        Map<String, Object> raw = given.source().raw();
        changes.all()
                .forEach(
                        (input, change) -> {
                            String own = key + "." + Changes.keyOf(input);
                            Object said = raw.get(own);
                            commented(
                                    own,
                                    Changes.keyOf(input)
                                            + " = "
                                            + (said == null
                                                    ? TomlLiteral.of(
                                                            Schema.of(input), change.value())
                                                    : TomlLiteral.ofRaw(said)));
                        });
    }

    private void recording() {
        String last = "";
        for (String key : RecordingKeys.inOrder(given.source().raw())) {
            String table = table(key);
            if (!table.equals(last)) {
                text.append('\n');
                commented(table, "[" + table + "]");
            }
            last = table;
            said(key, name(key), String.valueOf(given.source().raw().get(key)));
        }
    }

    /** Comments of what is not written any more are kept, too. */
    private void rest() {
        List<String> left = new ArrayList<>();
        Map<String, List<String>> above = new LinkedHashMap<>(comments.above());
        above.keySet().removeAll(told);
        above.values().forEach(left::addAll);
        Map<String, String> beside = new LinkedHashMap<>(comments.beside());
        beside.keySet().removeAll(told);
        left.addAll(beside.values());
        left.addAll(comments.last());
        if (!left.isEmpty()) {
            text.append('\n');
            left.forEach(this::line);
        }
    }

    /** Something with the comments of its key. */
    private void commented(String key, String said) {
        told.add(key);
        comments.above().getOrDefault(key, Collections.emptyList()).forEach(this::line);
        String beside = comments.beside().get(key);
        line(beside == null ? said : said + "  " + beside);
    }

    private void line(String said) {
        text.append(said).append('\n');
    }

    private static String table(String key) {
        return key.substring(0, key.lastIndexOf('.'));
    }

    private static String name(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }
}
