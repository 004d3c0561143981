package org.pullproof.start;

import java.util.Arrays;

/**
 * Starts a program with a window and says when its first usable frame stood: the node waited for is in a showing window, laid
 * out and drawn, and the thread that takes input is free again. Then ends.
 */
public final class FrameWatch {
    /** What stands before the time. */
    static final String USABLE = "usable ";

    private FrameWatch() {}

    /**
     * Prints the time of the first usable frame, in milliseconds since 1970.
     *
     * @param arguments the style class of the node waited for, the class of the program, its arguments
     */
    public static void main(String[] arguments) throws ReflectiveOperationException {
        Thread watch = new Thread(() -> watch(arguments[0]), "frame-watch");
        watch.setDaemon(true);
        watch.start();
        var program = Class.forName(arguments[1]).getDeclaredMethod("main", String[].class);
        program.setAccessible(true);
        program.invoke(null, (Object) Arrays.copyOfRange(arguments, 2, arguments.length));
    }

    private static void watch(String node) {
        Screen.awaitFrame(Screen.await(node));
        System.out.println(USABLE + System.currentTimeMillis());
        System.out.flush();
        Runtime.getRuntime().halt(0);
    }
}
