package fitworthy.counter;

import java.net.InetAddress;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Where the counter is served, and to whom.
 *
 * @param host an address of this machine, as it was named and browsers are to name it
 * @param address the same
 * @param port 0 for any that is free
 * @param password what lets in; empty where the address that is printed does
 * @param log is given what went wrong that should not, in a line
 */
public record Serving(String host, InetAddress address, int port, Optional<String> password, Consumer<String> log) {

    /** Refuses to serve other machines without a password, and addresses that stand for several. */
    public Serving {
        if (address.isAnyLocalAddress() || (!address.isLoopbackAddress() && password.isEmpty())) {
            throw new IllegalArgumentException("other machines are let in by a password, at an address that is named");
        }
    }

    /** For this machine alone. */
    public static Serving here(int port, Consumer<String> log) {
        InetAddress address = InetAddress.getLoopbackAddress();
        return new Serving(address.getHostAddress(), address, port, Optional.empty(), log);
    }
}
