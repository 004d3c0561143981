package org.pullproof.ui.parts;

import java.io.Serializable;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Orders words as people count: base-2 before base-10, 92 psi before 158 psi, −1.4 before +2.7; what is no figure by its letters. */
final class AsPeopleCount implements Comparator<String>, Serializable {
    private static final long serialVersionUID = 1L;
    private static final Pattern FIGURE = Pattern.compile("^[+\u2212-]?\\d[\\d,]*(?:\\.\\d+)?");
    private static final Pattern RUN = Pattern.compile("\\d+|\\D+");

    @Override
    public int compare(String one, String other) {
        Matcher first = FIGURE.matcher(one);
        Matcher second = FIGURE.matcher(other);
        if (first.find() && second.find()) {
            int by = Double.compare(value(first.group()), value(second.group()));
            return by == 0 ? one.compareToIgnoreCase(other) : by;
        }
        return byRuns(one, other);
    }

    private static double value(String figure) {
        return Double.parseDouble(figure.replace(",", "").replace('\u2212', '-'));
    }

    private static int byRuns(String one, String other) {
        Matcher first = RUN.matcher(one);
        Matcher second = RUN.matcher(other);
        while (first.find() && second.find()) {
            int by = run(first.group(), second.group());
            if (by != 0) {
                return by;
            }
        }
        return Integer.compare(one.length(), other.length());
    }

    private static int run(String one, String other) {
        boolean figures = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
        return figures
                ? Double.compare(Double.parseDouble(one), Double.parseDouble(other))
                : one.compareToIgnoreCase(other);
    }
}
