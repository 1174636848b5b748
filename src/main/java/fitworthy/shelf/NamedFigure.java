package fitworthy.shelf;

/** What is typed as a name with something behind an equals sign, such as {@code winch=26 kg}. */
record NamedFigure(String name, String said) {

    /** @param typed may have no such sign; then nothing is said of the name */
    static NamedFigure of(String typed) {
        int sign = typed.indexOf('=');
        return sign < 0
                ? new NamedFigure(typed, "")
                : new NamedFigure(
                        typed.substring(0, sign), typed.substring(sign + 1).strip());
    }
}
