package org.pullproof.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pullproof.advice.Appraisal;
import org.pullproof.car.Fact;
import org.pullproof.car.FactWords;
import org.pullproof.engine.EngineProfile;
import org.pullproof.engine.Geometry;
import org.pullproof.report.ReportModel.Item;
import org.pullproof.report.ReportModel.Section;
import org.pullproof.session.Note;
import org.pullproof.session.Session;
import org.pullproof.units.Figures;
import org.pullproof.units.Quantity;
import org.pullproof.units.Shown;

/** What the car is, what its owner told, and what the profile assumes of the engine. */
record CarSection(Appraisal appraisal, Wording wording) {
    Section section() {
        Session session = appraisal.session();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(appraisal.carAnswer()));
        blocks.add(new Block.Items(told(session)));
        blocks.add(new Block.Items(engine(session.profile())));
        if (!session.notes().isEmpty()) {
            List<String> notes = session.notes().stream().map(CarSection::note).toList();
            blocks.add(new Block.Points("notes", "Notes", notes, false));
        }
        return new Section("car", "The car and its engine", "as told by its owner", blocks);
    }

    private List<Item> told(Session session) {
        List<Item> items = new ArrayList<>();
        for (Fact fact : Fact.values()) {
            session.car()
                    .told(fact)
                    .ifPresent(text -> items.add(new Item(fact.key(), fact.words(), FactWords.of(fact, text))));
        }
        return items;
    }

    private List<Item> engine(EngineProfile profile) {
        Geometry geometry = profile.geometry();
        String assumed = geometry.assumed() ? ", assumed by the profile" : "";
        List<Item> items = new ArrayList<>();
        items.add(new Item("profile", "Profile", profile.name()));
        items.add(
                new Item("firingOrder", "Firing order", joined(profile.firing().cylinders())));
        items.add(new Item("intervals", "Intervals", joined(profile.firing().intervals()) + ", degrees of crank"));
        items.add(new Item("ignition", "Ignition", profile.ignition().words()));
        items.add(new Item("fuelSystem", "Fuel system", profile.fuel().words()));
        items.add(new Item(
                "boreStroke",
                "Bore × stroke",
                wording.figures().bare(geometry.boreMetre(), Shown.BORE) + " × "
                        + wording.figures().of(geometry.strokeMetre(), Shown.BORE) + assumed));
        items.add(new Item(
                "displacement",
                "Displacement",
                wording.figures().of(profile.displacement(), Shown.DISPLACEMENT) + assumed));
        items.add(new Item(
                "compressionRatio",
                "Compression ratio",
                Figures.number(geometry.compressionRatio(), 1) + " : 1" + assumed));
        items.add(new Item(
                "plugGap",
                "Plug gap",
                range(profile.plugs().gapFrom(), profile.plugs().gapTo())));
        items.add(new Item(
                "plugTorque",
                "Plug torque",
                range(profile.plugs().torqueFrom(), profile.plugs().torqueTo()) + ", "
                        + profile.plugs().seat()));
        items.add(new Item(
                "interference",
                "Interference engine",
                profile.interference().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
        return items;
    }

    private static String range(Quantity from, Quantity to) {
        return from.figure().toPlainString() + " to " + Wording.typed(to);
    }

    private static String joined(List<Integer> numbers) {
        return String.join("-", numbers.stream().map(String::valueOf).toList());
    }

    private static String note(Note note) {
        return Wording.minute(note.time()) + ": " + note.words();
    }
}
