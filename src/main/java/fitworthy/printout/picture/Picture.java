package fitworthy.printout.picture;

/**
 * A picture of what the advice rests on.
 *
 * @param id unique among the pictures of one advice; every id in the drawing begins with it
 * @param title what it shows
 * @param description the same as the picture in words, with its figures
 * @param svg the drawing: one {@code svg} element of SVG 1.1 that needs nothing from outside
 */
public record Picture(String id, String title, String description, String svg) {}
