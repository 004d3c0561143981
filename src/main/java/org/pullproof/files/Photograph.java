package org.pullproof.files;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/** A photograph as it came from the camera: JPEG or PNG. */
public final class Photograph {
    /** More than a photograph of a telephone; a guard against the wrong file. */
    private static final int MOST_BYTES = 40 * 1024 * 1024;

    /** More dots than any camera for a car has; a small file can claim and hold thousands of millions. */
    private static final long MOST_DOTS = 250_000_000;

    private final byte[] bytes;

    Photograph(byte[] bytes) {
        this.bytes = bytes.clone();
    }

    /**
     * @throws BadFileException with a sentence on what would be right, if it is no picture that can be shown
     */
    static void require(String name, byte[] bytes) throws BadFileException {
        if (bytes.length > MOST_BYTES) {
            throw new BadFileException(name, "", "the picture is larger than 40 MB; save it smaller.");
        }
        boolean known = begins(bytes, 0xFF, 0xD8, 0xFF) || begins(bytes, 0x89, 'P', 'N', 'G');
        if (!known || read(bytes, 64).isEmpty()) {
            throw new BadFileException(
                    name,
                    "",
                    "this is no picture that can be shown here; save it as JPEG or PNG, of no more than 250 million dots, and attach that.");
        }
    }

    private static boolean begins(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * The picture made small and turned upright, as the camera says it was held.
     *
     * @param longest length of its longer side, px
     * @return the bytes of a JPEG file
     */
    public byte[] thumbnail(int longest) {
        BufferedImage read = read(bytes, longest)
                .orElseThrow(() -> new IllegalStateException("A picture that was taken in can no longer be read"));
        return jpeg(upright(read, ExifOrientation.of(bytes), longest));
    }

    /** Reads no more dots than are needed: a photograph of a telephone fills 50 MB of memory. */
    private static Optional<BufferedImage> read(byte[] bytes, int longest) {
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            return Optional.of(read(readers.next(), in, longest));
        } catch (IOException | RuntimeException unreadable) {
            // readers of the library fail in both ways on a broken file
            return Optional.empty();
        }
    }

    private static BufferedImage read(ImageReader reader, ImageInputStream in, int longest) throws IOException {
        try {
            reader.setInput(in);
            if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_DOTS) {
                throw new IOException("The picture has more than " + MOST_DOTS + " dots");
            }
            ImageReadParam how = reader.getDefaultReadParam();
            int every = Math.max(1, Math.max(reader.getWidth(0), reader.getHeight(0)) / (2 * longest));
            how.setSourceSubsampling(every, every, 0, 0);
            return reader.read(0, how);
        } finally {
            reader.dispose();
        }
    }

    private static BufferedImage upright(BufferedImage read, int orientation, int longest) {
        int width = read.getWidth();
        int height = read.getHeight();
        double scale = Math.min(1, (double) longest / Math.max(width, height));
        boolean lying = orientation >= 5;
        BufferedImage small = new BufferedImage(
                dots(scale * (lying ? height : width)),
                dots(scale * (lying ? width : height)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = small.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, small.getWidth(), small.getHeight());
        pen.scale(scale, scale);
        pen.drawImage(read, turn(orientation, width, height), null);
        pen.dispose();
        return small;
    }

    private static int dots(double length) {
        return Math.max(1, (int) Math.round(length));
    }

    /** From the picture as stored to upright; the eight cases of the standard. */
    private static AffineTransform turn(int orientation, double width, double height) {
        return switch (orientation) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }

    private static byte[] jpeg(BufferedImage image) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "jpg", out);
        } catch (IOException broken) {
            throw new UncheckedIOException("A small picture could not be made", broken);
        }
        return out.toByteArray();
    }
}
