package org.pullproof.files;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.pullproof.session.Problem;
import org.pullproof.units.Dimension;
import org.pullproof.units.Money;
import org.pullproof.units.Quantity;
import org.pullproof.units.Quoted;
import org.pullproof.units.Unit;

/**
 * One value of a JSON file together with its place, so that every complaint names file and path: {@code profile.banks[1].name}.
 * An unknown key, a missing one and a value of another kind are problems; nothing is replaced by a default.
 */
final class JsonPlace {
    /** Reads a value at its place. */
    @FunctionalInterface
    interface Reader<T> {
        T read(JsonPlace place) throws BadFileException;
    }

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final String file;
    private final String path;
    private final JsonNode node;

    private JsonPlace(String file, String path, JsonNode node) {
        this.file = file;
        this.path = path;
        this.node = node;
    }

    /**
     * Reads a whole file.
     *
     * @throws BadFileException with line and column if the bytes are not one JSON object
     */
    static JsonPlace parse(String file, byte[] bytes) throws BadFileException {
        JsonNode root = tree(file, bytes);
        if (!root.isObject()) {
            throw new BadFileException(file, "", "the file is empty or holds no JSON object; it begins with {.");
        }
        return new JsonPlace(file, "", root);
    }

    private static JsonNode tree(String file, byte[] bytes) throws BadFileException {
        try {
            return MAPPER.readTree(bytes);
        } catch (JsonEOFException end) {
            throw new BadFileException(
                    file, lineAndColumn(end), "the file is cut off here; a whole file ends with its last }.");
        } catch (JsonProcessingException wrong) {
            throw new BadFileException(file, lineAndColumn(wrong), "this is not JSON: " + firstLine(wrong) + ".");
        } catch (IOException unreadable) {
            throw new BadFileException(file, "", Reason.of(unreadable) + ".");
        }
    }

    private static String lineAndColumn(JsonProcessingException wrong) {
        JsonLocation at = wrong.getLocation();
        return at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
    }

    private static String firstLine(JsonProcessingException wrong) {
        return wrong.getOriginalMessage().lines().findFirst().orElse("unreadable");
    }

    /** The same place of the same file, its object changed; this one stays as it is. */
    JsonPlace changed(Consumer<ObjectNode> change) throws BadFileException {
        if (!node.isObject()) {
            throw problem("here stands " + kind() + "; an object in { } belongs here.");
        }
        ObjectNode copy = node.deepCopy();
        change.accept(copy);
        return new JsonPlace(file, path, copy);
    }

    BadFileException problem(String message) {
        return new BadFileException(file, path, message);
    }

    /** Makes a value; what its constructor refuses becomes a problem of this place. */
    <T> T checked(Supplier<T> maker) throws BadFileException {
        return refusing(place -> maker.get());
    }

    /** Reads a value from this place; what its constructor refuses becomes a problem of this place. */
    <T> T refusing(Reader<T> reader) throws BadFileException {
        try {
            return reader.read(this);
        } catch (IllegalArgumentException refused) {
            throw problem(sentence(refused));
        }
    }

    private static String sentence(Exception refused) {
        String message = String.valueOf(refused.getMessage());
        return message.endsWith(".") ? message : message + ".";
    }

    /** Refuses every key of this object that is not named here. */
    JsonPlace onlyKeys(String... keys) throws BadFileException {
        if (!node.isObject()) {
            throw problem("here stands " + kind() + "; an object with the keys " + String.join(", ", keys)
                    + " belongs here.");
        }
        List<Problem> unknown = new ArrayList<>();
        node.fieldNames().forEachRemaining(key -> {
            if (!Arrays.asList(keys).contains(key)) {
                unknown.add(new Problem(
                        file,
                        below(key),
                        "\"" + key + "\" is no key known here; the keys are " + String.join(", ", keys) + "."));
            }
        });
        if (!unknown.isEmpty()) {
            throw new BadFileException(unknown);
        }
        return this;
    }

    private String below(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    /** The value of a key that must be there. */
    JsonPlace at(String key) throws BadFileException {
        JsonNode child = node.get(key);
        if (child == null || child.isNull()) {
            throw problem("the key \"" + key + "\" is missing.");
        }
        return new JsonPlace(file, below(key), child);
    }

    <T> T need(String key, Reader<T> reader) throws BadFileException {
        return reader.read(at(key));
    }

    /** The value of a key that may be absent. */
    <T> Optional<T> maybe(String key, Reader<T> reader) throws BadFileException {
        return node.has(key) ? Optional.of(reader.read(at(key))) : Optional.empty();
    }

    OptionalInt maybeWhole(String key) throws BadFileException {
        return node.has(key) ? OptionalInt.of(at(key).whole()) : OptionalInt.empty();
    }

    /** The items of a list that may be absent; problems of all items are told together. */
    <T> List<T> each(String key, Reader<T> reader) throws BadFileException {
        return node.has(key) ? at(key).list(reader) : List.of();
    }

    <T> List<T> list(Reader<T> reader) throws BadFileException {
        if (!node.isArray()) {
            throw problem("here stands " + kind() + "; a list in [ ] belongs here.");
        }
        List<T> items = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (int i = 0; i < node.size(); i++) {
            try {
                items.add(reader.read(new JsonPlace(file, path + "[" + i + "]", node.get(i))));
            } catch (BadFileException bad) {
                problems.addAll(bad.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new BadFileException(problems);
        }
        return items;
    }

    /** The entries of an object whose keys are free, in their order; empty if the key is absent. */
    <T> Map<String, T> entries(String key, Reader<T> reader) throws BadFileException {
        Map<String, T> entries = new LinkedHashMap<>();
        if (node.has(key)) {
            JsonPlace object = at(key);
            for (String name : object.names()) {
                entries.put(name, reader.read(object.at(name)));
            }
        }
        return entries;
    }

    private List<String> names() throws BadFileException {
        if (!node.isObject()) {
            throw problem("here stands " + kind() + "; an object in { } belongs here.");
        }
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    String text() throws BadFileException {
        if (!node.isTextual()) {
            throw problem("here stands " + kind() + "; a text in \" \" belongs here.");
        }
        return node.textValue();
    }

    int whole() throws BadFileException {
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw problem("here stands " + kind() + "; a whole number belongs here.");
        }
        return node.intValue();
    }

    double number() throws BadFileException {
        if (!node.isNumber()) {
            throw problem("here stands " + kind() + "; a number belongs here.");
        }
        return node.doubleValue();
    }

    boolean flag() throws BadFileException {
        if (!node.isBoolean()) {
            throw problem("here stands " + kind() + "; true or false belongs here.");
        }
        return node.booleanValue();
    }

    private String kind() {
        return switch (node.getNodeType()) {
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            case STRING -> "the text \"" + Quoted.of(node.textValue()) + "\"";
            case NUMBER -> "the number " + Quoted.of(node.asText());
            case BOOLEAN -> node.asText();
            default -> "nothing";
        };
    }

    /** A text such as {@code 158 psi}. */
    Quantity quantity(Dimension dimension) throws BadFileException {
        String text = text();
        return checked(() -> Quantity.parse(text, dimension));
    }

    /** A quantity of whatever dimension its unit has. */
    Quantity quantity() throws BadFileException {
        String text = text();
        String name = text.replaceFirst("^\\s*[+\\-\u2212]?[\\d.,]+", "");
        Unit unit = Unit.named(name)
                .orElseThrow(() -> problem("\"" + Quoted.of(text) + "\" is no figure with a unit, such as 158 psi."));
        return quantity(unit.dimension());
    }

    Money money() throws BadFileException {
        String text = text();
        return checked(() -> Money.parse(text));
    }

    LocalDateTime time() throws BadFileException {
        return when(LocalDateTime::parse, "a time", "2026-06-14T13:40");
    }

    LocalDate date() throws BadFileException {
        return when(LocalDate::parse, "a date", "2026-06-14");
    }

    private <T> T when(Function<String, T> parser, String what, String example) throws BadFileException {
        String text = text();
        try {
            return parser.apply(text);
        } catch (DateTimeParseException wrong) {
            throw problem("\"" + Quoted.of(text) + "\" is not " + what + ": write " + example + ".");
        }
    }

    /** One of an enum's keys, see {@link Keys}. */
    <E extends Enum<E>> E oneOf(Class<E> type) throws BadFileException {
        String text = text();
        E[] all = type.getEnumConstants();
        return Arrays.stream(all)
                .filter(one -> Keys.of(one).equals(text))
                .findFirst()
                .orElseThrow(() -> problem("\"" + Quoted.of(text) + "\" is none of "
                        + Arrays.stream(all).map(Keys::of).collect(Collectors.joining(", ")) + "."));
    }
}
