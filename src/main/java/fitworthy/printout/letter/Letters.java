package fitworthy.printout.letter;

import fitworthy.advice.Advice;
import fitworthy.advice.Ratings;
import fitworthy.book.Party;
import fitworthy.document.Report;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Section;
import fitworthy.document.Report.Signatures;
import fitworthy.document.Report.Steps;
import fitworthy.document.Report.Subheading;
import fitworthy.figures.plan.Alterations;
import fitworthy.printout.words.Addressee;
import fitworthy.printout.words.Addressees;
import fitworthy.printout.words.Asked;
import fitworthy.printout.words.LoadedVerdict;
import fitworthy.printout.words.PlannedWords;
import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.Guesses;
import fitworthy.sheet.Papers;
import fitworthy.sheet.Sheet;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is asked of others, as letters ready to be sent: one to each who is asked, and for the builder's own house a list
 * of work. No name and no address is in them that the sheet does not have.
 */
public final class Letters {

    private static final Set<Party> NEED_PLAN = Set.of(
            Party.VEHICLE_MAKER,
            Party.ENGINEER,
            Party.LOW_VOLUME_CERTIFIER,
            Party.AUTHORITY,
            Party.INSURER,
            Party.TYRE_FITTER);
    /** Who has to know whose vehicle it is. */
    private static final Set<Party> NEED_CUSTOMER = Set.of(
            Party.CUSTOMER,
            Party.BUILDER,
            Party.ENGINEER,
            Party.LOW_VOLUME_CERTIFIER,
            Party.AUTHORITY,
            Party.INSURER,
            Party.POLICE);

    private static final String GREETING = "Good day. ";

    private final Advice advice;
    private final Sheet sheet;
    private final List<Asked> asked;
    private final Addressees addressees;
    private final LetterMasses masses;
    private final LetterItems items;
    private final LetterFigures figures;

    private Letters(Advice advice) {
        this.advice = advice;
        this.sheet = advice.sheet().planned();
        this.asked = Asked.of(advice);
        this.addressees = new Addressees(sheet, advice.book().tables().shopWords());
        this.masses = new LetterMasses(advice);
        this.items = new LetterItems(advice);
        this.figures = new LetterFigures(advice);
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
        blocks.addAll(masses.blocks(party, enclosed));
        if (party == Party.CUSTOMER && !Ratings.of(advice).passed().isEmpty()) {
            blocks.add(new Paragraph(LoadedVerdict.loaded(advice)
                    + " " + LoadedVerdict.RATINGS
                    + " What stays behind or is done without, you choose; we work out what it brings."));
            blocks.addAll(masses.heaviest());
        }
        List<String> asks = items.of(one);
        blocks.addAll(figures.blocks(one.whom(), asks));
        blocks.add(new Paragraph(asking(party)));
        blocks.add(new Steps(asks));
        if (!enclosed.isEmpty()) {
            blocks.add(new Paragraph(bringing(party) + String.join("; ", enclosed) + "."));
        }
        if (party != Party.BUILDER) {
            blocks.add(
                    new Paragraph(("Our figures are worked out from a build sheet, on the practice of " + sheet.asOf()
                                    + (Guesses.of(sheet).isEmpty() ? "" : ", and in part from guesses")
                                    + ". They are advice, not certification. "
                                    + advice.book().terms(sheet.region()))
                            .strip()));
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

    private String opening(Addressee whom) {
        return switch (whom.party()) {
            case BUILDER -> "A list for our own house, not to be sent.";
            case CUSTOMER -> GREETING + "Before the work begins we need your answers.";
            case PART_MAKER ->
                GREETING
                        + (whom.of().startsWith("the ")
                                ? "We plan changes to this vehicle and ask you about " + whom.of() + ofPlan(whom) + "."
                                : "We plan changes to this vehicle. One of the parts is yours"
                                        + (whom.of().isEmpty() ? "" : ": " + PlannedWords.named(sheet, whom.of()))
                                        + ".");
            case TRAILER_MAKER ->
                GREETING + "We plan changes to the vehicle that tows your trailer"
                        + sheet.trailer()
                                .map(trailer -> ": " + PlannedWords.towed(trailer))
                                .orElse("") + ".";
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
        String parts = String.join(", ", PlannedWords.parts(sheet));
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
}
