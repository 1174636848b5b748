package fitworthy.printout.words;

import fitworthy.book.Party;

/**
 * One who is asked: a party, and of makers the thing that each makes.
 *
 * @param of the part as the sheet calls it, or words for it; empty where the party alone tells, or no part is named
 */
public record Addressee(Party party, String of) {

    /** As a sentence names it. */
    public String words() {
        return party.words(of);
    }
}
