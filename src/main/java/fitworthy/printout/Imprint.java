package fitworthy.printout;

import java.time.Instant;

/**
 * What a printout was made from and when, so that it can be made again.
 *
 * @param sheetFile name of the sheet's file
 * @param sheetHash SHA-256 of its bytes, in hexadecimal
 * @param shelf what it takes from a shelf, and how that is known again; empty where nothing
 * @param software name and version of the program
 * @param printedAt when it was printed
 */
public record Imprint(String sheetFile, String sheetHash, String shelf, String software, Instant printedAt) {}
