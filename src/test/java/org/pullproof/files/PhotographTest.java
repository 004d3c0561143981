package org.pullproof.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * How a camera was held: Exif 2.3 (CIPA DC-008-2012), 4.6.4 A, tag 0x0112 Orientation, where 1 means "the 0th row is at the visual
 * top, the 0th column at the visual left", 3 bottom and right, 6 right and top, 8 left and bottom.
 */
class PhotographTest {
    /** Stored 80 wide and 40 high, its left quarter red, the rest blue. */
    private static byte[] jpeg() throws IOException {
        BufferedImage image = new BufferedImage(80, 40, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.BLUE);
        pen.fillRect(0, 0, 80, 40);
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, 20, 40);
        pen.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        return out.toByteArray();
    }

    /** The same file with an APP1 segment put after its first two bytes. */
    private static byte[] held(int orientation, ByteOrder order) throws IOException {
        ByteBuffer app1 = ByteBuffer.allocate(36);
        app1.putShort((short) 0xFFE1).putShort((short) 34);
        app1.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        app1.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        app1.order(order).putShort((short) 42).putInt(8).putShort((short) 1);
        app1.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        app1.putInt(0);
        byte[] plain = jpeg();
        return ByteBuffer.allocate(plain.length + 36)
                .put(plain, 0, 2)
                .put(app1.array())
                .put(plain, 2, plain.length - 2)
                .array();
    }

    private static BufferedImage shown(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(new Photograph(file).thumbnail(80)));
    }

    private static boolean isRed(BufferedImage image, double across, double down) {
        Color color = new Color(
                image.getRGB((int) (across * (image.getWidth() - 1)), (int) (down * (image.getHeight() - 1))));
        return color.getRed() > color.getBlue();
    }

    @ParameterizedTest
    @CsvSource({
        "1, 80, 40, left",
        "2, 80, 40, right",
        "3, 80, 40, right",
        "4, 80, 40, left",
        "5, 40, 80, top",
        "6, 40, 80, top",
        "7, 40, 80, bottom",
        "8, 40, 80, bottom"
    })
    void aPictureStandsUprightHoweverTheCameraWasHeld(int orientation, int width, int height, String red)
            throws IOException {
        BufferedImage image = shown(held(orientation, ByteOrder.LITTLE_ENDIAN));

        assertThat(image.getWidth()).isEqualTo(width);
        assertThat(image.getHeight()).isEqualTo(height);
        assertThat(isRed(image, 0.05, 0.5)).isEqualTo(red.equals("left"));
        assertThat(isRed(image, 0.95, 0.5)).isEqualTo(red.equals("right"));
        assertThat(isRed(image, 0.5, 0.05)).isEqualTo(red.equals("top"));
        assertThat(isRed(image, 0.5, 0.95)).isEqualTo(red.equals("bottom"));
    }

    @Test
    void bothByteOrdersAreUnderstood() throws IOException {
        assertThat(ExifOrientation.of(held(6, ByteOrder.BIG_ENDIAN))).isEqualTo(6);
        assertThat(ExifOrientation.of(held(8, ByteOrder.LITTLE_ENDIAN))).isEqualTo(8);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 9, 4711})
    void anOrientationThatDoesNotExistMeansUpright(int told) throws IOException {
        assertThat(ExifOrientation.of(held(told, ByteOrder.BIG_ENDIAN))).isEqualTo(1);
    }

    @Test
    void aFileCutOffAnywhereMeansUprightOrWhatItTold() throws IOException {
        byte[] whole = held(6, ByteOrder.BIG_ENDIAN);
        for (int length = 0; length < 60; length++) {
            assertThat(ExifOrientation.of(java.util.Arrays.copyOf(whole, length)))
                    .isIn(1, 6);
        }
    }

    @Test
    void aSmallPictureIsNotMadeLarger() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(new Photograph(jpeg()).thumbnail(400)));
        assertThat(image.getWidth()).isEqualTo(80);
    }

    @Test
    void whatIsNoPictureIsRefusedWithWhatWouldBeRight() {
        assertThatExceptionOfType(BadFileException.class)
                .isThrownBy(() -> Photograph.require("IMG_1.heic", "....ftypheic".getBytes(StandardCharsets.US_ASCII)))
                .withMessageContaining("save it as JPEG or PNG");
    }

    /** 60,000 by 60,000 black dots of one bit: 450 MB in a file of 440 kB. PNG (ISO/IEC 15948), 11.2.2 and 11.2.4. */
    @Test
    void aSmallFileOfThousandsOfMillionsOfDotsIsRefusedAtOnce() throws IOException {
        int side = 60_000;
        ByteArrayOutputStream dots = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflate = new DeflaterOutputStream(dots)) {
            byte[] row = new byte[1 + side / 8];
            for (int i = 0; i < side; i++) {
                deflate.write(row);
            }
        }
        ByteBuffer head = ByteBuffer.allocate(13).putInt(side).putInt(side).put(8, (byte) 1);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.write(new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'});
        chunk(png, "IHDR", head.array());
        chunk(png, "IDAT", dots.toByteArray());
        chunk(png, "IEND", new byte[0]);

        assertTimeout(
                Duration.ofSeconds(2),
                () -> assertThatExceptionOfType(BadFileException.class)
                        .isThrownBy(() -> Photograph.require("bomb.png", png.toByteArray()))
                        .withMessageContaining("no more than 250 million dots"));
    }

    private static void chunk(ByteArrayOutputStream png, String name, byte[] data) throws IOException {
        byte[] named = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(named);
        check.update(data);
        png.write(ByteBuffer.allocate(4).putInt(data.length).array());
        png.write(named);
        png.write(data);
        png.write(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
    }

    @Test
    void aPictureWhoseDotsAreBrokenIsRefused() throws IOException {
        byte[] broken = java.util.Arrays.copyOf(jpeg(), 24);
        assertThatExceptionOfType(BadFileException.class).isThrownBy(() -> Photograph.require("a.jpg", broken));
    }
}
