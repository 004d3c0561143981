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

    @Override
    public void checkConnect(String host, int port) {
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

    private static void refuse(String what) {
        System.err.println(ASKED + what);
        throw new SecurityException(ASKED + what);
    }
}
