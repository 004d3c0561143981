package org.pullproof.files;

/** The number every file of ours carries, so that a later version knows what it reads. */
final class DocumentFormat {
    private DocumentFormat() {}

    /**
     * @param current the newest format this version reads
     * @throws BadFileException if the file has no number, or another than this version reads
     */
    static void require(JsonPlace place, int current) throws BadFileException {
        JsonPlace number = place.at("format");
        int format = number.whole();
        if (format < 1 || format > current) {
            String reads = current == 1 ? "1" : "1 to " + current;
            throw number.problem("the file has format " + format + "; this version reads " + reads
                    + (format > current ? ". It was written by a newer version, which can open it." : "."));
        }
    }
}
