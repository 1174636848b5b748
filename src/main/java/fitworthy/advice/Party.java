package fitworthy.advice;

import java.util.regex.Pattern;

/** Whom to ask for what a sheet lacks, by where it is found. */
public enum Party {
    /** Who has the papers, and knows the route and what goes along. */
    OWNER(
            "the owner",
            "owner|customer|carries|handbook|papers|registration|service book|licence|route|log|load list|contents"),
    /** Who makes or sells the part. */
    MAKER("its maker or whoever sells it", "approval papers|makers?\\b|data sheet|supplier|dealer|builder"),
    ISSUER("whoever issues it", "issues"),
    /** Who measures, looks and plans, and so nobody outside the house. */
    WORKSHOP("the workshop", "");

    /** What the workshop reads off the thing itself, whoever put it there. */
    private static final Pattern READ_OFF = Pattern.compile("plate|label|stamp|sidewall|workshop|fitter");

    private final String words;
    private final Pattern found;

    Party(String words, String found) {
        this.words = words;
        this.found = Pattern.compile(found);
    }

    /** As a sentence ends with it. */
    public String words() {
        return words;
    }

    /** Whom to ask first. @param find where a person finds it, the first place of several */
    static Party of(String find) {
        String first = find.split(", ")[0];
        if (READ_OFF.matcher(first).find()) {
            return WORKSHOP;
        }
        if (MAKER.found.matcher(first).find() && !first.contains("handbook")) {
            return MAKER;
        }
        return OWNER.found.matcher(first).find()
                ? OWNER
                : ISSUER.found.matcher(first).find() ? ISSUER : WORKSHOP;
    }
}
