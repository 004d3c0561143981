package org.pullproof.robustness;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Spoils a file a little: the same way for the same seed. */
final class Spoiler {
    private static final Pattern FIGURE = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern WORD = Pattern.compile("\"[^\"\\n]{0,60}\"|[^,;\\t\\n]{1,30}");
    private static final List<String> FIGURES = List.of(
            "NaN",
            "-NaN",
            "Infinity",
            "1e308",
            "-1e308",
            "1e309",
            "1e-400",
            "0",
            "-0",
            "-1",
            "00",
            "2147483648",
            "1e5",
            "99999999999999999999999999",
            "9223372036854775808",
            "0.0000000000000000000000001",
            "1e-308",
            "0x10",
            "1,5",
            "1.797e308",
            "12345678",
            "-273.15",
            "1/0",
            "٣",
            "1_000",
            ".",
            "-",
            "+",
            "1e",
            "0.1.2");
    private static final List<String> WORDS = List.of(
            "\"\"",
            "null",
            "true",
            "[]",
            "{}",
            "[[[[[[[[",
            "\"a\"",
            "\"\\u0000\"",
            "\"\\ud800\"",
            "\"../../x\"",
            "\" \"",
            "\"1e308psi\"",
            "\"NaNpsi\"",
            "\"-1psi\"",
            "\"999999999999USD\"",
            "\"0hp\"",
            "\"1e400 USD\"",
            "\"2026-02-30\"",
            "\"+999999999-12-31\"",
            "\"-999999999-01-01T00:00\"",
            "\"compression-dry\"",
            "\"as-found\"",
            "\"\u202egpj.exe\"",
            "\"9\"",
            "1e400mi",
            "\"158 psi psi\"",
            "\"%s%n\"",
            "\"${x}\"",
            "=1+1",
            "\"",
            "'",
            ",,,,,,,,",
            "{\"a\":",
            "\uFEFF",
            "\u2028");

    private final Random random;

    Spoiler(long seed) {
        this.random = new Random(seed);
    }

    /** Spoils it in one to four places. */
    byte[] spoil(byte[] whole) {
        byte[] bytes = whole;
        for (int times = 1 + random.nextInt(4); times > 0; times--) {
            bytes = random.nextInt(3) == 0 ? spoilBytes(bytes) : spoilText(bytes);
        }
        return bytes;
    }

    private byte[] spoilText(byte[] bytes) {
        String text = new String(bytes, UTF_8);
        return switch (random.nextInt(5)) {
            case 0, 1 -> replaced(text, FIGURE, FIGURES).getBytes(UTF_8);
            case 2, 3 -> replaced(text, WORD, WORDS).getBytes(UTF_8);
            default -> lines(text).getBytes(UTF_8);
        };
    }

    private String replaced(String text, Pattern pattern, List<String> by) {
        List<MatchResult> places = pattern.matcher(text).results().toList();
        if (places.isEmpty()) {
            return text + one(by);
        }
        MatchResult place = places.get(random.nextInt(places.size()));
        return text.substring(0, place.start()) + one(by) + text.substring(place.end());
    }

    private String one(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    /** A line lost, doubled or moved. */
    private String lines(String text) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        String line = lines.get(random.nextInt(lines.size()));
        if (random.nextBoolean()) {
            lines.remove(line);
        }
        if (random.nextBoolean()) {
            lines.add(random.nextInt(lines.size() + 1), line);
        }
        return String.join("\n", lines);
    }

    private byte[] spoilBytes(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int upTo = Math.min(bytes.length, at + random.nextInt(40));
        String head = new String(bytes, 0, at, ISO_8859_1);
        String middle = new String(bytes, at, upTo - at, ISO_8859_1);
        String tail = new String(bytes, upTo, bytes.length - upTo, ISO_8859_1);
        String spoilt = switch (random.nextInt(4)) {
            case 0 -> head;
            case 1 -> head + tail;
            case 2 -> head + middle.repeat(1 + random.nextInt(50)) + tail;
            default -> head + noise() + tail;
        };
        return spoilt.getBytes(ISO_8859_1);
    }

    private String noise() {
        byte[] noise = new byte[1 + random.nextInt(8)];
        random.nextBytes(noise);
        return new String(noise, ISO_8859_1);
    }
}
