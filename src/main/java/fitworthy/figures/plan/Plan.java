package fitworthy.figures.plan;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.FieldSchema;
import fitworthy.schema.RecordSchema;
import fitworthy.sheet.Contents;
import fitworthy.sheet.Details;
import fitworthy.sheet.Fitment;
import fitworthy.sheet.LoadCase;
import fitworthy.sheet.MassDetails;
import fitworthy.sheet.MassDetails.RatingApproval;
import fitworthy.sheet.Sheet;
import fitworthy.sheet.TowingDetails;
import fitworthy.sheet.Trailer;
import fitworthy.sheet.TyreDetails;
import fitworthy.sheet.Vehicle;
import fitworthy.sheet.VehicleEnd;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A sheet with what its fitments change worked in: the wheelbase, ratings, tyres and wheels as planned. */
public final class Plan {

    private static final FieldSchema REGISTERED = RecordSchema.of(Vehicle.class).field("registered");

    /** How far from an axle a set of one axle may be placed, as a share of the wheelbase: an assumption, see docs/method.md. */
    private static final double NEAR_AN_AXLE = 0.25;

    private final Sheet sheet;
    private final Tables tables;
    private final Function<PracticeId, Figure> practice;
    // Measures ask for these over and over, so the parts are not gone through each time.
    private final Map<Fitment.Kind, List<Fitment>> byKind = new EnumMap<>(Fitment.Kind.class);
    private final Map<Class<?>, List<Details>> byDetails = new HashMap<>();
    private final Contents contents;
    private final Map<List<String>, Set<String>> off = new ConcurrentHashMap<>();
    private final Places places;
    private final Optional<Trailer> trailer;
    private final Figure wheelbase;
    private final Vehicle.Ratings ratings;
    private final WheelbaseStretch stretch;
    private final Figure tyreGrowth;
    private final List<String> leftNowhere;
    private final List<Fitment> notTaken;
    /** Made when it is first asked for; no harm is done where two threads make it. */
    private volatile List<PointMass> unladen;

    /**
     * @param sheet the sheet as read; of its options what is taken is planned
     * @param tables published tables
     * @param practice practice values of the sheet's region and day, for a figure that rests on one; missing
     *     where the rule book records none
     */
    public Plan(Sheet sheet, Tables tables, Function<PracticeId, Figure> practice) {
        this.sheet = sheet.planned();
        this.leftNowhere = sheet.leftNowhere();
        Set<String> leftOut = sheet.leftOut();
        this.notTaken = sheet.fitments().stream()
                .filter(part -> leftOut.contains(part.name()))
                .toList();
        this.contents = new Contents(this.sheet.fitments(), this.sheet.tanks());
        this.places = new Places(this.sheet);
        this.trailer = BallLoad.of(this.sheet).map(BallLoad::filledIn);
        this.tables = tables;
        this.practice = practice;
        for (Fitment fitment : this.sheet.fitments()) {
            byKind.computeIfAbsent(fitment.kind(), kind -> new ArrayList<>()).add(fitment);
            byDetails
                    .computeIfAbsent(fitment.details().getClass(), type -> new ArrayList<>())
                    .add(fitment.details());
        }
        this.wheelbase = details(MassDetails.ChassisExtension.class).stream()
                .map(MassDetails.ChassisExtension::wheelbaseAdded)
                .reduce(vehicle().size().wheelbase(), Figure::plus);
        List<MassDetails.ChassisExtension> ahead = toBeDone(MassDetails.ChassisExtension.class);
        this.stretch = WheelbaseStretch.of(
                ahead.stream().map(MassDetails.ChassisExtension::wheelbaseAdded).reduce(wheelbase, Figure::minus),
                wheelbase,
                ahead.stream().findFirst(),
                vehicle());
        this.tyreGrowth = fitments(Fitment.Kind.TYRES).isEmpty()
                ? Figure.of(0, 0)
                : tyreSet().growthOver(stockTyreSet());
        this.ratings = raising()
                .map(kit -> upgraded((MassDetails.RatingUpgrade) kit.details()))
                .orElse(vehicle().ratings());
    }

    /** The sheet with what is taken of its options. */
    public Sheet sheet() {
        return sheet;
    }

    /** What goes with a part that is not taken because it stands in or on it, though no choice says so; by name. */
    public List<String> leftNowhere() {
        return leftNowhere;
    }

    /** The parts that are left out because another choice is taken, with what stands in or on them. */
    public List<Fitment> notTaken() {
        return notTaken;
    }

    /** Published tables. */
    public Tables tables() {
        return tables;
    }

    /** A practice value of the sheet's region and day, in the unit used inside. */
    public Figure practice(PracticeId id) {
        return practice.apply(id);
    }

    /** Every mass with nobody and nothing aboard, and without the parts that come off. @param made the first time */
    List<PointMass> unladen(Supplier<List<PointMass>> made) {
        if (unladen == null) {
            unladen = made.get();
        }
        return unladen;
    }

    /**
     * The trailer, whose masses have the assumed tolerance where the sheet gives none; the load on its ball is worked out
     * where the sheet lists what is aboard and does not give it.
     */
    public Optional<Trailer> trailer() {
        return trailer;
    }

    public Vehicle vehicle() {
        return sheet.vehicle();
    }

    public List<Fitment> fitments(Fitment.Kind kind) {
        return byKind.getOrDefault(kind, List.of());
    }

    /** The details of every planned part whose details are of this type. */
    @SuppressWarnings("unchecked")
    public <D extends Details> List<D> details(Class<D> type) {
        return (List<D>) byDetails.getOrDefault(type, List.of());
    }

    /** The details of the first planned part of this type. */
    public <D extends Details> Optional<D> planned(Class<D> type) {
        List<D> all = details(type);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(0));
    }

    /** The details of every part of this type that is not yet done. */
    public <D extends Details> List<D> toBeDone(Class<D> type) {
        return sheet.fitments().stream()
                .filter(fitment -> !fitment.isDone())
                .map(Fitment::details)
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    /** Whether the vehicle is registered by the day the sheet asks about. */
    public Choice<YesNo> registered() {
        LocalDate registered = vehicle().registered();
        return registered == null
                ? Choice.missing(REGISTERED.missingIn("vehicle"))
                : Choice.yesNo(!registered.isAfter(sheet.asOf()));
    }

    public Places places() {
        return places;
    }

    public Figure wheelbase() {
        return wheelbase;
    }

    /** What a longer wheelbase moves. */
    public WheelbaseStretch stretch() {
        return stretch;
    }

    /** Parts and tanks that are off in a load case: those it names, and what stands in or on them. */
    public Set<String> off(LoadCase loadCase) {
        return off.computeIfAbsent(loadCase.off(), names -> Collections.unmodifiableSet(contents.with(names)));
    }

    /** These parts and tanks with all that stands in or on them. */
    Set<String> withContents(Collection<String> names) {
        return contents.with(names);
    }

    /** The maker's ratings, each replaced by a planned upgrade's where the upgrade gives it and may be approved. */
    public Vehicle.Ratings ratings() {
        return ratings;
    }

    /** The part that raises the maker's ratings, where what it names may come to hold; a planned one before one that is on. */
    public Optional<Fitment> raising() {
        return fitments(Fitment.Kind.RATING_UPGRADE).stream()
                .filter(this::mayHold)
                .min(Comparator.comparing(Fitment::isDone));
    }

    /**
     * Not what nobody approves. What is still to be fitted to a registered vehicle does not where that is refused, nor, where
     * the stages are told apart, by an approval for a vehicle that is not registered yet; what is on it may have come before.
     */
    private boolean mayHold(Fitment kit) {
        Choice<RatingApproval> approval = ((MassDetails.RatingUpgrade) kit.details()).approval();
        boolean late = registered().is(YesNo.YES) && !kit.isDone();
        boolean refused = holds(PracticeId.MASS_RERATING_REFUSED) && (late || approval.is(RatingApproval.IN_SERVICE));
        boolean early = approval.is(RatingApproval.SECOND_STAGE) && holds(PracticeId.PAPERWORK_RATING_STAGES);
        return !approval.is(RatingApproval.NONE) && !refused && !(late && early);
    }

    /** Whether what a practice value says yes or no to is so where the plan is. */
    private boolean holds(PracticeId id) {
        Figure value = practice(id);
        return value.known() && !value.isZero();
    }

    private Vehicle.Ratings upgraded(MassDetails.RatingUpgrade upgrade) {
        Vehicle.Ratings made = vehicle().ratings();
        return new Vehicle.Ratings(
                upgrade.gvm().or(made.gvm()),
                upgrade.gcm().or(made.gcm()),
                upgrade.frontAxle().or(made.frontAxle()),
                upgrade.rearAxle().or(made.rearAxle()),
                upgrade.towing().or(made.towing()),
                made.towingStated(),
                made.towingUnbraked(),
                made.ball(),
                made.ballWhenFull(),
                made.roof(),
                made.roofOffRoad(),
                made.roofAtRest(),
                made.cogHeight(),
                made.levelling());
    }

    public TowingDetails.TowBar towBar() {
        return planned(TowingDetails.TowBar.class).orElse(vehicle().towBar());
    }

    /** Whether the sheet speaks of towing: a trailer, or a tow bar, planned or there. */
    public boolean tows() {
        TowingDetails.TowBar bar = vehicle().towBar();
        return trailer.isPresent()
                || !fitments(Fitment.Kind.TOW_BAR).isEmpty()
                || bar.socket().known()
                || Stream.of(
                                bar.ballOverhang(),
                                bar.ballHeight(),
                                bar.plate().trailer(),
                                bar.plate().d(),
                                bar.plate().ball())
                        .anyMatch(Figure::known);
    }

    /** From the rear axle to the ball, with the planned tow bar. */
    public Figure ballOverhang() {
        return planned(TowingDetails.TowBar.class)
                .map(TowingDetails.TowBar::ballOverhang)
                .orElseGet(() -> towBar().ballOverhang().or(vehicle().size().ballOverhang()));
    }

    /** Height of the ball, with the planned tow bar. */
    public Figure ballHeight() {
        return planned(TowingDetails.TowBar.class)
                .map(TowingDetails.TowBar::ballHeight)
                .orElseGet(() -> towBar().ballHeight().or(vehicle().size().ballHeight()));
    }

    /** Every set of tyres that is planned, or else those that the vehicle came with. */
    public List<TyreSet> tyreSets() {
        List<TyreSet> planned = fitments(Fitment.Kind.TYRES).stream()
                .map(part -> new TyreSet((TyreDetails.Tyres) part.details(), "fitments." + part.name()))
                .toList();
        return planned.isEmpty() ? List.of(stockTyreSet()) : planned;
    }

    /** The axle that a set of tyres or wheels sits at; empty where its place does not tell, as that of a set for both. */
    public Optional<VehicleEnd> axle(Fitment set) {
        return places.of(set)
                .flatMap(at -> at.x().isAtMost(wheelbase.times(NEAR_AN_AXLE))
                        ? Optional.of(VehicleEnd.FRONT)
                        : at.x().isAtLeast(wheelbase.times(1 - NEAR_AN_AXLE))
                                ? Optional.of(VehicleEnd.REAR)
                                : Optional.empty());
    }

    /**
     * The tyres of an axle: of several sets that may be at it the one that carries least, or may; the vehicle's own where all
     * that are planned are at the other axle.
     */
    public TyreDetails.Tyres tyres(boolean rear) {
        VehicleEnd other = rear ? VehicleEnd.FRONT : VehicleEnd.REAR;
        List<Fitment> planned = fitments(Fitment.Kind.TYRES);
        List<TyreSet> there = new ArrayList<>(tyreSets());
        for (int i = planned.size() - 1; i >= 0; i--) {
            if (axle(planned.get(i)).filter(other::equals).isPresent()) {
                there.remove(i);
            }
        }
        return weakest(there.isEmpty() ? List.of(stockTyreSet()) : there).tyres();
    }

    /** The tyres as planned; of several sets the one that carries least, or may. */
    public TyreDetails.Tyres tyres() {
        return tyreSet().tyres();
    }

    /** The same with what their size says. */
    public TyreSet tyreSet() {
        return weakest(tyreSets());
    }

    /** The first of which nobody knows what it carries, else the one that carries least. */
    private static TyreSet weakest(List<TyreSet> sets) {
        return sets.stream()
                .min(Comparator.comparingDouble(
                        set -> set.tyres().loadIndex().or(Figure.ZERO).value()))
                .orElseThrow();
    }

    /** The tyres that the vehicle came with. */
    public TyreSet stockTyreSet() {
        return new TyreSet(vehicle().tyres(), "vehicle.tyres");
    }

    /** By how much the tyres as planned are larger than the vehicle's own, in m. */
    public Figure tyreGrowth() {
        return tyreGrowth;
    }

    /** Overall diameter of the tyres, in m. */
    public Figure tyreDiameter() {
        return tyreSet().diameter();
    }

    public TyreDetails.Wheels wheels() {
        return planned(TyreDetails.Wheels.class).orElse(vehicle().wheels());
    }

    /** The load cases; where the sheet lists none, one with everything aboard, towing where there is a trailer. */
    public List<LoadCase> cases() {
        if (!sheet.cases().isEmpty()) {
            return sheet.cases();
        }
        return List.of(new LoadCase(
                "everything aboard",
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Map.of(),
                Choice.yesNo(sheet.trailer().isPresent()),
                Choice.of(YesNo.YES),
                Optional.empty()));
    }
}
