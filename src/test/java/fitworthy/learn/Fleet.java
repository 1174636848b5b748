package fitworthy.learn;

import fitworthy.Books;
import fitworthy.source.InputFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Made vehicles whose true masses are known: the plain wagon with some of a pool of parts, weighed by a weighbridge that
 * is off by chance. Everything the sheets give a tolerance is off within it: half its width is 1.96 standard deviations.
 * The lever law is written out here, so that the program's is held against another.
 */
public final class Fleet {

    /** A part of the pool. @param x behind the front axle, mm @param mass as written, kg @param more than written, kg */
    public record Pooled(String name, String kind, int mass, int x, double more) {}

    /** What the weighbridge shows of a vehicle, kg. */
    public record Shown(double front, double rear) {}

    private static final double WHEELBASE = 2850;
    private static final double NORMAL = 1.959964;

    private final List<Pooled> pool;
    private final List<List<Pooled>> vehicles = new ArrayList<>();

    /** @param share of the vehicles that each part is in, at random */
    public Fleet(List<Pooled> pool, int vehicles, double share, Random random) {
        this.pool = pool;
        for (int i = 0; i < vehicles; i++) {
            this.vehicles.add(
                    pool.stream().filter(part -> random.nextDouble() < share).toList());
        }
    }

    /** Vehicles with just these parts. */
    public Fleet(List<List<Pooled>> vehicles) {
        this.pool = vehicles.stream().flatMap(List::stream).distinct().toList();
        this.vehicles.addAll(vehicles);
    }

    public int size() {
        return vehicles.size();
    }

    /** What the weighbridge shows of each vehicle, with parts that are off by what the pool says. */
    public List<Shown> weighed(Random random) {
        double kerbFront = 1250 + within(12.5, random);
        double kerbRear = 1050 + within(10.5, random);
        List<Shown> shown = new ArrayList<>();
        for (List<Pooled> parts : vehicles) {
            Scale scale = new Scale(kerbFront, kerbRear);
            scale.put(80 + within(4, random), 1500 + within(50, random));
            scale.put(80 + within(4, random), 1500 + within(50, random));
            scale.put(60 + within(3, random), 2700 + within(50, random));
            parts.forEach(part -> scale.put(part.mass() + part.more(), part.x() + within(50, random)));
            shown.add(new Shown(scale.front + within(10, random), scale.rear + within(10, random)));
        }
        return shown;
    }

    /** Deviation of what is known within a tolerance. */
    public static double within(double tolerance, Random random) {
        return tolerance / NORMAL * random.nextGaussian();
    }

    private static final class Scale {
        private double front;
        private double rear;

        Scale(double front, double rear) {
            this.front = front;
            this.rear = rear;
        }

        void put(double mass, double x) {
            rear += mass * x / WHEELBASE;
            front += mass * (1 - x / WHEELBASE);
        }
    }

    /** The text of a vehicle's sheet with what was shown of it. */
    public String sheet(int vehicle, Shown shown) {
        StringBuilder text =
                new StringBuilder(InputFile.text(Books.RULES.resolve("plain-sheet.yaml"), new ArrayList<>())
                        .replace("kg +/- 0 kg", "kg")
                        .replace("assumed-place: 0 mm", "assumed-place: 50 mm")
                        .replace("title: Plain wagon", "title: Plain wagon " + vehicle));
        text.append("fitments:\n");
        vehicles.get(vehicle)
                .forEach(part -> text.append(String.format(
                        Locale.ROOT,
                        "  - {name: %s, kind: %s, mass: %d kg, at: {x: %d mm, y: 0 mm, z: %d mm}}%n",
                        part.name(),
                        part.kind(),
                        part.mass(),
                        part.x(),
                        // Each at a height of its own: what stands at one and the same place shares its error.
                        600 + 10 * pool.indexOf(part))));
        text.append(String.format(
                Locale.ROOT,
                "cases:%n  - name: weighed%n    weighed: {front-axle: %.1f kg +/- 10 kg, rear-axle: %.1f kg +/- 10 kg}%n",
                shown.front(),
                shown.rear()));
        return text.toString();
    }

    /** Eight parts all over a vehicle. @param more by how much each is heavier than written, kg */
    public static List<Pooled> pool(double... more) {
        return List.of(
                new Pooled("Steel bar", "other", 60, -500, more[0]),
                new Pooled("Rack", "roof-rack", 40, 1700, more[1]),
                new Pooled("Drawers", "other", 45, 3000, more[2]),
                new Pooled("Rear bar", "other", 30, 3700, more[3]),
                new Pooled("Winch", "other", 35, -650, more[4]),
                new Pooled("Locker", "locker", 25, 2500, more[5]),
                new Pooled("Boxes", "other", 90, 3100, more[6]),
                new Pooled("Fridge", "other", 20, 2300, more[7]));
    }
}
