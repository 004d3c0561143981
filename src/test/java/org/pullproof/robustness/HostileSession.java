package org.pullproof.robustness;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.pullproof.files.BadFileException;
import org.pullproof.files.SessionFolder;

/** Puts hostile words into every text of a session that takes them. */
final class HostileSession {
    /** Each tells by its number which words reached an output. */
    static final List<String> WORDS = List.of(
            "\"><script>alert(1)</script><img src=x onerror=alert(1)>",
            "=HYPERLINK(\"http://example.invalid\")",
            "+1+cmd|' /C calc'!A0",
            "@SUM(A1)",
            "\u202Egpj.exe \u2066x\u2069 \u200Fy",
            "../../../etc/passwd",
            "\u001B[2J\u001B]0;title\u0007\u0000\b\u009B31m",
            "]]><!-- --><svg onload=alert(1)>",
            "%s%n${7*7}{{7*7}}",
            "one\ntwo\r\nthree\u2028four\tfive");

    private static final Pattern FIXED = Pattern.compile("format|writtenBy|id|sha256|kept|presentSetup");

    private final Path folder;
    private final JsonNode root;
    private final String words;
    private int taken;

    private HostileSession(Path folder, String words) throws IOException {
        this.folder = folder;
        this.root = new ObjectMapper().readTree(folder.resolve("session.json").toFile());
        this.words = words;
    }

    /**
     * Writes the words into every text of the session that is not refused with them; each refusal is a sentence.
     *
     * @return how many texts took them
     */
    static int fill(Path folder, String words) throws IOException {
        HostileSession session = new HostileSession(folder, words);
        session.fill(session.root);
        session.write();
        return session.taken;
    }

    private void write() throws IOException {
        Files.writeString(folder.resolve("session.json"), root.toString());
    }

    private void fill(JsonNode node) throws IOException {
        if (node instanceof ObjectNode object) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            for (String name : names) {
                if (!object.get(name).isTextual()) {
                    fill(object.get(name));
                } else if (!FIXED.matcher(name).matches()) {
                    tryOn(object.get(name), () -> object.set(name, new TextNode(words)), old -> object.set(name, old));
                }
            }
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                int at = i;
                if (!array.get(i).isTextual()) {
                    fill(array.get(i));
                } else {
                    tryOn(array.get(i), () -> array.set(at, new TextNode(words)), old -> array.set(at, old));
                }
            }
        }
    }

    private void tryOn(JsonNode old, Runnable change, java.util.function.Consumer<JsonNode> back) throws IOException {
        change.run();
        write();
        try {
            new SessionFolder(folder).read();
            taken++;
        } catch (BadFileException refused) {
            if (refused.getMessage() == null
                    || Inertness.steers(refused.getMessage().replace('\n', ' '))) {
                throw new AssertionError("The refusal steers: " + refused.getMessage(), refused);
            }
            back.accept(old);
        }
    }
}
