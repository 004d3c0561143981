/**
 * Makes the program's image: a folder that starts where no Java is. Begin with {@link org.pullproof.image.ImageMaker}; {@code
 * docs/packaging.md} says how it is run, decision 0034 why it is as it is. Its parts that are not Java lie in {@code src/image}.
 */
@NullMarked
package org.pullproof.image;

import org.jspecify.annotations.NullMarked;
