package fitworthy.printout;

import fitworthy.advice.Advice;
import fitworthy.advice.Arrangement;
import fitworthy.advice.Burden;
import fitworthy.advice.Outcome.Assessed;
import fitworthy.advice.Ratings;
import fitworthy.advice.UntilApproved;
import fitworthy.book.Basis;
import fitworthy.book.DatedLimit;
import fitworthy.book.Party;
import fitworthy.book.Practice;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Points;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Steps;
import fitworthy.document.Report.Subheading;
import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.MeasureKind;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.AxleLoads;
import fitworthy.figures.plan.Loading;
import fitworthy.printout.Asked.Point;
import fitworthy.printout.GuessWords.Doubt;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Digits.Held;
import fitworthy.printout.words.FieldWords;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Mark;
import fitworthy.quantity.Missing;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Papers;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.sheet.Vehicle;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What is asked of others, as letters ready to be sent: one to each who is asked, and for the builder's own house a list
 * of work. No name and no address is in them that the sheet does not have.
 */
public final class Letters {

    /** Whom the loads of the axles concern beside the whole mass. */
    private static final Set<Party> NEED_AXLES =
            Set.of(Party.ENGINEER, Party.LOW_VOLUME_CERTIFIER, Party.AUTHORITY, Party.TYRE_FITTER, Party.WEIGHBRIDGE);

    private static final Set<Party> NEED_PLAN =
            Set.of(Party.VEHICLE_MAKER, Party.ENGINEER, Party.LOW_VOLUME_CERTIFIER, Party.AUTHORITY, Party.INSURER);
    /** Who has to know whose vehicle it is. */
    private static final Set<Party> NEED_CUSTOMER = Set.of(
            Party.CUSTOMER,
            Party.BUILDER,
            Party.ENGINEER,
            Party.LOW_VOLUME_CERTIFIER,
            Party.AUTHORITY,
            Party.INSURER,
            Party.POLICE);
    /** Who goes by the law's text. */
    private static final Set<Party> KNOW_LAW = Set.of(Party.ENGINEER, Party.LOW_VOLUME_CERTIFIER, Party.AUTHORITY);

    /** Who does not look at what the trade compares. */
    private static final Set<Party> NO_FIGURES =
            Set.of(Party.CUSTOMER, Party.INSURER, Party.POLICE, Party.WEIGHBRIDGE, Party.ROUTE);

    /** What is to be sent and stands in the letter itself. */
    private static final Pattern MASS = Pattern.compile("the (?:vehicle's )?loaded mass(?:es of vehicle and trailer)?");

    private static final Pattern AXLES = Pattern.compile("the axle (?:loads?|limits?)(?: [^,]*)?");

    /** What nobody but the customer can weigh. */
    private static final Pattern OWN = Pattern.compile("(?:cargo|occupants)\\..*\\.mass|trailer\\.(?:mass|ball)");

    /** Of what takes most off a limit so many are named. */
    private static final int MOST_HEAVY = 8;

    private static final String GREETING = "Good day. ";
    /** How the sheet speaks of a maker, who is asked here. */
    private static final Pattern YOURS = Pattern.compile("its maker (states|has)\\b");

    private final Advice advice;
    private final Sheet sheet;
    private final List<Asked> asked;
    private final Addressees addressees;

    private Letters(Advice advice) {
        this.advice = advice;
        this.sheet = advice.sheet().planned();
        this.asked = Asked.of(advice);
        this.addressees = new Addressees(sheet, advice.book().tables().shopWords());
    }

    /** The letters that advice gives reason for. */
    public static Letters of(Advice advice) {
        return new Letters(advice);
    }

    /** Whom a letter may be asked for to: every party, by its word, and the makers that are asked, by the part. */
    public Set<String> known() {
        Set<String> known = new LinkedHashSet<>(ChoiceWords.of(Party.class));
        asked.stream().map(one -> one.whom().of()).filter(of -> !of.isEmpty()).forEach(known::add);
        return known;
    }

    /** For each letter one of {@link #known()} that it is asked for by, in their order. */
    public List<String> words() {
        return asked.stream()
                .map(Asked::whom)
                .map(whom -> whom.of().isEmpty() ? word(whom.party()) : whom.of())
                .toList();
    }

    /** Whom there are letters to, in words. */
    public List<String> addressees() {
        return asked.stream().map(one -> one.whom().words()).toList();
    }

    /**
     * The letters, each a section.
     *
     * @param to one of {@link #known()}; empty for all of them
     */
    public Report report(String to) {
        List<Section> letters = new ArrayList<>();
        asked.stream()
                .filter(one -> to.isEmpty()
                        || to.equals(word(one.whom().party()))
                        || to.equals(one.whom().of()))
                .forEach(one -> letters.add(new Section("letter-" + (letters.size() + 1), heading(one), blocks(one))));
        return new Report(
                "Letters",
                sheet.title(),
                subject(Party.PART_MAKER),
                advice.book().smallPrint(advice.sheet().region()),
                "",
                List.of(),
                letters);
    }

    private static String word(Party party) {
        return Words.hyphenated(party.name());
    }

    private static String heading(Asked one) {
        return one.whom().party() == Party.BUILDER
                ? "Work list for the builder"
                : "To " + one.whom().words();
    }

    private String subject(Party party) {
        return sheet.vehicle().name()
                + (sheet.quote().isEmpty() ? "" : ", quote " + sheet.quote())
                + (sheet.customer().isEmpty() || !NEED_CUSTOMER.contains(party) ? "" : ", for " + sheet.customer());
    }

    private List<Block> blocks(Asked one) {
        Party party = one.whom().party();
        List<Block> blocks = new ArrayList<>();
        if (party != Party.BUILDER) {
            blocks.add(new Paragraph(addressed(party)));
        }
        blocks.add(new Subheading(3, "Subject: planned changes to " + subject(party), ""));
        blocks.add(new Paragraph(opening(one.whom())));
        if (NEED_PLAN.contains(party)) {
            blocks.add(new Paragraph(plan()));
        }
        if (Party.CERTIFYING.contains(party)) {
            certificates(party).ifPresent(text -> blocks.add(new Paragraph(text)));
        }
        List<String> enclosed = new ArrayList<>(one.bring());
        blocks.addAll(masses(party, enclosed));
        if (party == Party.CUSTOMER && !Ratings.of(advice).passed().isEmpty()) {
            blocks.add(new Paragraph(LoadedVerdict.loaded(advice)
                    + " " + LoadedVerdict.RATINGS
                    + " What stays behind or is done without, you choose; we work out what it brings."));
            blocks.addAll(heaviest());
        }
        blocks.add(new Paragraph(asking(party)));
        blocks.add(new Steps(items(one)));
        if (!enclosed.isEmpty()) {
            blocks.add(new Paragraph(bringing(party) + String.join("; ", enclosed) + "."));
        }
        if (party != Party.BUILDER) {
            blocks.add(new Paragraph("Our figures are worked out from a build sheet, on the practice of " + sheet.asOf()
                    + (Guesses.of(sheet).isEmpty() ? "" : ", and in part from guesses")
                    + ". They are advice, not certification."));
        }
        blocks.add(new Signatures(List.of(party == Party.BUILDER ? "Done by" : "The workshop")));
        return blocks;
    }

    /** Who is written to, with room for what the sheet does not say of them. */
    private String addressed(Party party) {
        return (party == Party.CUSTOMER && !sheet.customer().isEmpty()
                        ? "Name: " + sheet.customer() + ". Address: "
                        : "Name and address: ")
                + ".".repeat(40);
    }

    /** @param enclosed what is to be sent; loses what is told here */
    private List<Block> masses(Party party, List<String> enclosed) {
        if (party == Party.BUILDER || party == Party.CUSTOMER) {
            return List.of();
        }
        boolean axles = enclosed.removeIf(thing -> AXLES.matcher(thing).matches()) || NEED_AXLES.contains(party);
        boolean mass = enclosed.removeIf(thing -> MASS.matcher(thing).matches()) || party == Party.INSURER;
        return axles || mass
                ? List.of(
                        new Paragraph("What it will weigh:"),
                        new Points(advice.loadings().stream()
                                .map(loading -> masses(loading, axles))
                                .toList()))
                : List.of();
    }

    /** What takes most off the rating that is passed furthest, to choose from; none where nothing planned does. */
    private List<Block> heaviest() {
        Assessed passed = Ratings.of(advice).passed().get(0);
        Map<String, Double> takes = Burden.takesOff(advice, passed.judged());
        return takes.isEmpty()
                ? List.of()
                : List.of(
                        new Paragraph("What takes most off the " + RatingWords.name(passed) + ", which is passed by "
                                + Held.of(passed.judged().measure()).leftText()
                                + RatingWords.in(passed) + ", each by itself:"),
                        new Points(takes.entrySet().stream()
                                .limit(MOST_HEAVY)
                                .map(thing -> thing.getKey() + ": "
                                        + Wording.quantity(
                                                thing.getValue(),
                                                passed.judged().measure().kind()))
                                .toList()));
    }

    private String opening(Addressee whom) {
        return switch (whom.party()) {
            case BUILDER -> "A list for our own house, not to be sent.";
            case CUSTOMER -> GREETING + "Before the work begins we need your answers.";
            case PART_MAKER ->
                GREETING
                        + (whom.of().startsWith("the ")
                                ? "We plan changes to this vehicle and ask you about " + whom.of() + ofPlan(whom) + "."
                                : "We plan changes to this vehicle. One of the parts is yours"
                                        + (whom.of().isEmpty() ? "" : ": " + whom.of()) + ".");
            case TRAILER_MAKER ->
                GREETING + "We plan changes to the vehicle that tows your trailer"
                        + sheet.trailer().map(trailer -> ", " + trailer.name()).orElse("") + ".";
            case WEIGHBRIDGE -> GREETING + "We plan changes to this vehicle and want to know what it weighs.";
            default -> GREETING + "We plan changes to this vehicle and ask you before they are made.";
        };
    }

    /** Which of the plan they are; those that the vehicle has where none of them is planned. */
    private String ofPlan(Addressee whom) {
        List<String> planned = addressees.planned(whom.of());
        return planned.isEmpty() ? " on it" : " planned for it: " + String.join(", ", planned);
    }

    private static String asking(Party party) {
        return switch (party) {
            case BUILDER -> "To be done:";
            case CUSTOMER -> "Please tell us, or decide:";
            case WEIGHBRIDGE -> "Please weigh it and tell us, with a ticket for each reading:";
            default -> "Please tell us in writing:";
        };
    }

    private static String bringing(Party party) {
        return switch (party) {
            case BUILDER -> "To have at hand: ";
            case CUSTOMER -> "Please bring: ";
            case WEIGHBRIDGE -> "We bring: ";
            default -> "We enclose, or send as soon as we have it: ";
        };
    }

    /** What is planned and not done, by its names, and where the vehicle belongs. */
    private String plan() {
        String parts = Stream.concat(
                        sheet.fitments().stream().filter(part -> !part.isDone()).map(Fitment::name),
                        sheet.tanks().stream()
                                .filter(tank -> Alterations.added(tank) && !tank.isDone())
                                .map(Tank::name))
                .collect(Collectors.joining(", "));
        return (parts.isEmpty() ? "" : "The plan: " + parts + ". ") + "Where it is registered, or will be: "
                + advice.book().regions().get(sheet.region()).name() + ".";
    }

    private Optional<String> certificates(Party party) {
        String altered = Alterations.of(advice.loadings().get(0).plan()).stream()
                .map(alteration -> word(alteration).replace('-', ' '))
                .collect(Collectors.joining(", "));
        String priced = sheet.papers().certificates().stream()
                .map(Papers.Certificate::name)
                .collect(Collectors.joining(", "));
        return altered.isEmpty()
                ? Optional.empty()
                : Optional.of("Changed, and to be certified where that is needed: " + altered + "."
                        + (party != Party.AUTHORITY && !priced.isEmpty() ? " In our quote: " + priced + "." : ""));
    }

    private static String word(Papers.Alteration alteration) {
        return Words.hyphenated(alteration.name());
    }

    /** What a loading weighs against its limits. */
    private String masses(Loading loading, boolean withAxles) {
        AxleLoads axles = loading.axles();
        List<String> loads = new ArrayList<>(
                List.of(load("vehicle", LoadMeasures.LOADED, axles.total(), "GVM", loading, Vehicle.Ratings::gvm)));
        if (withAxles) {
            loads.add(
                    load("front axle", LoadMeasures.AXLE, axles.front(), "limit", loading, Vehicle.Ratings::frontAxle));
            loads.add(load("rear axle", LoadMeasures.AXLE, axles.rear(), "limit", loading, Vehicle.Ratings::rearAxle));
        }
        if (loading.towing()) {
            loads.add(load(
                    "with the trailer",
                    LoadMeasures.COMBINED,
                    loading.combined(),
                    "GCM",
                    loading,
                    Vehicle.Ratings::gcm));
        }
        return loading.loadCase().name() + ": " + String.join(", ", loads) + ".";
    }

    /** Against the rating in force, and the one that is wanted where a part is to raise it. */
    private String load(
            String what,
            MeasureKind kind,
            Figure load,
            String name,
            Loading loading,
            Function<Vehicle.Ratings, Figure> rating) {
        Figure planned = rating.apply(loading.plan().ratings());
        Figure made = rating.apply(loading.plan().vehicle().ratings());
        boolean raised = UntilApproved.of(advice).isPresent()
                && made.known()
                && planned.known()
                && made.value() != planned.value();
        Figure limit = raised ? made : planned;
        String wanted = raised
                ? "; wanted " + Held.of(Measure.of(kind, what, load, planned)).limitText()
                : "";
        Measure measure = Measure.of(kind, what, load, limit);
        Held held = Held.of(measure);
        String tolerance = Digits.number(load.tolerance(), "kg", 0);
        return what + " " + held.valueText()
                + (load.known() && !tolerance.equals("0") ? " +/- " + tolerance + " kg" : "") + " (" + name + " "
                + held.limitText() + (held.left() < 0 ? ", over by " + held.leftText() : "")
                + (Math.abs(measure.getHeadroom()) < measure.getTolerance() ? ", " + TooClose.WORDS : "") + wanted
                + ")";
    }

    /** What is asked, each once with all that it is about; then what is missing, and what is still to be chosen. */
    private List<String> items(Asked one) {
        Party party = one.whom().party();
        Map<List<String>, List<Point>> alike = new LinkedHashMap<>();
        one.points().forEach(point -> alike.computeIfAbsent(
                        tellsRemedy(party, point)
                                ? List.of(point.finding().id(), point.what(), point.remedy())
                                : List.of(point.what()),
                        none -> new ArrayList<>())
                .add(point));
        return Stream.of(
                        alike.values().stream().map(points -> item(party, points)),
                        one.missing().stream().map(lacking -> item(party, lacking)),
                        guessed(party),
                        party == Party.CUSTOMER ? sheet.options().stream().map(Letters::item) : Stream.<String>empty())
                .flatMap(some -> some)
                .distinct()
                .toList();
    }

    private static String item(Party party, Asked.Lacking lacking) {
        String what = lacking.what();
        return end(
                party == Party.PART_MAKER
                        ? YOURS.matcher(what).replaceAll(it -> it.group(1).equals("has") ? "you have" : "you state")
                        : what);
    }

    /** What was guessed of what the customer brings along, and what is guessed most of what decides a stop. */
    private Stream<String> guessed(Party party) {
        if (party != Party.CUSTOMER && party != Party.BUILDER) {
            return Stream.empty();
        }
        List<Doubt> doubts = GuessWords.weightiestOfStops(Arrangement.of(advice));
        Stream<String> own = Guesses.values(sheet).entrySet().stream()
                .filter(guess -> party == Party.CUSTOMER
                        && OWN.matcher(guess.getKey().path()).matches())
                .map(guess -> own(guess.getKey(), guess.getValue(), doubts));
        return Stream.concat(
                own,
                doubts.stream()
                        .filter(doubt ->
                                !OWN.matcher(doubt.guess().path()).matches() && party == Asked.ofGuess(doubt.guess()))
                        .map(doubt -> end(doubt.words())));
    }

    private static String own(Missing guess, Figure mass, List<Doubt> doubts) {
        return FieldWords.of(guess) + ". We have put in "
                + (guess.mark() == Mark.USUAL ? "what is usual, " : "about ")
                + Digits.number(mass.value(), "kg", 0) + " kg"
                + doubts.stream()
                        .filter(doubt -> doubt.guess().equals(guess))
                        .map(doubt -> "; " + doubt.share())
                        .collect(Collectors.joining())
                + ".";
    }

    private static String item(Sheet.Option option) {
        return option.name() + ": which of these you choose: "
                + option.choices().stream().map(Sheet.Alternative::name).collect(Collectors.joining(", "))
                + ". The plan has " + option.taken().name() + ".";
    }

    private static boolean tellsRemedy(Party party, Point point) {
        return party == Party.BUILDER || point.what().isEmpty();
    }

    private static String item(Party party, List<Point> points) {
        Point first = points.get(0);
        String found = points.stream()
                .map(point -> point.title() + (NO_FIGURES.contains(party) ? "" : figures(point)))
                .distinct()
                .collect(Collectors.joining("; "));
        if (party == Party.BUILDER) {
            return found + ". " + first.remedy() + (first.what().isEmpty() ? "" : " Find out: " + end(first.what()));
        }
        return first.what().isEmpty()
                ? "What you advise on this: " + found + ". What we have in mind: " + first.remedy()
                : end(first.what()) + " Why we ask: " + found + "." + secondHand(party, points);
    }

    /** The limits that nobody read in the text itself; who goes by it is asked for its place. */
    private static String secondHand(Party party, List<Point> points) {
        String values = points.stream()
                .flatMap(point -> point.finding().worst().practice().stream())
                .map(Practice::entry)
                .filter(value -> !value.none()
                        && (value.basis().is(Basis.PUBLISHED_SECONDHAND)
                                || value.basis().is(Basis.MEMORY)))
                .map(DatedLimit.Value::value)
                .distinct()
                .collect(Collectors.joining(", "));
        return values.isEmpty() || !KNOW_LAW.contains(party)
                ? ""
                : " We know this limit at second hand alone (" + values
                        + "): please name the text and the clause that holds, and what it says.";
    }

    private static String end(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    /** What was compared. */
    private static String figures(Point point) {
        return point.finding()
                .worst()
                .comparison()
                .map(compared ->
                        " (" + Wording.comparison(point.finding().worst().judged(), compared) + ")")
                .orElse("");
    }
}
