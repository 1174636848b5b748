package fitworthy.cli;

/** The shapes that something can be printed in, as typed. */
enum Format {
    text,
    json
}
