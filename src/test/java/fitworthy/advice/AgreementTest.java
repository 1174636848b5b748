package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import fitworthy.Books;
import fitworthy.MadeSheet;
import fitworthy.Sheets;
import fitworthy.Told;
import fitworthy.Twigs;
import fitworthy.book.Severity;
import fitworthy.engine.BookLoader;
import fitworthy.engine.RuleEngine;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.figures.plan.PointMass;
import fitworthy.fuzz.SheetFuzz;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Mark;
import fitworthy.sheet.Fitment;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.NodePath;
import fitworthy.source.NodeReader;
import fitworthy.source.Place;
import fitworthy.source.Trees;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/**
 * What must hold of every sheet, tried on made ones. The seed stands with each property, so that a build tries the same
 * sheets each time; {@code mvn test -Dtest=AgreementTest -Djqwik.tries.default=5000} tries more of them.
 */
class AgreementTest {

    private static final String SEED = "4711";
    private static final List<String> EXTREMES =
            List.of("0", "0.000000000001", "999999999999", "-999999999999", "1", "-1", "1000");
    private static final Place NOWHERE = Place.of("made");
    /** Of a sum, in the share of the sum of its parts' sizes. */
    private static final double LAST_BITS = 1e-9;

    @Provide
    Arbitrary<MadeSheet> sheets() {
        return MadeSheet.any();
    }

    @Provide
    Arbitrary<MadeSheet> towing() {
        return MadeSheet.any().filter(each -> each.sheet().trailer().isPresent());
    }

    /**
     * A weighbridge reading holds whatever the parts are, so what is said here of parts is said of sheets without one.
     */
    @Provide
    Arbitrary<MadeSheet> unweighed() {
        return MadeSheet.any()
                .map(each -> each.with(changedCases(each.tree(), loadCase -> loadCase.without("weighed"))));
    }

    private static void same(Told expected, Told actual, String... but) {
        assertEquals(List.of(), expected.against(actual, but));
    }

    /** Of two parts of a kind that one vehicle has once the first counts, and the advice says that there are two. */
    @Property(seed = SEED)
    void orderOfFitmentsDoesNotMatter(@ForAll("sheets") MadeSheet sheet, @ForAll Random random) throws FaultsException {
        Advice advice = sheet.advice();
        Assume.that(
                advice.findings().stream().noneMatch(each -> each.judged().id().equals("across.twins")));
        same(
                Told.of(advice),
                Told.of(sheet.with(shuffled(sheet.tree(), "fitments", random)).advice()));
    }

    /** A weighbridge reading corrects the cases, and the first reading does where there are two. */
    @Property(seed = SEED)
    void orderOfLoadCasesDoesNotMatter(@ForAll("sheets") MadeSheet sheet, @ForAll Random random)
            throws FaultsException {
        same(
                Told.of(sheet.advice()),
                Told.of(sheet.with(shuffled(sheet.tree(), "cases", random)).advice()));
    }

    /** All rules are in other files, the last in the first, and stand in them in reverse. */
    @Property(seed = SEED)
    void orderOfRulesAndTheirFilesDoesNotMatter(@ForAll("sheets") MadeSheet sheet) throws FaultsException, IOException {
        same(Told.of(sheet.advice()), Told.of(Adviser.advise(Turned.engine(), sheet.sheet())), "rule", "content");
    }

    /** The lever law: of a mass between the axles each limit loses what it carries, so that no headroom grows. */
    @Property(seed = SEED)
    void addedMassTakesItsShareOfEachLimit(
            @ForAll("unweighed") MadeSheet sheet,
            @ForAll @IntRange(min = 1, max = 900) int kg,
            @ForAll @IntRange(max = 1000) int thousandths)
            throws FaultsException {
        Advice before = sheet.advice();
        double wheelbase = before.loadings().get(0).plan().wheelbase().value();
        double share = Math.round(wheelbase * thousandths) / 1000.0 / wheelbase;
        Advice after = sheet.with(laden(sheet.tree(), kg, Math.round(wheelbase * thousandths)))
                .advice();
        headrooms(before).forEach((measure, headroom) -> {
            double less = measure.contains("front axle")
                    ? kg * (1 - share)
                    : measure.contains("rear axle") ? kg * share : measure.startsWith("mass.roof") ? 0 : kg;
            Double left = headrooms(after).get(measure);
            // What is behind a cut is asked for once it may be too much.
            if (left != null
                    || !after.sheet().fitments().stream()
                            .anyMatch(part -> part.kind() == Fitment.Kind.CHASSIS_EXTENSION)) {
                assertEquals(headroom - less, left, 1e-6, measure);
            }
        });
        assertTrue(
                stops(after, "mass.").containsAll(stops(before, "mass.")),
                () -> stops(before, "mass.") + " but then " + stops(after, "mass."));
    }

    @Property(seed = SEED)
    void partMovedBackNeverUnloadsTheRearAxle(
            @ForAll("unweighed") MadeSheet sheet,
            @ForAll @IntRange(max = 9999) int pick,
            @ForAll @IntRange(min = 1, max = 3000) int mm)
            throws FaultsException {
        List<Fitment> parts = sheet.advice().sheet().fitments();
        // A protection bar stays at the front.
        Set<String> bars = IntStream.rangeClosed(1, parts.size())
                .filter(number -> parts.get(number - 1).kind() == Fitment.Kind.BAR)
                .mapToObj(number -> "fitments." + number + ".at.x")
                .collect(Collectors.toSet());
        List<Twigs.Twig> places = Twigs.of(sheet.tree()).stream()
                .filter(each -> each.path().toString().matches("(fitments|cargo)\\.[0-9]+\\.at\\.x")
                        && !bars.contains(each.path().toString())
                        && each.value().text().matches("-?[0-9.]+ mm"))
                .toList();
        if (places.isEmpty()) {
            return;
        }
        Twigs.Twig place = places.get(pick % places.size());
        BigDecimal x = new BigDecimal(place.value().text().replace(" mm", "")).add(BigDecimal.valueOf(mm));
        MadeSheet moved =
                sheet.with(Trees.with(sheet.tree(), place.path(), new Node.Scalar(NOWHERE, x + " mm", false)));
        List<Loading> before = sheet.advice().loadings();
        List<Loading> after = moved.advice().loadings();
        for (int i = 0; i < before.size(); i++) {
            AxleLoads one = before.get(i).axles();
            AxleLoads other = after.get(i).axles();
            assertTrue(!(other.rear().value() < one.rear().value() - 1e-6), () -> one + ", but then " + other);
            assertTrue(!(other.front().value() > one.front().value() + 1e-6), () -> one + ", but then " + other);
            assertEquals(one.total().value(), other.total().value(), 1e-6);
        }
    }

    @Property(seed = SEED)
    void heavierTrailerClearsNoStop(@ForAll("towing") MadeSheet sheet, @ForAll @IntRange(min = 1, max = 2000) int kg)
            throws FaultsException {
        Matcher mass = MadeSheet.QUANTITY.matcher(
                Mark.read(((Node.Scalar) NodePath.of("trailer", "mass").in(sheet.tree())).text())
                        .text());
        Assume.that(mass.matches()); // Else it is asked for.
        String heavier = mass.group(2).startsWith(" kg")
                ? new BigDecimal(mass.group(1)).add(BigDecimal.valueOf(kg)) + mass.group(2)
                : mass.group(1) + mass.group(2);
        Advice after = sheet.with(Trees.with(sheet.tree(), NodePath.of("trailer", "mass"), heavier))
                .advice();
        for (String topic : List.of("mass.", "towing.")) {
            Set<String> stops = stops(sheet.advice(), topic);
            assertTrue(stops(after, topic).containsAll(stops), () -> stops + " but then " + stops(after, topic));
        }
    }

    @Property(seed = SEED)
    void unitsDoNotMatter(@ForAll("sheets") MadeSheet sheet, @ForAll Random random) throws FaultsException {
        Node.Mapping other = Twigs.each(
                sheet.tree(), (field, text) -> field.matches("name|title") ? text : inOtherUnits(text, random));
        same(
                Told.of(sheet.advice(), AgreementTest::inPrintedUnits),
                Told.of(sheet.with(other).advice(), AgreementTest::inPrintedUnits));
    }

    /** Without what stands behind a limit as the sheet or the law has it, which is there for its unit's sake. */
    private static String inPrintedUnits(String text) {
        return text.replaceAll(" \\([0-9.]+ (lb|in|mi|mph|psi|US gal|imp gal|lbf|lb/in)\\)", "");
    }

    /** Of what is as bad on either side a question names the left, in the mirror as well. */
    @Property(seed = SEED)
    void mirrorImageSwapsLeftAndRight(@ForAll("sheets") MadeSheet sheet) throws FaultsException {
        Advice advice = sheet.advice();
        // What is unusual is told as it stands on the sheet, with its sign.
        Assume.that(advice.findings().stream()
                .noneMatch(each -> each.judged().id().equals("across.unusual")
                        && each.judged().subject().endsWith(".y")));
        // Of two mirrors that a camera is to make up for, the left one stands for both.
        Assume.that(
                advice.findings().stream().noneMatch(each -> each.judged().id().equals("across.camera-no-cure"))
                        || advice.findings().stream()
                                        .filter(each -> each.judged().id().equals("mirrors.trailer-hides"))
                                        .map(Outcome::check)
                                        .distinct()
                                        .count()
                                < 2);
        same(
                Told.of(advice, AgreementTest::swapped),
                Told.of(sheet.with((Node.Mapping) mirrored(sheet.tree(), "")).advice()),
                "worst");
    }

    @Property(seed = SEED)
    void jsonAndYamlOfASheetAreTheSameSheet(@ForAll("sheets") MadeSheet sheet) throws FaultsException {
        for (ObjectMapper writer : List.of(
                new ObjectMapper(),
                new ObjectMapper(new YAMLFactory()),
                new ObjectMapper(YAMLFactory.builder()
                        .enable(YAMLGenerator.Feature.MINIMIZE_QUOTES)
                        .build()))) {
            String text = Twigs.written(sheet.tree(), writer);
            assertEquals(sheet.sheet(), Sheets.read(NodeReader.read("made", text, new ArrayList<>())), text);
        }
    }

    /** Nothing that a sheet may say makes a figure that is none, or a text that is not read back. */
    @Property(seed = SEED)
    void extremeFiguresGiveAdviceOrFaults(
            @ForAll("sheets") MadeSheet sheet, @ForAll @IntRange(min = 1, max = 8) int many, @ForAll Random random)
            throws FaultsException, IOException {
        Node.Mapping tree = sheet.tree();
        List<Twigs.Twig> all = Twigs.of(tree).stream()
                .filter(each -> MadeSheet.QUANTITY.matcher(each.value().text()).matches())
                .toList();
        for (int i = 0; i < many; i++) {
            Twigs.Twig twig = all.get(random.nextInt(all.size()));
            Matcher quantity = MadeSheet.QUANTITY.matcher(twig.value().text());
            assertTrue(quantity.matches());
            String number = EXTREMES.get(random.nextInt(EXTREMES.size()));
            tree = Trees.with(tree, twig.path(), new Node.Scalar(NOWHERE, number + quantity.group(2), false));
        }
        SheetFuzz.advised(Twigs.written(tree, new ObjectMapper()).getBytes(StandardCharsets.UTF_8));
    }

    /** The axles carry what there is, and their moments about the front axle are those of the masses. */
    @Property(seed = SEED)
    void momentsSumToTheTotal(@ForAll("sheets") MadeSheet sheet) throws FaultsException {
        for (Loading each : sheet.advice().loadings()) {
            AxleLoads axles = each.axles();
            if (axles.total().known() && axles.rear().known()) {
                double sum = each.masses().stream()
                        .mapToDouble(mass -> mass.mass().value())
                        .sum();
                double size = each.masses().stream()
                        .mapToDouble(mass -> Math.abs(mass.mass().value()))
                        .sum();
                assertEquals(sum, axles.total().value(), LAST_BITS * size);
                assertEquals(sum, axles.front().value() + axles.rear().value(), LAST_BITS * size);
                double wheelbase = each.plan().wheelbase().value();
                double moment = each.masses().stream()
                        .mapToDouble(AgreementTest::moment)
                        .sum();
                double moments = each.masses().stream()
                                .mapToDouble(mass -> Math.abs(moment(mass)))
                                .sum()
                        + size * wheelbase;
                assertEquals(moment, axles.rear().value() * wheelbase, LAST_BITS * moments);
                assertEquals(moment, each.centre().x().value() * axles.total().value(), LAST_BITS * moments);
            }
        }
    }

    private static double moment(PointMass mass) {
        return mass.mass().value() * mass.at().x().value();
    }

    private static Node.Mapping shuffled(Node.Mapping tree, String list, Random random) {
        if (!(tree.get(list) instanceof Node.Listing listing)) {
            return tree;
        }
        List<Node> items = new ArrayList<>(listing.items());
        Collections.shuffle(items, random);
        return tree.with(list, new Node.Listing(NOWHERE, items));
    }

    private static Node.Mapping changedCases(Node.Mapping tree, java.util.function.UnaryOperator<Node.Mapping> change) {
        return tree.get("cases") instanceof Node.Listing cases
                ? tree.with(
                        "cases",
                        new Node.Listing(
                                NOWHERE,
                                cases.items().stream()
                                        .map(each -> (Node) change.apply((Node.Mapping) each))
                                        .toList()))
                : tree;
    }

    /** The sheet with a mass aboard in every case. */
    private static Node.Mapping laden(Node.Mapping tree, int kg, long mm) {
        List<Node> cargo =
                new ArrayList<>(tree.get("cargo") instanceof Node.Listing listing ? listing.items() : List.of());
        cargo.add(NodeReader.read(
                "made",
                "{\"name\": \"Ballast\", \"mass\": \"" + kg
                        + " kg +/- 0 kg\", \"at\": {\"x\": \"" + mm
                        + " mm\", \"y\": \"0 mm\", \"z\": \"900 mm\"}}",
                new ArrayList<>()));
        return changedCases(tree.with("cargo", new Node.Listing(NOWHERE, cargo)), loadCase -> {
            if (!(loadCase.get("carrying") instanceof Node.Listing carried)) {
                return loadCase;
            }
            List<Node> more = new ArrayList<>(carried.items());
            more.add(new Node.Scalar(NOWHERE, "Ballast", false));
            return loadCase.with("carrying", new Node.Listing(NOWHERE, more));
        });
    }

    /** What is left of every limit of a mass that hangs on the loading. */
    private static Map<String, Double> headrooms(Advice advice) {
        Map<String, Double> headrooms = new TreeMap<>();
        advice.facts().values().stream()
                .flatMap(List::stream)
                .filter(Measure.class::isInstance)
                .map(Measure.class::cast)
                .filter(each -> each.getName().matches("mass\\.(loaded|axle|combined|roof)") && each.isKnown())
                .forEach(each -> headrooms.put(
                        each.getName() + ", " + each.getSubject() + ", " + each.getLoadCase(), each.getHeadroom()));
        return headrooms;
    }

    private static Set<String> stops(Advice advice, String topic) {
        return advice.findings().stream()
                .map(Outcome.Finding::judged)
                .filter(each -> each.card().severity().value() == Severity.STOP
                        && each.id().startsWith(topic))
                .map(each -> each.id() + ", " + each.subject() + ", " + each.loadCase())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static final Pattern WITH_TOLERANCE = Pattern.compile("(-?[0-9.]+) ([^+]*?)(?: \\+/- ([0-9.]+) (.*))?");

    /** A quantity in other units of its kind; anything else as it is. */
    private static String inOtherUnits(String text, Random random) {
        Matcher quantity = WITH_TOLERANCE.matcher(text);
        if (!quantity.matches() || Dimension.ofUnit(quantity.group(2)) == null) {
            return text;
        }
        String tolerance = quantity.group(3) == null
                ? ""
                : " +/- "
                        + (Dimension.ofUnit(quantity.group(4)) == null
                                        || quantity.group(4).equals("%")
                                ? quantity.group(3) + " " + quantity.group(4)
                                : inOtherUnit(quantity.group(3), quantity.group(4), random));
        return inOtherUnit(quantity.group(1), quantity.group(2), random) + tolerance;
    }

    /** Only a unit in which the number has its digits before the twelfth that a sheet may write. */
    private static String inOtherUnit(String number, String unit, Random random) {
        List<String> units = new ArrayList<>(Dimension.ofUnit(unit).units().keySet());
        String other = units.get(random.nextInt(units.size()));
        BigDecimal same = new BigDecimal(number)
                .multiply(BigDecimal.valueOf(Dimension.size(unit)))
                .divide(BigDecimal.valueOf(Dimension.size(other)), MathContext.DECIMAL64)
                .setScale(12, RoundingMode.HALF_UP);
        boolean fits = same.signum() == 0
                || same.abs().compareTo(BigDecimal.ONE) >= 0 && same.abs().compareTo(BigDecimal.valueOf(1e11)) < 0;
        return fits ? same.stripTrailingZeros().toPlainString() + " " + other : number + " " + unit;
    }

    private static Node mirrored(Node node, String field) {
        if (node instanceof Node.Mapping mapping) {
            Map<String, Node.Entry> entries = new LinkedHashMap<>();
            mapping.entries()
                    .forEach((key, entry) -> entries.put(
                            key.equals("left") ? "right" : key.equals("right") ? "left" : key,
                            new Node.Entry(entry.place(), mirrored(entry.value(), key))));
            return new Node.Mapping(mapping.place(), entries);
        }
        if (node instanceof Node.Listing listing) {
            return new Node.Listing(
                    listing.place(),
                    listing.items().stream().map(each -> mirrored(each, "")).toList());
        }
        return field.equals("y") && node instanceof Node.Scalar scalar
                ? new Node.Scalar(
                        scalar.place(),
                        scalar.text().startsWith("-") ? scalar.text().substring(1) : "-" + scalar.text(),
                        false)
                : node;
    }

    private static String swapped(String text) {
        return Pattern.compile("\\b(left|right)(?= mirror|[.:])")
                .matcher(text)
                .replaceAll(side -> side.group().equals("left") ? "right" : "left");
    }

    /** The shipped book with its rules in other files and turned round in them. */
    private static final class Turned {

        private static RuleEngine engine;

        static synchronized RuleEngine engine() throws FaultsException, IOException {
            if (engine == null) {
                Path folder = Path.of("target", "turned-rules");
                List<Path> files;
                try (Stream<Path> all = Files.walk(Books.RULES)) {
                    files = all.filter(Files::isRegularFile).sorted().toList();
                }
                List<Path> rules = files.stream()
                        .filter(each -> each.toString().endsWith(".drl"))
                        .toList();
                for (Path each : files) {
                    Path copy = folder.resolve(Books.RULES.relativize(each));
                    Files.createDirectories(copy.getParent());
                    int place = rules.indexOf(each);
                    Files.writeString(
                            copy,
                            place < 0
                                    ? Files.readString(each)
                                    : turned(Files.readString(rules.get(rules.size() - 1 - place))));
                }
                engine = BookLoader.load(folder, Books.CACHE, sentence -> {});
            }
            return engine;
        }

        private static String turned(String rules) {
            List<String> all = new ArrayList<>(List.of(rules.split("(?m)^(?=rule \")")));
            Collections.reverse(all);
            return String.join("\n", all);
        }
    }
}
