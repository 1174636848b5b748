package fitworthy.printout.picture;

import fitworthy.figures.electrical.ChargeMeasures;
import fitworthy.figures.electrical.SecondBattery;
import fitworthy.figures.measure.Measure;
import fitworthy.figures.measure.Working.Input;
import fitworthy.figures.plan.PracticeId;
import fitworthy.printout.picture.Svg.Anchor;
import fitworthy.printout.picture.Svg.Pen;
import fitworthy.printout.words.Digits;
import fitworthy.printout.words.Wording;
import fitworthy.quantity.Figure;
import fitworthy.quantity.QuantityText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a day takes from the second battery and puts back, and what the longest stay leaves in it. */
final class Energy {

    private static final double LEFT = 8;
    private static final double BARS = 132;
    private static final double BARS_WIDTH = 262;
    private static final double ROW = 16;
    private static final double BAR = 10;
    private static final double CHART = 96;
    private static final String[] FILLS = {Svg.DARK, Svg.GREY, Svg.PALE};

    /** Something that is drawn or put back a day, Ah. */
    private record Flow(String part, String name, Figure charge) {}

    private final PictureFacts facts;
    private final SecondBattery battery;
    private final Svg svg = new Svg("picture-energy");
    private final StringBuilder words = new StringBuilder();

    /** For the loading whose stay takes most, or the first whose stay is not known. */
    static Optional<Picture> of(List<PictureFacts> cases) {
        return cases.stream()
                .filter(facts -> SecondBattery.of(facts.loading()).isPresent())
                .max(Comparator.comparingDouble(
                        facts -> depth(facts).isKnown() ? depth(facts).getValue() : -1))
                .filter(facts -> known(SecondBattery.of(facts.loading()).orElseThrow()))
                .map(facts -> new Energy(facts).picture());
    }

    /** Whether anything of it is known; a picture of nothing but question marks helps nobody. */
    private static boolean known(SecondBattery battery) {
        return battery.drains().stream().anyMatch(drain -> drain.figure().known())
                || battery.capacity().known();
    }

    private static Measure depth(PictureFacts facts) {
        return Stream.of(ChargeMeasures.DEPTH_LEAD, ChargeMeasures.DEPTH_LITHIUM)
                .flatMap(kind -> facts.all(kind).stream())
                .findFirst()
                .orElseThrow();
    }

    /** The value that the depth is held against. */
    private static PracticeId most(Measure depth) {
        return depth.kind() == ChargeMeasures.DEPTH_LITHIUM
                ? PracticeId.ELECTRICAL_DEPTH_LITHIUM_MOST
                : PracticeId.ELECTRICAL_DEPTH_LEAD_MOST;
    }

    private Energy(PictureFacts facts) {
        this.facts = facts;
        battery = SecondBattery.of(facts.loading()).orElseThrow();
    }

    private Picture picture() {
        double y = day(12);
        y = stay(y + 18);
        return svg.picture(
                "The second battery by day: " + Lettering.named(facts.loadCase()),
                words.toString().strip(),
                y);
    }

    private double day(double top) {
        List<Flow> flows = new ArrayList<>(List.of(new Flow("drawn", "Drawn", battery.drawn())));
        if (!battery.panels().isEmpty()) {
            flows.add(new Flow("sun", "Sun", battery.sun()));
        }
        if (!battery.chargers().isEmpty()) {
            flows.add(new Flow("driven", "Alternator, on a drive", battery.driven()));
        }
        double most = Stream.concat(flows.stream().map(Flow::charge), Stream.of(battery.capacity()))
                .filter(Figure::known)
                .mapToDouble(Figure::value)
                .max()
                .orElse(1);
        svg.bold(Svg.LARGE, Anchor.START, LEFT, top, "On a day");
        double y = top + 10;
        words.append("On a day: ");
        for (Flow flow : flows) {
            svg.text(Svg.NORMAL, Anchor.START, LEFT, y + 8.5, flow.name);
            if (flow.charge.known()) {
                double width = BARS_WIDTH * flow.charge.value() / most;
                svg.box(flow.part, Pen.LINE, flow.part.equals("drawn") ? Svg.WHITE : Svg.GREY, BARS, y, width, BAR);
                if (flow.part.equals("drawn")) {
                    loads(y, most);
                }
                svg.bold(Svg.NORMAL, Anchor.START, BARS + width + 5, y + 8.5, charge(flow.charge));
            } else {
                svg.box(flow.part, Pen.DASHED, "none", BARS, y, BARS_WIDTH / 3, BAR);
                svg.text(Svg.NORMAL, Anchor.MIDDLE, BARS + BARS_WIDTH / 6, y + 8.5, "?");
            }
            words.append(flow.name.toLowerCase(Locale.ROOT))
                    .append(' ')
                    .append(charge(flow.charge))
                    .append(flow.part.equals("drawn") ? " (" + list(battery.drains()) + ")" : "")
                    .append("; ");
            y += ROW;
        }
        words.append("capacity ").append(charge(battery.capacity())).append(". ");
        return key(y + 4);
    }

    /** The parts of what is drawn, one after the other in three greys. */
    private void loads(double y, double most) {
        double x = BARS;
        for (int i = 0; i < battery.drains().size(); i++) {
            double width = BARS_WIDTH * battery.drains().get(i).figure().value() / most;
            svg.box("drain-" + (i + 1), Pen.HAIR, FILLS[i % FILLS.length], x, y, width, BAR);
            x += width;
        }
    }

    private double key(double top) {
        double x = BARS;
        double y = top;
        for (int i = 0; i < battery.drains().size(); i++) {
            Input drain = battery.drains().get(i);
            String text = Lettering.fitted(drain.name(), Svg.SMALL, 120) + " ";
            String charge = charge(drain.figure());
            double width = 12 + Lettering.width(text, Svg.SMALL) + Lettering.width(charge, Svg.SMALL) + 12;
            if (x + width > Svg.WIDTH && x > BARS) {
                x = BARS;
                y += 11;
            }
            svg.box(
                    "",
                    drain.figure().known() ? Pen.HAIR : Pen.DASHED,
                    drain.figure().known() ? FILLS[i % FILLS.length] : Svg.WHITE,
                    x,
                    y,
                    7,
                    7);
            svg.text(Svg.SMALL, Anchor.START, x + 10, y + 6.5, text.strip());
            svg.text(Svg.SMALL, Anchor.START, x + 10 + Lettering.width(text, Svg.SMALL), y + 6.5, charge);
            x += width;
        }
        return y + 11;
    }

    private static String list(List<Input> parts) {
        return String.join(
                ", ",
                parts.stream()
                        .map(part -> Lettering.named(part.name()) + " " + charge(part.figure()))
                        .toList());
    }

    private static String charge(Figure charge) {
        return charge.known() ? Digits.number(charge.value(), "Ah", 0) + " Ah" : "? Ah";
    }

    /** Charge left in the battery over the longest stay: it falls evenly from full to what the stay leaves. */
    private double stay(double top) {
        Measure depth = depth(facts);
        Figure stay = facts.loading().plan().sheet().trip().parked();
        String length = stay.known() ? QuantityText.shown(stay.value(), stay.value() < 48 ? "h" : "days") : "? days";
        svg.bold(
                Svg.LARGE,
                Anchor.START,
                LEFT,
                top,
                "Parked for " + length + ", capacity " + charge(battery.capacity()));
        double base = top + 14 + CHART;
        svg.lines("", Pen.LINE, "none", BARS, base - CHART, BARS, base, BARS + BARS_WIDTH, base);
        svg.text(Svg.SMALL, Anchor.END, BARS - 4, base - CHART + 3, "full");
        svg.text(Svg.SMALL, Anchor.END, BARS - 4, base + 3, "empty");
        facts.practice(most(depth)).ifPresent(most -> floor(base, most.value(), Wording.value(most)));
        days(base, stay);
        words.append("Parked for ")
                .append(stay.known() ? length : "a time not known")
                .append(": ");
        if (depth.isKnown()) {
            line(base, depth);
        } else {
            svg.line("charge", Pen.DASHED, BARS, base - CHART, BARS + BARS_WIDTH, base - CHART / 2);
            svg.text(Svg.LARGE, Anchor.MIDDLE, BARS + BARS_WIDTH / 2, base - CHART * 0.6, "?");
            words.append("what is left is not known");
        }
        facts.practice(most(depth)).ifPresent(most -> words.append("; no more than ")
                .append(Wording.value(most))
                .append(" of the capacity is to be used"));
        words.append('.');
        return base + 16;
    }

    private void line(double base, Measure depth) {
        double taken = depth.getValue();
        double within = Math.min(1, 1 / Math.max(taken, 1e-9));
        double end = base - CHART * Math.max(0, 1 - taken);
        svg.lines(
                "charge",
                Pen.BOLD,
                "none",
                BARS,
                base - CHART,
                BARS + BARS_WIDTH * within,
                end,
                BARS + BARS_WIDTH,
                end);
        String left = taken > 1 ? "empty before the end" : Digits.number(1 - taken, "%", 0) + " % left";
        svg.circle("charge-end", Pen.LINE, Svg.BLACK, BARS + BARS_WIDTH, end, 2.5);
        svg.bold(Svg.NORMAL, Anchor.START, BARS + BARS_WIDTH + 6, end + 3, taken > 1 ? "EMPTY" : left);
        words.append(left)
                .append(" (the stay takes ")
                .append(Wording.value(depth))
                .append(" of the capacity)");
    }

    /** Below this line the battery is emptied farther than is good for it. */
    private void floor(double base, double most, String words) {
        double y = base - CHART * (1 - most);
        svg.hatch(Pen.HAIR, BARS, y, BARS_WIDTH, base - y, 5);
        svg.line("floor", Pen.LINE, BARS, y, BARS + BARS_WIDTH, y);
        svg.text(
                Svg.SMALL,
                Anchor.START,
                LEFT,
                Math.min(y + 3, base - 8),
                Lettering.fitted(words + " used: stop here", Svg.SMALL, BARS - LEFT - 4));
    }

    private void days(double base, Figure stay) {
        if (!stay.known() || stay.value() <= 0) {
            return;
        }
        double days = stay.value() / 24;
        double every = Math.max(1, Math.ceil(days / 8));
        for (double day = every; day < days + 1e-9; day += every) {
            double x = BARS + BARS_WIDTH * day / days;
            svg.line(Pen.LINE, x, base, x, base + 3);
            svg.text(Svg.SMALL, Anchor.MIDDLE, x, base + 11, "day " + Svg.number(day));
        }
    }
}
