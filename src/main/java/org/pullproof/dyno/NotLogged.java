package org.pullproof.dyno;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says of pulls what was not logged: there a flag could not be raised, and its absence is no clean bill. */
public final class NotLogged {
    private NotLogged() {}

    /** One sentence for all pulls that lack the same; none if everything was logged. */
    public static List<String> sentences(List<PullFindings> pulls) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        for (PullFindings pull : pulls) {
            String roles = pull.trace().notLogged().stream().map(Role::words).collect(Collectors.joining(", "));
            if (!roles.isEmpty()) {
                names.computeIfAbsent(roles, none -> new ArrayList<>()).add(pull.name());
            }
        }
        List<String> sentences = new ArrayList<>();
        names.forEach((roles, own) ->
                sentences.add("Not logged, and so not judged, in " + String.join(", ", own) + ": " + roles + "."));
        return sentences;
    }
}
