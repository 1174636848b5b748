package fitworthy.counter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * As what the server is asked for. A page from elsewhere can have a name of its own lead to this machine, and only the
 * name it asks by tells.
 */
final class Names {

    private final List<String> hosts = new ArrayList<>();

    Names(Serving serving) {
        String host = serving.host().toLowerCase(Locale.ROOT);
        hosts.add(host.contains(":") ? "[" + host + "]" : host);
        if (serving.address().isLoopbackAddress()) {
            hosts.addAll(List.of("localhost", "127.0.0.1", "[::1]"));
        }
    }

    /** The name to print, with its port. */
    String first(int port) {
        return hosts.get(0) + ":" + port;
    }

    /** Whether this is a host as browsers send it that means this server. */
    boolean hold(String host, int port) {
        // The one port that browsers leave out.
        return hosts.stream().anyMatch(name -> (name + ":" + port).equals(host) || (port == 80 && name.equals(host)));
    }

    /** Whether a page from there is one of this server's. */
    boolean holdOrigin(String origin, int port) {
        return origin != null && origin.startsWith("http://") && hold(origin.substring("http://".length()), port);
    }
}
