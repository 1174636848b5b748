package fitworthy.advice;

import fitworthy.advice.Outcome.Judged;
import fitworthy.book.Buying;
import fitworthy.book.Severity;
import fitworthy.figures.electrical.SunPower;
import fitworthy.figures.paperwork.PaperworkMeasures;
import fitworthy.figures.plan.Alterations;
import fitworthy.figures.plan.Alterations.Altering;
import fitworthy.figures.plan.Plan;
import fitworthy.figures.plan.Tables;
import fitworthy.quantity.Choice;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Papers.Alteration;
import fitworthy.sheet.RecoveryDetails;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails;
import fitworthy.sheet.VehicleEnd;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Which parts that are still to be bought a check is about: the one that its subject names or whose field it is, with its
 * controller where it is a panel and the card names that kind too, those of the kinds that its card names, those that make
 * the alteration that a certificate is for, those of the kind that its subject is the words of, or those named in it beside
 * each other.
 */
final class Concerned {

    /** What stands between the names of parts in a subject. */
    private static final String BETWEEN = ", | and | before | ahead of ";

    /** A part or tank. @param kind as the table of the usual order writes it @param end where it has one */
    private record Named(String name, String list, String kind, Choice<VehicleEnd> end, boolean done) {}

    private final List<Named> all = new ArrayList<>();
    private final Map<String, List<Named>> byName;
    private final Map<String, Set<Alteration>> altering;
    /** By panel, what it is connected to. */
    private final Map<String, String> controllers;

    Concerned(Plan plan) {
        Sheet sheet = plan.sheet();
        sheet.fitments()
                .forEach(part ->
                        all.add(new Named(part.name(), "fitments", word(part.kind()), end(part), part.isDone())));
        sheet.tanks().stream()
                .filter(Alterations::added)
                .forEach(tank ->
                        all.add(new Named(tank.name(), "tanks", Tables.TANK, Choice.missing(null), tank.isDone())));
        byName = all.stream().collect(Collectors.groupingBy(Named::name));
        controllers = new HashMap<>();
        plan.fitments(Fitment.Kind.SOLAR_PANEL).forEach(panel -> SunPower.controller(plan, (SolarPanel) panel.details())
                .ifPresent(controller -> controllers.put(panel.name(), controller.name())));
        altering = Alterations.altering(plan).stream()
                .collect(Collectors.toMap(Altering::name, Altering::makes, (one, other) -> one));
    }

    private static Choice<VehicleEnd> end(Fitment part) {
        return part.details() instanceof SuspensionDetails.Springs springs
                ? springs.end()
                : part.details() instanceof RecoveryDetails.RecoveryPoint point ? point.end() : Choice.missing(null);
    }

    /** The parts still to be bought that a check is about, by name. */
    Set<String> parts(Judged judged) {
        return about(judged).stream()
                .filter(part -> !part.done())
                .map(Named::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The parts still to be bought that bring it about, by the kinds that its card names, by name. */
    Set<String> held(Judged judged) {
        return all.stream()
                .filter(part -> !part.done() && judged.card().buying().holds().contains(part.kind()))
                .map(Named::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * Whether a finding that is about none of these has to be settled before any is bought: not where it is about what is
     * on the vehicle already, or could only be mended by a further part.
     */
    boolean comesFirst(Judged judged) {
        boolean toBeAdded = !judged.card().buying().of().isEmpty()
                && judged.card().severity().value() != Severity.STOP;
        return !toBeAdded && about(judged).isEmpty();
    }

    private List<Named> about(Judged judged) {
        String subject = judged.subject();
        Buying buying = judged.card().buying();
        String word = subject.split(",")[0].replace(' ', '-');
        List<Predicate<Named>> ways = List.of(
                part -> subject.startsWith(part.list() + "." + part.name() + "."),
                part -> buying.of().contains(part.kind()) && isAtEnd(part, subject),
                part -> judged.measure().kind() == PaperworkMeasures.CERTIFICATE && makes(part, word),
                part -> part.kind().equals(word),
                part -> isNamed(part.name(), subject));
        List<Named> named = byName.get(subject);
        if (named != null) {
            // A panel is bought with its controller where another one of these would do as well.
            return Stream.concat(
                            named.stream(),
                            Stream.ofNullable(controllers.get(subject))
                                    .flatMap(controller -> byName.get(controller).stream())
                                    .filter(part -> buying.of().contains(part.kind())))
                    .toList();
        }
        return ways.stream()
                .map(way -> all.stream().filter(way).toList())
                .filter(parts -> !parts.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private boolean makes(Named part, String alteration) {
        return altering.getOrDefault(part.name(), Set.of()).stream()
                .anyMatch(made -> word(made).equals(alteration));
    }

    /** Whether what stands at one end is about that end, where the subject is an end. */
    private static boolean isAtEnd(Named part, String subject) {
        return !part.end().known()
                || !subject.matches("(front|rear)( axle)?")
                || subject.startsWith(word(part.end().value()));
    }

    private static boolean isNamed(String name, String subject) {
        return subject.contains(name)
                && Pattern.compile("(^|" + BETWEEN + ")" + Pattern.quote(name) + "($|" + BETWEEN + ")")
                        .matcher(subject)
                        .find();
    }

    private static String word(Enum<?> constant) {
        return Words.hyphenated(constant.name());
    }
}
