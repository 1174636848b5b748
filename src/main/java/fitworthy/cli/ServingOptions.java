package fitworthy.cli;

import fitworthy.counter.Counter;
import fitworthy.counter.Serving;
import fitworthy.counter.desk.Desk;
import fitworthy.source.Fault;
import fitworthy.source.FaultsException;
import fitworthy.source.Place;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Where the counter's page is served, and who is let in. */
final class ServingOptions {

    private static final int HIGHEST_PORT = 65535;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "0",
            description = "The port; any that is free where left out.")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            description =
                    "An address of this machine by which others reach it; this machine alone where left out. What is"
                            + " sent is not encrypted.")
    private String host;

    @Option(
            names = "--password-file",
            paramLabel = "FILE",
            description = "A file with the password that lets in, which nobody but you may read. Needed for --host.")
    private Path passwordFile;

    /** What was asked for; warns on the error stream where others are let in. */
    Serving serving(CommandContext around) throws FaultsException {
        if (port < 0 || port > HIGHEST_PORT) {
            throw fault("--port", port + " is not a port", "1024 to " + HIGHEST_PORT + ", such as 8080");
        }
        Optional<String> password =
                passwordFile == null ? Optional.empty() : Optional.of(PasswordFile.read(passwordFile));
        InetAddress address = address();
        if (!address.isLoopbackAddress()) {
            if (password.isEmpty()) {
                throw fault("--host", "others would be let in without a password", "--password-file FILE beside it");
            }
            around.err()
                    .println(
                            "Others can reach this page, and change the sheets, if they know the password. Nothing is");
            around.err()
                    .println(
                            "encrypted: who listens in this network can read both. Use it only among people you trust.");
            around.err().flush();
        }
        return new Serving(host == null ? address.getHostAddress() : host, address, port, password, line -> {
            around.err().println(line);
            around.err().flush();
        });
    }

    /** A counter that is served. @throws FaultsException where the port cannot be had */
    Counter opened(Desk desk, Serving serving) throws FaultsException {
        try {
            return new Counter(desk, serving);
        } catch (Counter.NotOpened e) {
            throw fault(
                    "--port",
                    "nothing can be served at port " + port + " of "
                            + serving.address().getHostAddress() + ": " + e.getMessage(),
                    "another port, or none for any that is free");
        }
    }

    private InetAddress address() throws FaultsException {
        if (host == null) {
            return InetAddress.getLoopbackAddress();
        }
        try {
            InetAddress address = InetAddress.getByName(host);
            if (host.isBlank() || address.isAnyLocalAddress()) {
                throw fault("--host", "'" + host + "' stands for every address", "one of them, such as 192.168.1.20");
            }
            return address;
        } catch (UnknownHostException e) {
            throw fault(
                    "--host", "'" + host + "' is not an address", "an address of this machine, such as 192.168.1.20");
        }
    }

    private static FaultsException fault(String option, String problem, String mend) {
        return new FaultsException(List.of(new Fault(Place.of(option), "", problem, mend)));
    }
}
