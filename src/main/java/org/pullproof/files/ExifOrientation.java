package org.pullproof.files;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, as its JPEG file tells: 1 upright, 3 upside down, 6 to be turned a quarter clockwise, 8 a quarter
 * counter-clockwise; 2, 4, 5, 7 the same mirrored. Source: Exif 2.3 (CIPA DC-008), tag 0x0112 Orientation in the 0th IFD, in the
 * APP1 segment of the file.
 */
final class ExifOrientation {
    private static final int UPRIGHT = 1;
    private static final int TAG = 0x0112;
    private static final int SHORT = 3;
    private static final int APP1 = 0xFFE1;
    private static final int START_OF_SCAN = 0xFFDA;
    private static final int ENTRY_BYTES = 12;
    private static final byte[] EXIF = {'E', 'x', 'i', 'f', 0, 0};

    private ExifOrientation() {}

    /** 1 to 8; 1 where the file does not tell, is none of these, or is cut off. */
    static int of(byte[] file) {
        ByteBuffer bytes = ByteBuffer.wrap(file);
        int at = 2; // after the mark that begins a JPEG file
        while (at + 4 <= file.length) {
            int marker = bytes.getShort(at) & 0xFFFF;
            int length = bytes.getShort(at + 2) & 0xFFFF;
            if (marker < 0xFF00 || marker == START_OF_SCAN || length < 2 || at + 2 + length > file.length) {
                return UPRIGHT;
            }
            if (marker == APP1 && isExif(file, at + 4)) {
                int begin = at + 4 + EXIF.length;
                return inDirectory(bytes.slice(begin, at + 2 + length - begin));
            }
            at += 2 + length;
        }
        return UPRIGHT;
    }

    private static boolean isExif(byte[] file, int at) {
        return at + EXIF.length <= file.length
                && java.util.Arrays.equals(file, at, at + EXIF.length, EXIF, 0, EXIF.length);
    }

    /** Offsets count from the byte order that begins the directory. */
    private static int inDirectory(ByteBuffer tiff) {
        if (tiff.limit() < 8) {
            return UPRIGHT;
        }
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int first = tiff.getInt(4);
        if (first < 8 || first > tiff.limit() - 2) {
            return UPRIGHT;
        }
        int entries = tiff.getShort(first) & 0xFFFF;
        for (int at = first + 2; entries > 0 && at + ENTRY_BYTES <= tiff.limit(); at += ENTRY_BYTES, entries--) {
            if ((tiff.getShort(at) & 0xFFFF) == TAG && tiff.getShort(at + 2) == SHORT) {
                return known(tiff.getShort(at + 8));
            }
        }
        return UPRIGHT;
    }

    private static int known(int told) {
        return told >= 1 && told <= 8 ? told : UPRIGHT;
    }
}
