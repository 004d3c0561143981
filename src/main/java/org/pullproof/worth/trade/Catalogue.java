package org.pullproof.worth.trade;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * All that the trade brings along.
 *
 * @param currency of its money
 * @param numbers every number
 * @param faults in the order they are told
 * @param works by key
 * @param parts shared parts of plans by name
 * @param plans in the order they are told
 */
public record Catalogue(
        String currency,
        JudgedNumbers numbers,
        List<FaultRow> faults,
        Map<String, Work> works,
        Map<String, Branch> parts,
        List<Plan> plans) {
    public Catalogue {
        faults = List.copyOf(faults);
        works = Map.copyOf(works);
        parts = Map.copyOf(parts);
        plans = List.copyOf(plans);
    }

    /**
     * The same with the owner's own numbers. What a buyer takes off for a fault follows from the bills, unless it is told.
     *
     * @throws IllegalArgumentException if there is no number of such a key
     */
    public Catalogue with(Map<String, Double> own) {
        JudgedNumbers edited = numbers.with(own);
        works.values().forEach(work -> requireOrder(work, edited));
        Catalogue told = new Catalogue(currency, edited, faults, works, parts, plans);
        Map<String, Double> discounts = new LinkedHashMap<>();
        faults.forEach(fault -> discounts.put(fault.number("discount"), new CureCost(told).discount(fault)));
        return new Catalogue(currency, told.numbers.withUsual(discounts), faults, works, parts, plans);
    }

    private static void requireOrder(Work work, JudgedNumbers numbers) {
        double low = numbers.of(work.number("p10"));
        double likely = numbers.of(work.number("p50"));
        double high = numbers.of(work.number("p90"));
        if (!(low <= likely && likely <= high)) {
            throw new IllegalArgumentException(
                    work.words() + ": costs go from low to high, were " + low + ", " + likely + ", " + high);
        }
    }

    /**
     * @throws IllegalArgumentException if the catalogue has no such work
     */
    public Work work(String key) {
        Work work = works.get(key);
        if (work == null) {
            throw new IllegalArgumentException("\"" + key + "\" is no work known here");
        }
        return work;
    }

    /**
     * @throws IllegalArgumentException if the catalogue has no such part
     */
    public Branch part(String name) {
        Branch part = parts.get(name);
        if (part == null) {
            throw new IllegalArgumentException("\"" + name + "\" is no part of a plan known here");
        }
        return part;
    }

    /** A number by its key. */
    public double number(String key) {
        return numbers.of(key);
    }
}
