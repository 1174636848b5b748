import java.io.BufferedReader;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Kills a counter (SIGKILL) at random moments while values are typed into the touring sheet, starts it anew each time and
 * looks whether the sheet is as before or after the last edit and read without a fault, whether undo and redo lead through
 * the step, and what else lies in the folder. Arguments are how often, and the program where it is not the packaged one.
 *
 * <pre>mvn -q -B -ntp -DskipTests package &amp;&amp; java src/bench/CounterKills.java 50</pre>
 */
public final class CounterKills {

    private static final Random RANDOM = new Random(50);
    private static final Path FOLDER = Path.of("target", "counter-kills").toAbsolutePath();
    private static final Path SHEET = FOLDER.resolve("touring.yaml");
    private static final String AT = "/sheets/touring.yaml";
    private static final Pattern VERSION = Pattern.compile("id=\"version\" name=\"version\" value=\"([^\"]*)\"");
    /** Changed in turn, so that each edit is a step of its own. */
    private static final List<String> PEOPLE = List.of("Ines", "Tobias");

    private CounterKills() {}

    /** A counter that runs, and a client that it has let in. */
    private record Running(Process program, String address, HttpClient client) {

        static Running started(List<String> program) throws Exception {
            List<String> command = new ArrayList<>(program);
            command.addAll(List.of("counter", FOLDER.toString(), "--port", "0"));
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            BufferedReader printed = process.inputReader(StandardCharsets.UTF_8);
            String line = printed.readLine();
            while (line != null && !line.contains("http://")) {
                line = printed.readLine();
            }
            URI in = URI.create(line.strip());
            HttpClient client = HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();
            client.send(HttpRequest.newBuilder(in).build(), HttpResponse.BodyHandlers.discarding());
            return new Running(process, "http://" + in.getAuthority(), client);
        }

        String page() throws Exception {
            return client.send(
                            HttpRequest.newBuilder(URI.create(address + AT)).build(),
                            HttpResponse.BodyHandlers.ofString())
                    .body();
        }

        /** @param form as it is sent @return the version after it */
        String post(String what, String form) throws Exception {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create(address + AT + "/" + what))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .header("Origin", address)
                            .POST(HttpRequest.BodyPublishers.ofString(form))
                            .build(),
                    HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(answer.statusCode() + " " + answer.body());
            }
            return version(answer.body());
        }

        void kill() throws InterruptedException {
            // A launcher script is a parent of what is to be killed, not the thing itself.
            program.descendants().forEach(ProcessHandle::destroyForcibly);
            program.destroyForcibly().waitFor();
        }
    }

    public static void main(String[] args) throws Exception {
        int kills = Integer.parseInt(args[0]);
        List<String> program =
                args.length > 1 ? List.of(args).subList(1, args.length) : List.of("target/fitworthy/bin/fitworthy");
        clear();
        copy(Path.of("scenarios"));
        Set<String> right = names();
        List<String> states = new ArrayList<>(List.of(Files.readString(SHEET)));
        int ahead = 0;
        int behind = 0;
        int edits = 0;
        int wrong = 0;
        Map<String, Integer> left = new TreeMap<>();
        Running running = Running.started(program);
        for (int kill = 0; kill < kills; kill++) {
            Typist typist = new Typist(running, states);
            typist.start();
            while (typist.isAlive() && typist.done == 0) {
                Thread.sleep(5);
            }
            Thread.sleep(RANDOM.nextInt(1000));
            running.kill();
            typist.join();
            edits += typist.done;
            String written = Files.readString(SHEET);
            if (written.equals(typist.asked)) {
                ahead++;
                states.add(written);
            } else if (written.equals(states.get(states.size() - 1))) {
                behind++;
            } else {
                wrong++;
                System.out.println("kill " + kill + ": neither before nor after the last edit");
            }
            running = Running.started(program);
            wrong += wrong(running, states) ? 1 : 0;
            for (String name : names()) {
                if (!right.contains(name)) {
                    left.merge(name.replaceAll("\\d{4,}", "N"), 1, Integer::sum);
                }
            }
        }
        running.kill();
        System.out.printf(
                "%d kills, %d edits answered; sheet as before the last edit %d, after it %d, wrong %d; beside it %s%n",
                kills, edits, behind, ahead, wrong, left);
    }

    /** Whether the page tells a fault, or undo and redo do not lead to the text before and back. */
    private static boolean wrong(Running running, List<String> states) throws Exception {
        String page = running.page();
        boolean whole = page.contains("id=\"told\"") && !page.contains("no picture while the sheet has a fault");
        String written = states.get(states.size() - 1);
        String earlier = states.get(states.size() - 2);
        String version = running.post("undo", "version=" + version(page));
        boolean undone = Files.readString(SHEET).equals(earlier);
        running.post("redo", "version=" + version);
        boolean redone = Files.readString(SHEET).equals(written);
        if (!whole || !undone || !redone) {
            System.out.printf("whole %s, undone %s, redone %s%n", whole, undone, redone);
        }
        return !whole || !undone || !redone;
    }

    private static String version(String page) {
        Matcher version = VERSION.matcher(page);
        if (!version.find()) {
            throw new IllegalStateException(page);
        }
        return version.group(1);
    }

    /** Changes one mass and the other until nobody answers. */
    private static final class Typist extends Thread {

        private final Running running;
        private final List<String> states;
        /** The text after the edit that was not answered. */
        private String asked;

        private volatile int done;

        Typist(Running running, List<String> states) {
            this.running = running;
            this.states = states;
        }

        @Override
        public void run() {
            try {
                String version = version(running.page());
                while (true) {
                    String now = states.get(states.size() - 1);
                    // What is typed in one field is one step.
                    String who = PEOPLE.get(states.size() % 2);
                    int mass = 50 + states.size() % 37;
                    asked = now.replaceFirst("(name: " + who + ", mass: )\\d+ kg[^,}]*", "$1" + mass + " kg");
                    version = running.post(
                            "set",
                            "version=" + version + "&field=f&path=occupants." + who + ".mass&value=" + mass + "+kg");
                    states.add(asked);
                    asked = null;
                    done = done + 1;
                }
            } catch (IOException e) {
                // Killed.
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static Set<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(FOLDER)) {
            return all.map(each -> FOLDER.relativize(each).toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static void copy(Path from) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, FOLDER.resolve(from.relativize(file).toString()));
            }
        }
    }

    private static void clear() throws IOException {
        if (Files.exists(FOLDER)) {
            try (Stream<Path> all = Files.walk(FOLDER)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            }
        }
    }
}
