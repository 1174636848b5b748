package fitworthy.book;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.schema.Field;

/** A row of a published table, and what it rests on. */
public sealed interface TableRow {

    Choice<Basis> basis();

    String source();

    record LoadIndex(
            @Field(value = "the load index of a tyre", needed = true, example = "100") Figure loadIndex,
            @Field(value = "what one tyre carries", in = Dimension.MASS, needed = true, example = "800 kg") Figure load,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "where it was read; needed for published grades", example = "ISO 4000-1") String source)
            implements TableRow {}

    record SpeedSymbol(
            @Field(value = "the speed symbol of a tyre", needed = true, example = "S") String symbol,
            @Field(value = "the highest speed", in = Dimension.SPEED, needed = true, example = "180 km/h") Figure speed,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "where it was read; needed for published grades", example = "ISO 4223-1") String source)
            implements TableRow {}

    record Cable(
            @Field(value = "the section of a copper cable", in = Dimension.AREA, needed = true, example = "8 mm2")
                    Figure section,
            @Field(
                            value = "what its insulation is made for",
                            in = Dimension.TEMPERATURE,
                            needed = true,
                            example = "105 degC")
                    Figure insulation,
            @Field(value = "what it carries for long", in = Dimension.CURRENT, needed = true, example = "80 A")
                    Figure current,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "where it was read; needed for published grades", example = "a maker's catalogue")
                    String source)
            implements TableRow {}

    /** That one kind of work is usually done after another. */
    record Order(
            @Field(value = "a kind of part or job", needed = true, example = "canopy") String job,
            @Field(value = "the kind usually done before it", needed = true, example = "tray") String after,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "where it was read; needed for published grades", example = "a maker's instructions")
                    String source)
            implements TableRow {}

    /** What a word of the trade stands for on a sheet. */
    record Synonym(
            @Field(value = "what a shop or a customer calls it", needed = true, example = "bull bar") String word,
            @Field(
                            value = "the kind of part it is, or what else of a sheet; several with + between them",
                            needed = true,
                            example = "bar")
                    String is,
            @Field(value = "how good the evidence is", needed = true) Choice<Basis> basis,
            @Field(value = "where it was read; needed for published grades", example = "a maker's catalogue")
                    String source)
            implements TableRow {}
}
