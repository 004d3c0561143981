package org.pullproof.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The present document with those before and after it. Immutable.
 *
 * @param past earlier documents with the name of the edit that left them, oldest first
 * @param present the document now
 * @param future undone documents with the name of the edit that leads to them, next first
 */
public record History(List<Version> past, Session present, List<Version> future) {
    public History {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    /**
     * @param edit name of the edit between this document and its neighbour nearer to the present
     * @param document the document
     */
    public record Version(String edit, Session document) {}

    public static History of(Session session) {
        return new History(List.of(), session, List.of());
    }

    /** Does an edit; what was undone before is gone. */
    public History edit(Edit edit) {
        Session next = edit.applyTo(present);
        return new History(append(past, new Version(edit.name(), present)), next, List.of());
    }

    /** The name of the edit that undo would take back. */
    public Optional<String> undoName() {
        return past.isEmpty()
                ? Optional.empty()
                : Optional.of(past.get(past.size() - 1).edit());
    }

    /** The name of the edit that redo would do again. */
    public Optional<String> redoName() {
        return future.isEmpty() ? Optional.empty() : Optional.of(future.get(0).edit());
    }

    /** Takes the last edit back; the same history if there is none. */
    public History undo() {
        if (past.isEmpty()) {
            return this;
        }
        Version last = past.get(past.size() - 1);
        return new History(
                past.subList(0, past.size() - 1), last.document(), prepend(new Version(last.edit(), present), future));
    }

    /** Does the last undone edit again; the same history if there is none. */
    public History redo() {
        if (future.isEmpty()) {
            return this;
        }
        Version next = future.get(0);
        return new History(
                append(past, new Version(next.edit(), present)), next.document(), future.subList(1, future.size()));
    }

    private static List<Version> append(List<Version> versions, Version last) {
        List<Version> longer = new ArrayList<>(versions);
        longer.add(last);
        return longer;
    }

    private static List<Version> prepend(Version first, List<Version> versions) {
        List<Version> longer = new ArrayList<>();
        longer.add(first);
        longer.addAll(versions);
        return longer;
    }
}
