package org.pullproof.files;

import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.KeyDeserializer;
import com.fasterxml.jackson.databind.deser.std.FromStringDeserializer;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;
import org.pullproof.health.AirPlace;
import org.pullproof.health.faults.EngineState;
import org.pullproof.health.faults.Fault;
import org.pullproof.health.faults.FaultConstants;

/**
 * The constants of the fault model as the program brings them along; each stands with its value, unit and words. One that cannot be
 * read is a fault of the program.
 */
public final class FaultConstantsFile {
    private static final String NAME = "/org/pullproof/health/faults.json";

    private final JsonMapper json = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .addModule(keys())
            .build();

    /** Reads the constants of the program. */
    public FaultConstants read() {
        try (InputStream in = FaultConstantsFile.class.getResourceAsStream(NAME)) {
            if (in == null) {
                throw new IllegalStateException("The program lacks its file " + NAME);
            }
            ObjectNode file = (ObjectNode) json.readTree(in);
            file.remove("format");
            return json.treeToValue(valuesOf(file), FaultConstants.class);
        } catch (IOException broken) {
            throw new UncheckedIOException("The program's file " + NAME + " cannot be read", broken);
        }
    }

    /** Puts the value of each constant in the place of its value, unit and words. */
    private JsonNode valuesOf(ObjectNode section) {
        if (section.has("value")) {
            return section.required("value");
        }
        ObjectNode values = json.createObjectNode();
        section.forEachEntry((key, constant) -> values.set(key, valuesOf((ObjectNode) constant)));
        return values;
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
        return named.apply(key)
                .orElseThrow(() -> new IllegalArgumentException(NAME + ": \"" + key + "\" is not known"));
    }
}
