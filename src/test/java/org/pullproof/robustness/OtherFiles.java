package org.pullproof.robustness;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.pullproof.files.BadFileException;
import org.pullproof.files.PreferenceFile;
import org.pullproof.files.Preferences;
import org.pullproof.files.SessionFolder;
import org.pullproof.files.SessionZip;
import org.pullproof.files.StepsFile;
import org.pullproof.files.TradeFiles;
import org.pullproof.session.About;
import org.pullproof.session.Picture;
import org.pullproof.session.Problem;
import org.pullproof.testing.FileTree;

/**
 * Reads files that are not the session itself, and tells the sentences they are refused with.
 *
 * @param folder that may be written
 */
record OtherFiles(Path folder) {
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 6, 14, 12, 0);

    /** Preferences with something in every place. */
    byte[] somePreferences() throws IOException {
        PreferenceFile file = new PreferenceFile(folder);
        file.write(Preferences.atFirst()
                .withNight(true)
                .withOpened(Path.of("sessions", "red-car"))
                .withWindow(new Preferences.WindowPlace(10, 20, 1280, 800, false))
                .withSheet("Health"));
        return Files.readAllBytes(folder.resolve("preferences.json"));
    }

    List<Problem> preferences(byte[] bytes) throws IOException {
        Files.write(folder.resolve("preferences.json"), bytes);
        return new PreferenceFile(folder).read().problem().stream().toList();
    }

    List<Problem> steps(byte[] bytes) {
        try {
            new StepsFile(new TradeFiles()).read("steps.json", bytes);
            return List.of();
        } catch (BadFileException refused) {
            return refused.problems();
        }
    }

    byte[] someZip() throws IOException {
        Path zip = folder.resolve("sample.zip");
        new SessionZip(zip).write(Path.of("demo-sessions", "grey-coupe"));
        return Files.readAllBytes(zip);
    }

    /** What is unpacked lies in its own folder alone; what is refused leaves nothing. */
    List<Problem> zip(byte[] bytes) throws IOException {
        Path zip = Files.write(folder.resolve("shared.zip"), bytes);
        Path parent = Files.createDirectories(folder.resolve("unpacked"));
        try {
            Path unpacked = new SessionZip(zip).unpack(parent);
            require(FileTree.names(parent).equals(List.of(String.valueOf(unpacked.getFileName()))), parent);
            return List.of();
        } catch (BadFileException refused) {
            require(FileTree.names(parent).isEmpty(), parent);
            return refused.problems();
        } finally {
            FileTree.delete(parent);
        }
    }

    private static void require(boolean alone, Path parent) throws IOException {
        if (!alone) {
            throw new IllegalStateException("There lies " + FileTree.names(parent));
        }
    }

    List<byte[]> somePictures() throws IOException {
        List<byte[]> pictures = new ArrayList<>();
        for (String kind : List.of("jpg", "png")) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), kind, out);
            pictures.add(out.toByteArray());
        }
        return pictures;
    }

    List<Problem> picture(byte[] bytes) throws IOException {
        SessionFolder session = new SessionFolder(folder.resolve("album"));
        try {
            Picture kept = session.keepPicture(new About(About.Kind.CAR, ""), "", "gauge.jpg", bytes, NOON);
            session.photograph(kept).thumbnail(400);
            return List.of();
        } catch (BadFileException refused) {
            return refused.problems();
        } finally {
            if (Files.exists(folder.resolve("album"))) {
                FileTree.delete(folder.resolve("album"));
            }
        }
    }
}
