package fitworthy.printout.words;

import fitworthy.figures.mass.LoadMeasures;
import fitworthy.figures.plan.Alterations;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import fitworthy.sheet.BodyDetails.Body;
import fitworthy.sheet.ElectricalDetails.Battery;
import fitworthy.sheet.ElectricalDetails.SolarPanel;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.SuspensionDetails.BodyLift;
import fitworthy.sheet.SuspensionDetails.Springs;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.TyreDetails.Tyres;
import fitworthy.source.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** What a plan was taken to be, so that the customer sees whether a wish was forgotten or misread. */
public final class PlannedWords {

    /** How many parts, and how many loads, are named. */
    private static final int MOST = 30;

    private PlannedWords() {}

    /** The parts with the figure that they are chosen by, what is carried, and what is towed. */
    public static String of(Sheet sheet) {
        Sheet planned = sheet.planned();
        List<String> parts = parts(planned);
        List<String> told = new ArrayList<>();
        if (!parts.isEmpty()) {
            told.add(Words.few(parts, MOST));
        }
        if (!planned.cargo().isEmpty()) {
            told.add("Carried: "
                    + Words.few(planned.cargo().stream().map(Sheet.Load::name).toList(), MOST));
        }
        planned.trailer().ifPresent(towed -> told.add("Towed: " + towed(towed)));
        if (sheet.readyBy() != null) {
            told.add("Wanted by " + sheet.readyBy());
        }
        return told.isEmpty() ? "nothing on the sheet" : String.join(". ", told) + ".";
    }

    /** A part as it is named to its maker, with the figure that it is chosen by. @param planned the sheet as planned */
    public static String named(Sheet planned, String name) {
        return planned.fitments().stream()
                .filter(part -> part.name().equals(name))
                .map(part -> named(name, chosenBy(part)))
                .findFirst()
                .or(() -> planned.tanks().stream()
                        .filter(tank -> tank.name().equals(name))
                        .map(tank -> named(name, figure(tank.capacity(), "L", 1)))
                        .findFirst())
                .orElse(name);
    }

    /** What is planned and not done, each part with the figure that it is chosen by. @param planned the sheet as planned */
    public static List<String> parts(Sheet planned) {
        return Stream.concat(
                        planned.fitments().stream()
                                .filter(part -> !part.isDone())
                                .map(part -> named(part.name(), chosenBy(part))),
                        planned.tanks().stream()
                                .filter(tank -> Alterations.added(tank) && !tank.isDone())
                                .map(tank -> named(tank.name(), figure(tank.capacity(), "L", 1))))
                .toList();
    }

    /** A trailer by what it weighs, what its plate says and what it puts on the ball, as far as these are known. */
    public static String towed(Trailer trailer) {
        return named(trailer.name(), kilograms(trailer.mass(), 1))
                + (trailer.rated().known() ? ", " + kilograms(trailer.rated(), -1) + " on its plate" : "")
                + (trailer.ball().known() ? ", " + kilograms(trailer.ball(), 1) + " on the ball" : "");
    }

    private static String named(String name, String figure) {
        return figure.isEmpty() || name.contains(figure) ? name : name + " " + figure;
    }

    private static String chosenBy(Fitment part) {
        if (part.details() instanceof Springs springs) {
            return figure(springs.lift(), "mm", 0);
        }
        if (part.details() instanceof BodyLift lift) {
            return figure(lift.lift(), "mm", 0);
        }
        if (part.details() instanceof Tyres tyres) {
            return tyres.size() == null ? "" : tyres.size();
        }
        if (part.details() instanceof Body body) {
            return figure(body.length(), "mm", 0);
        }
        if (part.details() instanceof Battery battery) {
            return figure(battery.capacity(), "Ah", 0);
        }
        return part.details() instanceof SolarPanel panel ? figure(panel.wholePower(), "W", 0) : "";
    }

    /** As checks print it: whole, and what is in no whole kilograms to the safe side. @param way 1 for a load, -1 for a limit */
    private static String kilograms(Figure mass, int way) {
        return figure(mass, () -> Digits.quantity(LoadMeasures.LOADED.printed(mass.value(), way), LoadMeasures.LOADED));
    }

    /** As it is written; what is written in a unit that is not printed alone has no end of digits. */
    private static String figure(Figure figure, String unit, int decimals) {
        return figure(
                figure,
                () -> figure.customary().isEmpty()
                        ? QuantityText.shown(figure.value(), unit)
                        : Digits.number(figure.value(), unit, decimals) + " " + unit);
    }

    private static String figure(Figure figure, Supplier<String> words) {
        return figure.known() ? figure.mark().before(words.get() + Wording.beside(figure.customary())) : "";
    }
}
