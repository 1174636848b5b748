package fitworthy.handbook;

import static fitworthy.document.Report.Column.text;

import fitworthy.book.UsualPlace;
import fitworthy.book.UsualPlaces;
import fitworthy.document.Report.Block;
import fitworthy.document.Report.Column;
import fitworthy.document.Report.Paragraph;
import fitworthy.document.Report.Row;
import fitworthy.document.Report.Table;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The places in words that a sheet may name, each with where the book takes it to be. */
final class PlaceWords {

    private PlaceWords() {}

    static List<Block> blocks(UsualPlaces usual) {
        return List.of(
                new Paragraph("What a sheet puts in such a place is taken to be there, give or take what stands behind "
                        + "+/-: a guess. Shares are of the maker's wheelbase, or of the length of the tray or canopy."),
                new Table(
                        "Where a place in words is",
                        List.of(
                                text("Words", 24),
                                text("Region", 8),
                                Column.whole("From", 12),
                                text("Is", 36),
                                text("How it is known", 20)),
                        usual.places().entrySet().stream()
                                .flatMap(place -> place.getValue().values().stream()
                                        .map(value -> row(place.getKey(), place.getValue(), value)))
                                .toList()));
    }

    private static Row row(String words, UsualPlace place, UsualPlace.Value value) {
        return Row.of(
                Stream.concat(Stream.of(words), place.also().stream()).collect(Collectors.joining(", ")) + ": "
                        + place.meaning(),
                value.region(),
                value.from().toString(),
                value.words(),
                value.basis().value().words() + (value.note().isEmpty() ? "" : ". " + value.note()));
    }
}
