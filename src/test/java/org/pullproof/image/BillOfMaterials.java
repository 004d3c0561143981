package org.pullproof.image;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;

/** What the image is made of, in the open form CycloneDX: name, version, licence and check sums of every library. */
final class BillOfMaterials {
    private static final String PLACES = "externalReferences";

    private BillOfMaterials() {}

    /** Copies a bill without the addresses in it: where a library is discussed or was fetched from is no part of the image. */
    static void copy(Path bill, Path to) throws IOException {
        ObjectMapper json = new ObjectMapper();
        JsonNode tree = json.readTree(bill.toFile());
        tree.findParents(PLACES).forEach(thing -> ((ObjectNode) thing).remove(PLACES));
        json.writerWithDefaultPrettyPrinter().writeValue(to.toFile(), tree);
    }
}
