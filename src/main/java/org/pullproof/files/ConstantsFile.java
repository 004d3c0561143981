package org.pullproof.files;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.LongNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.session.Judgement;
import org.pullproof.session.TradeConstant;

/**
 * A file of constants as the program brings it along; each stands with its value, unit, status and words. One that cannot be read is
 * a fault of the program.
 *
 * @param <T> the constants as values
 */
final class ConstantsFile<T> {
    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
            .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
            .addModule(keys())
            .build();

    private final String key;
    private final String path;
    private final Class<T> type;

    /**
     * @param key first part of the names of its constants
     * @param path of the file among the program's resources
     */
    ConstantsFile(String key, String path, Class<T> type) {
        this.key = key;
        this.path = path;
        this.type = type;
    }

    /**
     * Its constants, those edited in the place of the program's own.
     *
     * @throws IllegalArgumentException with a sentence if the edited values don't go together
     */
    T read(Judgement judgement) {
        try {
            return JSON.treeToValue(valuesOf(key, tree(), judgement), type);
        } catch (JsonProcessingException unfit) {
            throw new IllegalArgumentException(
                    "The values of " + path + " don't go together: " + unfit.getOriginalMessage(), unfit);
        }
    }

    /** Every constant with what is said of it, in the order of the file. */
    List<TradeConstant> constants() {
        List<TradeConstant> constants = new ArrayList<>();
        collect(key, tree(), constants);
        return constants;
    }

    private static void collect(String name, JsonNode node, List<TradeConstant> constants) {
        if (node.has("value")) {
            constants.add(constant(name, node));
        } else {
            node.forEachEntry((key, inner) -> collect(name + "." + key, inner, constants));
        }
    }

    private static TradeConstant constant(String name, JsonNode node) {
        List<TradeConstant.Figure> numbers = new ArrayList<>();
        numbers(name, "", node.required("value"), numbers);
        return new TradeConstant(
                name,
                node.required("words").textValue(),
                node.required("unit").textValue(),
                node.required("status").textValue(),
                node.has("sum") ? Optional.of(node.required("sum").doubleValue()) : Optional.empty(),
                numbers);
    }

    /** A list of numbers, or the numbers of one object, are a row. */
    private static void numbers(String name, String label, JsonNode value, List<TradeConstant.Figure> numbers) {
        if (value.isNumber()) {
            String row = name.substring(0, name.lastIndexOf('.'));
            numbers.add(new TradeConstant.Figure(name, label, row, value.doubleValue()));
        } else if (value.isObject()) {
            value.forEachEntry((key, inner) -> numbers(name + "." + key, (label + " " + key).strip(), inner, numbers));
        } else if (value.isArray()) {
            for (int i = 0; i < value.size(); i++) {
                numbers(name + "." + i, (label + " " + (i + 1)).strip(), value.required(i), numbers);
            }
        }
    }

    /** Puts the value of each constant in the place of its value, unit and words. */
    private static JsonNode valuesOf(String name, JsonNode section, Judgement judgement) {
        if (section.has("value")) {
            return edited(name, section.required("value"), judgement);
        }
        ObjectNode values = JSON.createObjectNode();
        section.forEachEntry((key, inner) -> values.set(key, valuesOf(name + "." + key, inner, judgement)));
        return values;
    }

    private static JsonNode edited(String name, JsonNode value, Judgement judgement) {
        if (value.isObject()) {
            ObjectNode object = JSON.createObjectNode();
            value.forEachEntry((key, inner) -> object.set(key, edited(name + "." + key, inner, judgement)));
            return object;
        }
        if (value.isArray()) {
            var array = JSON.createArrayNode();
            for (int i = 0; i < value.size(); i++) {
                array.add(edited(name + "." + i, value.required(i), judgement));
            }
            return array;
        }
        return judgement.of(name).map(ConstantsFile::number).orElse(value);
    }

    private static JsonNode number(double value) {
        return value == Math.rint(value) ? LongNode.valueOf((long) value) : DoubleNode.valueOf(value);
    }

    private ObjectNode tree() {
        try (InputStream in = ConstantsFile.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + path);
            }
            ObjectNode file = (ObjectNode) JSON.readTree(in);
            file.remove("format");
            return file;
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + path + " cannot be read", broken);
        }
    }

    private static SimpleModule keys() {
        SimpleModule module = new SimpleModule();
        add(module, Fault.class, Fault::named);
        add(module, EngineState.class, EngineState::named);
        add(module, AirPlace.class, AirPlace::named);
        return module;
    }

    private static <E extends Enum<E>> void add(
            SimpleModule module, Class<E> type, Function<String, Optional<E>> named) {
        module.addKeyDeserializer(type, new KeyDeserializer() {
            @Override
            public Object deserializeKey(String key, DeserializationContext context) {
                return required(named, key);
            }
        });
        module.addDeserializer(type, new FromStringDeserializer<E>(type) {
            private static final long serialVersionUID = 1;

            @Override
            protected E _deserialize(String key, DeserializationContext context) {
                return required(named, key);
            }
        });
    }

    private static <E> E required(Function<String, Optional<E>> named, String key) {
        return named.apply(key).orElseThrow(() -> new IllegalArgumentException("\"" + key + "\" is not known"));
    }
}
