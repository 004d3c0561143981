package org.pullproof.files;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A schema of docs/formats, as a JSON Schema 2020-12 validator from outside reads it. */
public final class JsonSchema {
    private final Schema schema;

    private JsonSchema(Schema schema) {
        this.schema = schema;
    }

    /** Reads a schema; the schemas it refers to lie beside it. */
    public static JsonSchema read(Path file) {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(
                SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(JsonSchema::text));
        return new JsonSchema(registry.getSchema(SchemaLocation.of(file.toUri().toString())));
    }

    private static String text(String location) {
        try {
            return Files.readString(Path.of(URI.create(location)));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** What in the text does not conform, one line each; empty if all does. */
    public List<String> problems(String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Error::toString)
                .toList();
    }
}
