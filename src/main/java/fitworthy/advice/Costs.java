package fitworthy.advice;

import fitworthy.figures.paperwork.PaperworkMeasures;
import fitworthy.figures.plan.Alterations;
import fitworthy.quantity.Figure;
import fitworthy.quantity.Money;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.Tank;
import fitworthy.source.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * What is still to be paid for a plan, as far as its sheet says; sums of different currencies are never added. What is
 * done is paid for.
 *
 * @param groups the parts by group, those with something to pay for, in the order of {@link Group}
 * @param certificates each certificate of the sheet, then those that are found to be needed and not on it
 * @param work the working days of parts and jobs, for which a sheet has no price; missing where any is
 * @param worked whether there is any such work
 */
public record Costs(Map<Group, Sum> groups, List<Certificate> certificates, Figure work, boolean worked) {

    /** Parts as a quote groups them. */
    public enum Group {
        CHASSIS_AND_RATINGS,
        BODY_AND_LOAD,
        SUSPENSION,
        TYRES_AND_WHEELS,
        FRONT,
        AIR_AND_FUEL,
        TANKS,
        ELECTRICS,
        RADIO,
        MIRRORS_AND_CAMERA,
        TOWING,
        RECOVERY,
        OTHER;

        static Group of(Fitment.Kind kind) {
            return switch (kind) {
                case CHASSIS_EXTENSION, RATING_UPGRADE -> CHASSIS_AND_RATINGS;
                case TRAY, CANOPY, LOCKER, ROOF_RACK, BODY_CUT, SEAT_CHANGE, GAS_BOTTLE, BURNER, FIREARM_BOX ->
                    BODY_AND_LOAD;
                case SPRINGS, AIR_SPRINGS, BODY_LIFT -> SUSPENSION;
                case TYRES, WHEELS, WHEEL_SPACERS -> TYRES_AND_WHEELS;
                case BAR, LAMPS, WINDSCREEN -> FRONT;
                case SNORKEL,
                        PRE_CLEANER,
                        AIRBOX,
                        BREATHER_KIT,
                        FUEL_SEPARATOR,
                        FUEL_FILTER,
                        CRANKCASE_SEPARATOR,
                        EXHAUST,
                        RETUNE -> AIR_AND_FUEL;
                case BATTERY, CHARGER, INVERTER, SOLAR_PANEL, SWITCH_PANEL -> ELECTRICS;
                case AERIAL, RADIO -> RADIO;
                case MIRRORS, REAR_CAMERA -> MIRRORS_AND_CAMERA;
                case TOW_BAR, BRAKE_CONTROLLER -> TOWING;
                case WINCH, PULLEY_BLOCK, RECOVERY_POINT, KINETIC_STRAP, SHACKLES, RECOVERY_KIT -> RECOVERY;
                case OTHER -> OTHER;
            };
        }

        /** It as a heading. */
        public String words() {
            return Words.capital(Words.hyphenated(name()).replace('-', ' '));
        }
    }

    /**
     * What some things cost together.
     *
     * @param sums by currency
     * @param priced names of those that have a price
     * @param unpriced names of those without one
     */
    public record Sum(Map<String, BigDecimal> sums, List<String> priced, List<String> unpriced) {

        private static Sum none() {
            return new Sum(new TreeMap<>(), new ArrayList<>(), new ArrayList<>());
        }

        private void add(String name, Money price) {
            if (price == null) {
                unpriced.add(name);
            } else {
                priced.add(name);
                sums.merge(price.currency(), price.amount(), BigDecimal::add);
            }
        }
    }

    /** A certificate. @param name what the sheet calls it, or what it is needed for @param price null where there is none */
    public record Certificate(String name, Money price) {}

    /** Adds up what a plan costs. */
    public static Costs of(Advice advice) {
        Sheet sheet = advice.loadings().get(0).plan().sheet();
        Map<Group, Sum> groups = new TreeMap<>();
        Figure work = Figure.of(0);
        boolean worked = !sheet.jobs().isEmpty();
        for (Fitment part : sheet.fitments()) {
            if (!part.isDone()) {
                sum(groups, Group.of(part.kind())).add(part.name(), part.price());
                work = work.plus(part.work().days());
                worked = true;
            }
        }
        for (Tank tank : sheet.tanks()) {
            if (Alterations.added(tank) && !tank.isDone()) {
                sum(groups, Group.TANKS).add(tank.name(), tank.price());
                work = work.plus(tank.work().days());
                worked = true;
            }
        }
        work = sheet.jobs().stream().map(job -> job.work().days()).reduce(work, Figure::plus);
        return new Costs(groups, certificates(advice), work, worked);
    }

    private static Sum sum(Map<Group, Sum> groups, Group group) {
        return groups.computeIfAbsent(group, none -> Sum.none());
    }

    /** Those of the sheet, and those that some finding says are needed and not among them. */
    private static List<Certificate> certificates(Advice advice) {
        return Stream.concat(
                        advice.sheet().papers().certificates().stream()
                                .map(paper -> new Certificate(paper.name(), paper.price())),
                        advice.findings().stream()
                                .map(finding -> finding.judged().measure())
                                .filter(measure -> measure.kind() == PaperworkMeasures.CERTIFICATE
                                        && measure.getWord().equals("no"))
                                .map(measure -> new Certificate("Certificate for " + measure.getSubject(), null)))
                .distinct()
                .toList();
    }

    /** All parts and certificates together. */
    public Sum total() {
        Sum total = Sum.none();
        groups.values().forEach(sum -> {
            sum.sums().forEach((currency, amount) -> total.sums().merge(currency, amount, BigDecimal::add));
            total.priced().addAll(sum.priced());
            total.unpriced().addAll(sum.unpriced());
        });
        certificates.forEach(certificate -> total.add(certificate.name(), certificate.price()));
        return total;
    }

    /** Whether the sheet has anything to pay for. */
    public boolean isEmpty() {
        return groups.isEmpty() && certificates.isEmpty();
    }
}
