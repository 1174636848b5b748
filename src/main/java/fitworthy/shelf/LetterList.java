package fitworthy.shelf;

import fitworthy.schema.ChoiceWords;
import fitworthy.sheet.ElectricalDetails;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Puts the pieces of a line of a letter to the things that they are said of: "a second battery, lithium, 100 Ah, with a
 * charger, in the canopy" is a lithium second battery of 100 Ah, and a charger in the canopy.
 *
 * @param places in words
 * @param it a thing as a place on or in it has it, such as "the tray"; the same where it names none
 */
record LetterList(WishPlaces places, UnaryOperator<String> it) {

    private static final Pattern BETWEEN = Pattern.compile(",?\\s+(?:and|with)\\s+|[,;]\\s*");
    private static final Pattern AMOUNT = Pattern.compile("(?:about\\s+)?[0-9][0-9.]*\\s*\\p{L}+(?:\\s+long)?");
    private static final Pattern ON_IT = Pattern.compile("(.+)\\s+((?:in|on)\\s+)it");
    /** Beside what the vehicle has: no field holds it. */
    private static final Pattern BESIDE = Pattern.compile("beside\\s.+\\bit has");

    private static final Pattern ARTICLE = Pattern.compile("^(?:an?|the)\\s+");

    /** A thing with what is said of it behind it. */
    private record Piece(String thing, String amount, String place, String reason) {

        String typed() {
            return thing
                    + (amount.isEmpty() ? "" : " " + amount)
                    + (place.isEmpty() ? "" : " " + place)
                    + (reason.isEmpty() ? "" : ", " + reason);
        }
    }

    /** The things, each with what is said of it; none where no piece is said of the thing before it. */
    List<String> things(String line) {
        List<Piece> things = new ArrayList<>();
        String[] pieces = BETWEEN.split(line);
        boolean read = false;
        for (String piece : pieces) {
            Matcher onIt = ON_IT.matcher(piece);
            if (things.isEmpty()) {
                things.add(new Piece(piece, "", "", ""));
            } else if (onIt.matches()) {
                Piece before = things.get(things.size() - 1);
                things.add(new Piece(onIt.group(1), "", onIt.group(2) + it.apply(before.typed()), ""));
                read = true;
            } else {
                Piece before = things.remove(things.size() - 1);
                Optional<Piece> said = said(before, piece);
                things.add(said.orElse(before));
                if (said.isEmpty()) {
                    things.add(new Piece(piece, "", "", ""));
                }
                read |= said.isPresent();
            }
        }
        return read ? things.stream().map(Piece::typed).toList() : List.of();
    }

    /** A thing with what a piece says of it; nothing where the piece is a thing itself. */
    private Optional<Piece> said(Piece of, String piece) {
        if (AMOUNT.matcher(piece).matches() && of.amount().isEmpty()) {
            return Optional.of(new Piece(of.thing(), piece, of.place(), of.reason()));
        }
        if (BESIDE.matcher(piece).matches()) {
            return Optional.of(new Piece(of.thing(), of.amount(), of.place(), piece));
        }
        if (places.ending("it " + piece)
                        .filter(piece.toLowerCase(Locale.ROOT)::equals)
                        .isPresent()
                && of.place().isEmpty()) {
            return Optional.of(new Piece(of.thing(), of.amount(), piece, of.reason()));
        }
        return ChoiceWords.of(ElectricalDetails.Chemistry.class).contains(piece)
                ? Optional.of(new Piece(
                        piece + " " + ARTICLE.matcher(of.thing()).replaceFirst(""),
                        of.amount(),
                        of.place(),
                        of.reason()))
                : Optional.empty();
    }
}
