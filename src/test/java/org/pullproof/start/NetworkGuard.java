package org.pullproof.start;

import java.net.SocketPermission;
import java.net.URLPermission;
import java.security.Permission;

/**
 * Refuses everything that would reach for a network, also the look-up of a name, and says so on standard error; allows all else.
 * Put into a Java of its own with {@code -Djava.security.manager=org.pullproof.start.NetworkGuard}.
 */
@SuppressWarnings("removal") // Java 17 to 23 have it, and nothing else sees every library's sockets
public final class NetworkGuard extends SecurityManager {
    /** What stands before each refusal. */
    static final String ASKED = "The network was asked for: ";

    /** The port that stands for the look-up of a name. */
    private static final int LOOK_UP = -1;

    @Override
    public void checkConnect(String host, int port) {
        if (port == LOOK_UP && isForTheFontsOfTheJdk()) {
            throw new SecurityException("The fonts do without the name of this computer");
        }
        refuse("connect to " + host + " port " + port);
    }

    @Override
    public void checkConnect(String host, int port, Object context) {
        checkConnect(host, port);
    }

    @Override
    public void checkListen(int port) {
        refuse("listen at port " + port);
    }

    @Override
    public void checkAccept(String host, int port) {
        refuse("accept " + host + " port " + port);
    }

    @Override
    public void checkPermission(Permission asked) {
        if (asked instanceof SocketPermission || asked instanceof URLPermission) {
            refuse(asked.toString());
        }
    }

    @Override
    public void checkPermission(Permission asked, Object context) {
        checkPermission(asked);
    }

    /** On Linux the JDK names the file in which it keeps the list of fonts after this computer, and does without if it may not. */
    private static boolean isForTheFontsOfTheJdk() {
        return StackWalker.getInstance()
                .walk(frames -> frames.anyMatch(frame -> frame.getClassName().equals("sun.font.FcFontConfiguration")));
    }

    private static void refuse(String what) {
        new Throwable(ASKED + what).printStackTrace();
        throw new SecurityException(ASKED + what);
    }
}
