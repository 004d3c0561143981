package org.pullproof.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Reads {@code NAME=VALUE} as typed, each name once. */
final class Assignments {
    private Assignments() {}

    /**
     * @param example of a right one, for the message: "runs=yes"
     * @throws ParameterException with a sentence if one is none, or a name is told twice
     */
    static Map<String, String> of(List<String> typed, CommandLine command, String example) {
        Map<String, String> values = new LinkedHashMap<>();
        for (String assignment : typed) {
            int equals = assignment.indexOf('=');
            if (equals < 1) {
                throw new ParameterException(
                        command, "\"" + assignment + "\" is not NAME=VALUE: write for instance " + example + ".");
            }
            String name = assignment.substring(0, equals);
            if (values.put(name, assignment.substring(equals + 1)) != null) {
                throw new ParameterException(command, "\"" + name + "\" is told twice; tell it once.");
            }
        }
        return values;
    }
}
