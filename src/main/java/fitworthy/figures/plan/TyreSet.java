package fitworthy.figures.plan;

import fitworthy.figures.measure.Working;
import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Missing;
import fitworthy.quantity.YesNo;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.TyreSize;
import java.util.List;

/**
 * Tyres and what their size says of them.
 *
 * @param tyres as the sheet gives them
 * @param path where the sheet holds them
 */
public record TyreSet(TyreDetails.Tyres tyres, String path) {

    /** Growth in m below which two nominal sizes are the same. */
    private static final double SAME_DIAMETER = 0.0005;

    private static final FieldSchema SIZE =
            RecordSchema.of(TyreDetails.Tyres.class).field("size");
    private static final FieldSchema SPEED_SYMBOL =
            RecordSchema.of(TyreDetails.Tyres.class).field("speed-symbol");

    /** What a measure of them calls them: by their name where a plan has several sets. @param all the plan's */
    public String subject(List<TyreSet> all) {
        return all.size() == 1 ? "tyres" : path.substring(path.indexOf('.') + 1);
    }

    /** Overall diameter in m: as given, else that of the size. */
    public Figure diameter() {
        Figure nominal = TyreSize.read(tyres.size())
                .map(size ->
                        size.diameter().isPresent() ? Figure.of(size.diameter().getAsDouble()) : tyres.diameter())
                .orElse(Figure.missing(noSize()));
        return tyres.diameter().or(nominal);
    }

    /** By how much these are larger than others, in m. */
    public Figure growthOver(TyreSet others) {
        Figure difference = diameter().minus(others.diameter());
        return Math.abs(difference.value()) < SAME_DIAMETER ? Figure.ZERO : difference;
    }

    /** Width of the section in m. */
    public Figure width() {
        return TyreSize.read(tyres.size()).map(size -> Figure.of(size.width())).orElse(Figure.missing(noSize()));
    }

    /** Diameter of the rim in m. */
    public Figure rim() {
        return TyreSize.read(tyres.size()).map(size -> Figure.of(size.rim())).orElse(Figure.missing(noSize()));
    }

    /** Highest speed of the speed symbol in m/s. */
    public Figure speed(Tables tables) {
        return tables.tyreSpeed(
                tyres.speedSymbol(),
                tyres.speedSymbol().isEmpty()
                        ? SPEED_SYMBOL.missingIn(path)
                        : Missing.inBook(
                                "speed symbol " + tyres.speedSymbol(),
                                "a speed for this symbol in the rule book's table"));
    }

    /** Whether they are passenger tyres: as given, else by the mark in the size. */
    public Choice<YesNo> passenger() {
        return tyres.passenger().known()
                ? tyres.passenger()
                : TyreSize.passenger(tyres.size()).map(Choice::yesNo).orElse(tyres.passenger());
    }

    /** What a size says of the diameter; nothing where the sheet or the size itself gives it. */
    public Working nominal(String name) {
        return () -> TyreSize.read(tyres.size())
                .filter(size -> !tyres.diameter().known() && size.height().isPresent())
                .map(size -> new Working.Formula(
                                name + " = rim + 2 x width x height",
                                List.of(
                                        Working.in("rim", Figure.of(size.rim()), "mm"),
                                        Working.in("width", Figure.of(size.width()), "mm"),
                                        Working.in(
                                                "height",
                                                Figure.of(size.height().getAsDouble()),
                                                "%")))
                        .lines())
                .orElse(List.of());
    }

    /** What the speed of its symbol is read from. */
    public Working symbol() {
        return () -> List.of("from the table of speed symbols, symbol = " + tyres.speedSymbol());
    }

    /** That the sheet does not give their size. */
    public Missing noSize() {
        return SIZE.missingIn(path);
    }
}
