package fitworthy.cli;

/** How a command ends. The help of the top command tells them to users. */
final class ExitCodes {

    /** Nothing worse than a note. */
    static final int IN_ORDER = 0;
    /** Something to act on, or a figure to bring. */
    static final int SOMETHING_TO_DO = 1;
    /** The sheet, the house file or the command line is wrong. */
    static final int BAD_INPUT = 2;
    /** The rule book is wrong. */
    static final int BAD_BOOK = 3;
    /** A fault of the program. */
    static final int OUR_FAULT = 70;
    /** A file, or the output, could not be written. */
    static final int NOT_WRITTEN = 74;

    private ExitCodes() {}
}
