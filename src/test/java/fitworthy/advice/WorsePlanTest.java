package fitworthy.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fitworthy.Books;
import fitworthy.MadeSheet;
import fitworthy.SheetFields;
import fitworthy.Sheets;
import fitworthy.Twigs;
import fitworthy.book.Severity;
import fitworthy.proof.Cases;
import fitworthy.sheet.Sheet;
import fitworthy.source.FaultsException;
import fitworthy.source.Node;
import fitworthy.source.Trees;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What makes a plan worse takes no finding away. */
class WorsePlanTest {

    static final Pattern NUMBER = Pattern.compile("(-?[0-9]+(?:\\.[0-9]+)?)(.*)");

    /** Figures of which more is worse. */
    private static final Pattern MORE =
            Pattern.compile("(occupants|cargo|fitments|tanks)\\.N\\.mass|trailer\\.(mass|ball|width|length)"
                    + "|.* of kind winch\\.(pull|current)"
                    + "|circuits\\.N\\.(current|standby|hours|cable\\.length|fuse\\.distance)"
                    + "|vehicle\\.engine\\.(own-load|own-standby|pump-flow|consumption|consumption-towing|blow-by)"
                    + "|trip\\.(longest-leg|water-depth|top-speed|people|days|parked|radio-range|dust-distance|water-use|roof-sleepers)"
                    + "|(?!cargo\\.N\\.footing\\.(length|width)).*\\.(grille-hidden|ahead|joint-angle|tip|rear-swing|mass\\.cog-height|lead-time|days|delivery|width|length|wheelbase-added|loaded|lifted|shaft\\.span|axle-ratio|thickness|stud)"
                    + "|vehicle\\.size\\.(ball-overhang|rear-overhang)|.* of kind lamps\\.count");

    /** Figures of which less is worse. */
    private static final Pattern LESS = Pattern.compile(
            "vehicle\\.ratings\\..*|.* of kind rating-upgrade\\..*|.*\\.(load-index|dual-load-index|clearance|most-pressure)"
                    + "|.*wheels\\.rating|trailer\\.(rated|gtm|chains|breakaway-hold|drawbar|tyres\\.count|tyres\\.load-index|coupling\\..*)"
                    + "|.*tow-bar\\.plate\\..*|vehicle\\.recovery\\..*\\.limit|.*\\.(limit|strength|line|feed|tree-strap-limit|mount|vents)"
                    + "|.* of kind winch\\.battery|.* of kind battery\\.capacity|.* of kind charger\\.output|.* of kind solar-panel\\.power"
                    + "|circuits\\.N\\.cable\\.(section|rating)|circuits\\.N\\.fuse\\.rating|vehicle\\.engine\\.(alternator|starter-battery)"
                    + "|.*bars-most|cargo\\.N\\.lashing\\.(straps|tension|angle|grip)|cargo\\.N\\.tied\\.(limit|forward|back|along|aside|across)|cargo\\.N\\.footing\\.(length|width)|vehicle\\.intake\\.(height|breathers|electrics|fan|wading)|.*(head-height|bore|drain-height|service-distance)|.* of kind breather-kit\\.height"
                    + "|.*\\.(lowest|exhaust-gap|rated-flow|load-most|bump-travel|spacing|points|offer|gain|reach|glass|engaged|carries|carries-off-road)"
                    + "|.* of kind springs\\.travel|tanks\\.N\\.capacity|trip\\.(coldest|sun|headroom)|vehicle\\.size\\.track|vehicle\\.low-points\\.N\\.z|vehicle\\.seats|.*radio\\.power");

    /** Answers of which no is worse. */
    private static final Pattern NO = Pattern.compile(
            ".*\\.(earth|fixed|vented-outside|lid-sealed|alarm|lamp|buzzer|drain-reachable|airbag-statement|marked|plate-visible"
                    + "|lamps-visible|lines-reach|alignment|lamp-aim|suits|dust-sealed|potable|baffled|frost-guarded|every-wheel-braked"
                    + "|breakaway|drop-vent|gas-alarm|sensors-set|locks|help|ammunition-apart|insurer-told|plate|tree-strap|line-damper|approved|lines|cables|weld-procedure|rails-stated|fixing-stated|secured|hill-towing|ball-when-full|towing-stated|closed|breather|filler"
                    + "|earthed|shielded|relief|sealed|water-separator|cut-off|lithium-curve|aired|cargo-barrier|allowed|folds|on-metal|feed|pre-cleaner|by-maker|hub-centric)|vehicle\\.ratings\\.levelling");

    private static final Pattern YES = Pattern.compile(
            ".*\\.(known-dust-leak|hides-rear-window|dazzles-driver|hidden|engine-bay|driving|enclosed)");

    /** Where a plan made worse in one way is better in another. @param why in what */
    private record Relief(Pattern field, Pattern rule, String why) {
        static Relief of(String field, String rule, String why) {
            return new Relief(Pattern.compile(field), Pattern.compile(rule), why);
        }

        boolean counts(String changed, Outcome.Finding finding) {
            return field.matcher(changed).matches()
                    && rule.matcher(finding.judged().id()).matches();
        }
    }

    private static final List<Relief> RELIEFS = List.of(
            Relief.of(".*fuse\\.rating", "electrical\\.fuse-.*above-cable", "a smaller fuse guards a thinner cable"),
            Relief.of(
                    ".*aerial\\.(tip|gain)",
                    "radio\\.(range-short|gain-high)",
                    "a higher aerial reaches farther, one of less gain is allowed"),
            Relief.of(".*radio\\.power", "radio\\.power-over", "less power is within the law sooner"),
            Relief.of(".*radio\\.power", "electrical\\.fuse-below-load", "less power takes less current"),
            Relief.of(
                    ".*wheelbase-added",
                    "(body|mass)\\..*|suspension\\.sags",
                    "a longer wheelbase carries more ahead of its rear axle"),
            Relief.of(".*\\.mass", "mass\\.weightless", "what has a mass lacks none"),
            Relief.of(".*strap\\.strength", "recovery\\.strap-stiff", "a weaker strap stretches farther"),
            Relief.of(
                    ".*(gvm|ratings\\.towing)|trailer\\.ball",
                    "mass\\.raised-gvm-.*|across\\.kit-in-vain",
                    "less is taken out of the GCM"),
            Relief.of(
                    ".*gvm|trailer\\.(rated|gtm)",
                    "mass\\.heavy-class|recovery\\.(point|shackles|strap)-weak|towing\\.(force-over|plain-brakes|some-wheels|unbraked.*|breakaway.*|chains-few-heavy|held-by-one|ratio-high|pair-heavy.*|trailer-heavy-class|coupling-below-plate)",
                    "what must be held is what may weigh so much; what weighs more is a stop of its own"),
            Relief.of(".*rating-upgrade\\.gvm", "tyres\\.brakes-weaker", "what may weigh less asks less of the brakes"),
            Relief.of(
                    ".*(ratings|rating-upgrade)\\.gvm",
                    "body\\.guard-(high|deep|narrow)",
                    "no law wants protection at the rear of what is lighter"),
            Relief.of(
                    "vehicle\\.ratings\\.gvm",
                    "tyres\\.kit-brakes",
                    "what is left of the brakes then is to be confirmed"),
            Relief.of(".*rating-upgrade\\.gcm", "mass\\.gcm-raise-refused", "a kit that raises it less asks for less"),
            Relief.of(
                    ".*rear-axle|.*front-axle",
                    "tyres\\.(wheel-)?weaker-than-axle",
                    "tyres have to carry no more than the axle may"),
            Relief.of(".*load-index", "tyres\\.wheel-weaker-than-tyre", "a weaker tyre asks less of its wheel"),
            Relief.of(".*winch\\.pull", "recovery\\.winch-.*", "a stronger winch pulls the vehicle out"),
            Relief.of(
                    ".*\\.mass",
                    "mass\\.(axle-.*|front-light.*|lopsided.*|weighbridge-.*|cog-high|tips-sooner)",
                    "what is on one side or end takes weight off the other"),
            Relief.of(
                    ".*(\\.mass|front-axle)",
                    "mass\\.behind-axle",
                    "what the front axle cannot bear is not told to come forward"),
            Relief.of(".*\\.mass", "suspension\\..*", "stiff springs suit a heavier load"),
            Relief.of(
                    ".*\\.mass",
                    "towing\\.(outweighed|ball-heavy|pin-heavy|unbraked-by-share)",
                    "of two masses the other is the smaller"),
            Relief.of(
                    ".*\\.(mass|front-axle|rear-axle)",
                    "across\\.bar-wrong-twice",
                    "the bar alone is no longer what is too much"),
            Relief.of(
                    ".*(ball|rear)-overhang",
                    "mass\\.axle-over|across\\.bar-wrong-twice|tyres\\.load-.*",
                    "the ball takes more off the front axle"),
            Relief.of(
                    "vehicle\\.ratings\\.levelling",
                    "mass\\.axle-.*|tyres\\.load-.*",
                    "a hitch that is ruled out puts nothing back on the front axle"),
            Relief.of(
                    ".*\\.wheelbase-added",
                    "suspension\\.front-springs-left",
                    "the longer the wheelbase, the less what is ahead of the front axle puts on it"),
            Relief.of(
                    ".*(gvm|front-axle|rear-axle|\\.mass)",
                    "across\\.(supplies|tanks)-.*",
                    "what is passed as planned is a stop of its own"),
            Relief.of(
                    ".*(\\.mass|cog-height)",
                    "mass\\.cog-over-emptied",
                    "what is too high as planned is a stop of its own"),
            Relief.of(
                    "trailer\\.ball|.*ratings\\.ball|.*plate\\.ball",
                    "towing\\.ball-(over|unsure)-emptied",
                    "a ball that is too heavy as planned is a stop of its own"),
            Relief.of(
                    "circuits\\.N\\.fuse\\.rating",
                    "electrical\\.(cable-(thin|over-rating)|no-fuse-suits)",
                    "a fuse that the cable bears guards it, and is itself too small for the load"),
            Relief.of(
                    ".*(plate|coupling|ratings)\\.ball",
                    "towing\\.bars-weak",
                    "bars bear no more than the ball is allowed; a heavier one is a stop of its own"),
            Relief.of("trailer\\.ball", "towing\\.bars-stiff", "stiff bars suit a heavier ball"),
            Relief.of(
                    "trailer\\.ball", "towing\\.levelling-tightens", "of a heavier ball supplies take a smaller share"),
            Relief.of(
                    "tanks\\.N\\.capacity",
                    "mass\\..*|tyres\\.(load|wheel)-.*|across\\.tanks-.*|water\\.(one-tank|surges)|body\\.fixing-unstated",
                    "less is in it"),
            Relief.of(
                    "trailer\\.ball",
                    "towing\\.(ball-(light|light-emptied|slight)|pin-light(-emptied)?|axles-(over|untold)|force-over|tyres-over|levelled-over)",
                    "what is on the ball is not on the axles"),
            Relief.of(
                    "vehicle\\.rails\\.width|.*\\.mass|trailer\\.ball",
                    "body\\.rails-(weak|yield)",
                    "a wider rail is stronger, and a load ahead of the place or behind it takes some of the bending off"),
            Relief.of(
                    "trailer\\.ball",
                    "(mass\\.(cog-high|tips-sooner|axle-.*)|across\\.supplies-used-up|tyres\\.load-.*)",
                    "what hangs low and far back lowers the centre of gravity and lifts the front axle"),
            Relief.of(
                    ".*(inlet-bore|snorkel\\.bore)",
                    "intake\\.bore-(narrow|step)",
                    "the two are held against each other"),
            Relief.of(
                    "vehicle\\.mass\\.cog-height",
                    "mass\\.(cog-high|tips-sooner)",
                    "what the parts raise it by is judged"),
            Relief.of(".*gcm", "towing\\.too-fast-heavy", "the law goes by the rating"),
            Relief.of("vehicle\\.size\\.track", "tyres\\.outside", "wheels closer together stand less far out"),
            Relief.of(
                    "vehicle\\.ratings\\.roof.*|.*\\.carries.*|trip\\.roof-sleepers|.*\\.mass",
                    "mass\\.roof-less-.*",
                    "of the roof's limits the least counts"),
            Relief.of("vehicle\\.size\\.rear-overhang", "body\\.overhang-grown", "what it grew by is judged"),
            Relief.of(".*", "across\\.unusual", "a figure made worse may come to be a usual one"),
            Relief.of(".*\\.alarm", "fuel\\.alarm-unnoticed", "an alarm in vain is a fault, none a choice"),
            Relief.of(".*(lead-time|days)", "order\\.broken-up", "more work, or later, leaves fewer gaps"),
            Relief.of(".*battery\\.capacity", "body\\.battery-vent-small", "a smaller battery gives off less"),
            Relief.of(".*charger\\.output", "electrical\\.charge(r-gains|-over)", "it is no longer more than it takes"),
            Relief.of(
                    ".*(solar-panel\\.power|charger\\.output)",
                    "electrical\\.fuse-below-load",
                    "weaker panels, or a smaller controller, bring less current"),
            Relief.of(
                    ".*(length|width|ball-overhang)",
                    "mirrors\\.(load-hides|sticks-out|left-out|out-past-what-stays)|body\\.door-meets-trailer",
                    "the trailer stands farther off, or what a mirror is measured from is wider"),
            Relief.of(
                    ".*kind (tray|canopy)\\.width",
                    "mirrors\\.(field|near)-narrow",
                    "past a wider body mirrors may stay out, and show more"),
            Relief.of("trip\\.people", "across\\.people-more", "more travel than are aboard"),
            Relief.of("trip\\.water-use", "water\\.use-low", "it is how low it is that is judged"),
            Relief.of(".*wheels\\.width", "tyres\\.rim-narrow", "it is how narrow it is that is judged"));

    /** Findings that give way to another, where it comes to that. */
    private static final Map<String, List<String>> INSTEAD = Map.ofEntries(
            Map.entry("mirrors.near-narrow", List.of("mirrors.trailer-hides", "mirrors.load-hides")),
            Map.entry("fuel.alarm-half", List.of("fuel.alarm-missing")),
            Map.entry("recovery.tree-strap-weak", List.of("recovery.kit-short")),
            Map.entry("intake.bore-step", List.of("intake.bore-narrow")),
            Map.entry("intake.snorkel-in-vain", List.of("intake.joint-open")),
            Map.entry("order.order-now", List.of("order.late")),
            Map.entry("order.late-in-turn", List.of("order.late")),
            Map.entry("towing.coupling-below-plate", List.of("towing.coupling-over")),
            Map.entry("towing.breakaway-short", List.of("towing.breakaway-missing")),
            Map.entry("tyres.passenger-on-truck", List.of("tyres.load-over")),
            Map.entry("body.canopy-slides-forward-unsure", List.of("body.canopy-slides-forward")),
            Map.entry("body.canopy-slides-aside-unsure", List.of("body.canopy-slides-aside")),
            Map.entry("body.canopy-slides-back-unsure", List.of("body.canopy-slides-back")),
            Map.entry("body.canopy-tips-forward-unsure", List.of("body.canopy-tips-forward")),
            Map.entry("body.load-unsecured", List.of("body.load-loose")),
            Map.entry("body.hold-down-unsure", List.of("body.hold-down-weak")),
            Map.entry(
                    "body.held-unsure",
                    List.of(
                            "body.fixing-weak",
                            "body.slides-forward",
                            "body.slides-aside",
                            "body.straps-in-vain",
                            "body.tied-slides-forward",
                            "body.tied-slides-aside",
                            "body.tied-slides-back",
                            "body.untied-forward",
                            "body.untied-aside",
                            "body.untied-back")),
            Map.entry("body.slides-forward", List.of("body.straps-in-vain")),
            Map.entry("body.slides-aside", List.of("body.straps-in-vain")),
            Map.entry("electrical.inverter-together", List.of("electrical.inverter-weak")),
            Map.entry("electrical.inverter-start-beside", List.of("electrical.inverter-start-weak")),
            Map.entry("body.overhang-kept", List.of("body.overhang-long", "body.overhang-grown")),
            Map.entry("towing.bars-weak", List.of("towing.levelling-refused")),
            Map.entry("towing.bars-stiff", List.of("towing.levelling-refused")),
            Map.entry("body.rails-weak", List.of("body.rails-yield")),
            Map.entry("body.battery-vent-small", List.of("electrical.battery-gas")),
            Map.entry("across.tanks-not-full", List.of("mass.gvm-over", "mass.axle-over")),
            Map.entry("across.tanks-used-up", List.of("mass.axle-over")),
            Map.entry("across.supplies-used-up", List.of("mass.gvm-over", "mass.axle-over")),
            Map.entry("mass.cog-over-emptied", List.of("mass.cog-over")),
            Map.entry("tyres.load-over-emptied", List.of("tyres.load-over")),
            Map.entry(
                    "tyres.load-unsure-emptied",
                    List.of("tyres.load-over", "tyres.load-unsure", "tyres.load-over-emptied")),
            Map.entry("towing.levelling-slack", List.of("towing.levelling-refused")),
            Map.entry("towing.levelling-tight", List.of("towing.levelling-refused")),
            Map.entry("towing.levelling-tightens", List.of("towing.levelling-refused")),
            Map.entry("towing.levelling-on-air", List.of("towing.levelling-refused")),
            Map.entry("tyres.wheel-over-emptied", List.of("tyres.wheel-over")),
            Map.entry("across.tanks-take-payload", List.of("mass.gvm-over")));

    private record Worse(String field, Node.Mapping sheet) {}

    private static List<Worse> worse(Node.Mapping sheet) {
        List<Worse> worse = new ArrayList<>();
        for (Twigs.Twig twig : Twigs.of(sheet)) {
            String field = SheetFields.of(sheet, twig.path());
            String text = twig.value().text();
            for (String other : others(field, text)) {
                worse.add(new Worse(
                        field,
                        Trees.with(
                                sheet, twig.path(), new Node.Scalar(twig.value().place(), other, false))));
            }
        }
        return worse;
    }

    private static List<String> others(String field, String text) {
        if (NO.matcher(field).matches() && text.equals("yes")) {
            return List.of("no");
        }
        if (YES.matcher(field).matches() && text.equals("no")) {
            return List.of("yes");
        }
        boolean more = MORE.matcher(field).matches();
        Matcher number = NUMBER.matcher(text);
        if (!(more || LESS.matcher(field).matches()) || !number.matches()) {
            return List.of();
        }
        if (field.endsWith("load-index")) {
            return List.of(new BigDecimal(text).subtract(BigDecimal.TEN).toString());
        }
        boolean count = number.group(2).isEmpty();
        // What is below zero is less the further it is from there.
        boolean away = more != number.group(1).startsWith("-");
        return Stream.of(away ? "1.06" : "0.94", away ? "1.9" : "0.5")
                .map(factor -> new BigDecimal(number.group(1)).multiply(new BigDecimal(factor)))
                .map(value -> value.setScale(count ? 0 : 3, more ? RoundingMode.CEILING : RoundingMode.FLOOR)
                                .toPlainString()
                        + number.group(2))
                .toList();
    }

    /** Of every so many cases one, the same in every build; {@code -Devery=1} tries all. */
    private static final int EVERY = Integer.getInteger("every", 15);

    @Test
    void whatMakesAPlanWorseTakesNoFindingAway() throws FaultsException {
        Set<String> faults = new TreeSet<>();
        for (String file : List.of("plain-sheet", "touring", "weekender", "overloaded")) {
            tell(Sheets.file((file.equals("plain-sheet") ? "rules/" : "scenarios/") + file + ".yaml"), file, faults);
        }
        List<Cases.Case> cases = Books.cases();
        for (int i = 0; i < cases.size(); i += EVERY) {
            tell(cases.get(i).tree(), cases.get(i).toString(), faults);
        }
        assertEquals("", String.join("\n", faults));
    }

    /** Made sheets, each made worse in one way. */
    @Property(seed = "4711", tries = 60)
    void norDoesItOnMadeSheets(@ForAll("sheets") MadeSheet sheet, @ForAll @IntRange(max = 9999) int pick)
            throws FaultsException {
        List<Worse> all = worse(sheet.tree());
        Set<String> faults = new TreeSet<>();
        tell(sheet.advice(), all.get(pick % all.size()), sheet.toString(), faults);
        assertEquals(Set.of(), faults);
    }

    @Provide
    Arbitrary<MadeSheet> sheets() {
        return MadeSheet.any();
    }

    private static void tell(Node.Mapping sheet, String name, Set<String> faults) throws FaultsException {
        Advice before = Adviser.advise(Books.engine(), Sheets.read(sheet));
        if (!before.findings().isEmpty()) {
            for (Worse each : worse(sheet)) {
                tell(before, each, name, faults);
            }
        }
    }

    private static void tell(Advice before, Worse worse, String name, Set<String> faults) throws FaultsException {
        Sheet sheet;
        try {
            sheet = Sheets.read(worse.sheet());
        } catch (FaultsException refused) {
            return;
        }
        Advice after = Adviser.advise(Books.engine(), sheet);
        for (Outcome.Finding finding : before.findings()) {
            if (!stands(finding, after)
                    && RELIEFS.stream().noneMatch(relief -> relief.counts(worse.field(), finding))) {
                faults.add(worse.field() + " | " + finding.key() + " | " + name);
            }
        }
    }

    /** Whether it stands, or one no milder of the same measure or in its stead, or some figure is now asked for. */
    private static boolean stands(Outcome.Finding finding, Advice after) {
        return after.notAssessed().stream().anyMatch(asked -> asked.key().equals(finding.key()))
                || after.findings().stream()
                        .anyMatch(other -> (sameMeasure(finding.judged(), other.judged())
                                        && severity(other).compareTo(severity(finding)) <= 0)
                                || INSTEAD.getOrDefault(finding.judged().id(), List.of())
                                        .contains(other.judged().id()));
    }

    private static boolean sameMeasure(Outcome.Judged one, Outcome.Judged other) {
        return one.measure().getName().equals(other.measure().getName())
                && one.subject().equals(other.subject())
                && one.loadCase().equals(other.loadCase());
    }

    private static Severity severity(Outcome.Finding finding) {
        return finding.judged().card().severity().value();
    }
}
