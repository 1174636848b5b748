package fitworthy.printout.words;

import fitworthy.advice.Finder;
import fitworthy.advice.Outcome.Finding;
import fitworthy.book.Ask;
import fitworthy.book.Party;
import fitworthy.quantity.Missing;
import fitworthy.sheet.Circuit;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Fitment.Kind;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.ShopWords;
import fitworthy.sheet.ShopWords.Meaning;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.Tank;
import fitworthy.source.Words;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Who is asked on one sheet. A maker is that of one part, since nobody says which parts one firm makes. */
public final class Addressees {

    private static final String THE = "the ";
    /** What a card calls springs. */
    private static final Set<String> SPRINGS = Set.of("springs", "lifting parts");

    /** Kinds that nobody makes or sells: they are the builder's own work. */
    private static final Set<Kind> WORK = EnumSet.of(Kind.BODY_CUT, Kind.SEAT_CHANGE);

    private final ShopWords words;
    private final List<Fitment> fitments;
    /** Names of circuits, which nobody makes but who wires the vehicle. */
    private final Set<String> circuits;
    /** Names of parts, tanks and circuits, the longest first. */
    private final List<String> names;

    /** @param words what the trade calls the kinds of part */
    public Addressees(Sheet sheet, ShopWords words) {
        this.words = words;
        this.fitments = sheet.fitments();
        this.circuits = sheet.circuits().stream().map(Circuit::name).collect(Collectors.toSet());
        this.names = Stream.of(
                        fitments.stream().map(Fitment::name),
                        sheet.tanks().stream().map(Tank::name),
                        circuits.stream())
                .flatMap(some -> some)
                .sorted(Comparator.comparingInt(String::length).reversed())
                .toList();
    }

    /** Whom a finding asks. */
    Addressee asked(Ask ask, Finding finding) {
        String of = Wording.part(ask.of(), finding);
        String subject = finding.judged().subject();
        return ask.party().is(Party.PART_MAKER)
                ? maker(of.isEmpty() ? names.contains(subject) ? subject : "" : only(of, subject))
                : new Addressee(ask.party().value(), of);
    }

    /** Who makes a thing: of a part its maker, else the one party that answers for it. @param of empty for any part */
    public Addressee maker(String of) {
        if (circuits.contains(of)
                && fitments.stream().noneMatch(part -> part.name().equals(of))) {
            return new Addressee(Party.AUTO_ELECTRICIAN, "");
        }
        if (fitments.stream()
                .anyMatch(part -> WORK.contains(part.kind()) && part.name().equals(of))) {
            return new Addressee(Party.BUILDER, "");
        }
        return switch (of) {
            case "the vehicle" -> new Addressee(Party.VEHICLE_MAKER, "");
            case "the trailer" -> new Addressee(Party.TRAILER_MAKER, "");
            default -> new Addressee(Party.PART_MAKER, of);
        };
    }

    /**
     * Who is asked for what is guessed: who has it at home, the maker of the part, who knows what one weighs that nobody
     * has yet, or the builder for all others.
     */
    public Addressee finds(Missing guess) {
        String thing = thing(guess);
        if (guess.path().equals("fitments." + thing + ".mass")
                && fitments.stream().anyMatch(part -> part.name().equals(thing) && !part.isDone())) {
            return maker(thing);
        }
        return switch (Finder.of(guess)) {
            case CUSTOMER -> new Addressee(Party.CUSTOMER, "");
            case PART_MAKER -> maker(thing);
            default -> new Addressee(Party.BUILDER, "");
        };
    }

    /** The part, tank or circuit that lacks something; empty where it is none of these. */
    String thing(Missing missing) {
        String behind = missing.path().substring(missing.path().indexOf('.') + 1);
        return names.stream()
                .filter(name -> behind.startsWith(name + "."))
                .findFirst()
                .orElse("");
    }

    /** The part that words such as "the winch" mean, where the sheet has one of the kind or the finding says which. */
    private String only(String said, String subject) {
        if (!said.startsWith(THE)) {
            return said;
        }
        String thing = said.substring(THE.length());
        List<String> meant = meant(thing).map(Fitment::name).toList();
        return meant.contains(subject)
                ? subject
                : meant.size() == 1 ? meant.get(0) : springs(thing, subject).orElse(said);
    }

    /** Of a kind that has no name of its own nothing tells which part is meant but what that is called. */
    private Stream<Fitment> meant(String thing) {
        List<Kind> kinds = words.of(thing).map(Meaning::kinds).orElse(List.of());
        return fitments.stream()
                .filter(fitment -> fitment.kind() != Kind.OTHER && kinds.equals(List.of(fitment.kind()))
                        || fitment.name().equalsIgnoreCase(thing));
    }

    /** The parts still to be fitted that words such as "the springs" mean. */
    public List<String> planned(String said) {
        return said.startsWith(THE)
                ? meant(said.substring(THE.length()))
                        .filter(part -> !part.isDone())
                        .map(Fitment::name)
                        .toList()
                : List.of();
    }

    /** The planned springs of the axle that a finding is about. */
    private Optional<String> springs(String thing, String subject) {
        return fitments.stream()
                .filter(fitment -> SPRINGS.contains(thing)
                        && fitment.details() instanceof SuspensionDetails.Springs springs
                        && springs.end().known()
                        && subject.equals(Words.hyphenated(springs.end().value().name()) + " axle"))
                .map(Fitment::name)
                .findFirst();
    }
}
