package fitworthy.book;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A card as it is said in one region: in the words that are the region's own, asking whom there is, and resting on no
 * other country's law.
 */
final class InRegion {

    private final Map<String, Region> regions;
    private final Map<String, Source> sources;
    private final List<String> lineage;

    /** @param lineage the region and those above it, nearest first */
    InRegion(Map<String, Region> regions, Map<String, Source> sources, List<String> lineage) {
        this.regions = regions;
        this.sources = sources;
        this.lineage = lineage;
    }

    Card card(Card card) {
        Card worded = card.in(lineage);
        Card asking =
                worded.asking(worded.ask().stream().map(this::there).distinct().toList());
        return ofLaw(card) ? home(asking) : asking;
    }

    private Ask there(Ask ask) {
        Party asked = Region.asked(regions, lineage, ask.party().value());
        return ask.party().is(asked) ? ask : ask.of(asked);
    }

    /** Whether it says what may drive on a road or what a policy asks, and not what holds or carries, which is alike everywhere. */
    private static boolean ofLaw(Card card) {
        return Stream.concat(card.ask().stream(), card.inRegion().stream().flatMap(own -> own.ask().stream()))
                .anyMatch(ask -> Party.CERTIFYING.contains(ask.party().value())
                        || ask.party().is(Party.INSURER));
    }

    private Card home(Card card) {
        List<String> kept = card.sources().stream().filter(id -> !isForeign(id)).toList();
        boolean published = card.basis().is(Basis.PUBLISHED) || card.basis().is(Basis.PUBLISHED_SECONDHAND);
        boolean lost = kept.isEmpty() && !card.sources().isEmpty() && published;
        return card.resting(lost ? Basis.ELSEWHERE : card.basis().value(), kept);
    }

    /** Whether a text is for another country: by the region that its title names; one that names none is for all. */
    private boolean isForeign(String id) {
        Optional<String> here = country(lineage);
        return here.isPresent()
                && regions.entrySet().stream()
                        .filter(region -> sources.get(id)
                                .title()
                                .contains(region.getValue().name()))
                        .max(Comparator.comparingInt(
                                region -> region.getValue().name().length()))
                        .flatMap(region -> country(Region.lineage(regions, region.getKey())))
                        .filter(country -> !country.equals(here.get()))
                        .isPresent();
    }

    /** The last region of a line before the one that is everywhere; none of that one itself. */
    private static Optional<String> country(List<String> lineage) {
        return lineage.size() < 2 ? Optional.empty() : Optional.of(lineage.get(lineage.size() - 2));
    }
}
