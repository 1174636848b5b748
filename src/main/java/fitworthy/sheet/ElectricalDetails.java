package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** Parts that store, charge or switch current. */
public sealed interface ElectricalDetails extends Details {

    record Battery(
            @Field(value = "what chemistry it is", find = "its label") Choice<Chemistry> chemistry,
            @Field(
                            value = "its nominal voltage",
                            in = Dimension.VOLTAGE,
                            within = Plausible.BATTERY_VOLTAGE,
                            find = "its label",
                            example = "12 V")
                    Figure voltage,
            @Field(
                            value = "its nominal capacity",
                            in = Dimension.CHARGE,
                            within = Plausible.CHARGE,
                            find = "its label",
                            example = "100 Ah")
                    Figure capacity,
            @Field(value = "where it stands", find = "the plan") Choice<BatteryPlace> place,
            @Field(value = "whether its box is vented to the outside", find = "the fitter") Choice<YesNo> ventedOutside,
            @Field(
                            value = "free area of its upper vent or of its lower one, whichever is smaller",
                            in = Dimension.AREA,
                            within = Plausible.VENT,
                            find = "the fitter",
                            example = "20 cm2")
                    Figure vents,
            @Field(value = "whether it is held down so that a crash does not move it", find = "the fitter")
                    Choice<YesNo> fixed,
            @Field(value = "whether a switch within reach cuts it off; asked of lithium batteries", find = "the plan")
                    Choice<YesNo> cutOff,
            @Field(
                            value =
                                    "what happens where a lithium battery would be charged in frost: its management unit"
                                            + " blocks it, it is heated, or nothing",
                            find = "its data sheet")
                    Choice<ColdCharging> coldCharging,
            @Field(
                            value =
                                    "whether what charges it does so by the curve that lithium batteries need; asked where"
                                            + " no charger is planned",
                            find = "the data sheet of what charges it")
                    Choice<YesNo> lithiumCurve,
            @Field(
                            value =
                                    "the greatest current that it may be charged with; asked where chargers and panels give it"
                                            + " much for its size",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "50 A")
                    Figure mostCharge,
            @Field(
                            value =
                                    "the greatest current that it gives without stopping; asked of lithium batteries where what"
                                            + " hangs on it takes much for its size",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "100 A")
                    Figure mostDischarge)
            implements ElectricalDetails {}

    /** Flooded, absorbed-mat and gelled lead-acid, and lithium iron phosphate. */
    enum Chemistry {
        LEAD_ACID,
        AGM,
        GEL,
        LITHIUM
    }

    enum ColdCharging {
        BLOCKED,
        HEATED,
        UNGUARDED
    }

    enum BatteryPlace {
        ENGINE_BAY,
        CABIN,
        CANOPY,
        OUTSIDE
    }

    /** What charges the second battery: a converter, or a relay that joins the batteries. */
    record Charger(
            @Field(value = "what it is fed by; the alternator where left out", find = "the plan") Choice<Source> fedBy,
            @Field(
                            value =
                                    "whether it only joins the batteries, as a relay or an isolator does, so that it gives"
                                            + " what it takes; no where left out",
                            find = "its data sheet")
                    Choice<YesNo> isolator,
            @Field(
                            value = "the most it takes from the alternator",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "30 A")
                    Figure input,
            @Field(
                            value = "the most it gives the battery, at the battery's voltage",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "25 A")
                    Figure output,
            @Field(value = "whether it charges by the curve that lithium batteries need", find = "its data sheet")
                    Choice<YesNo> lithiumCurve,
            @Field(
                            value =
                                    "what tells it that the engine runs; asked unless the vehicle's alternator keeps its voltage",
                            find = "the wiring plan")
                    Choice<Start> startsBy,
            @Field(
                            value = "the most open-circuit voltage that its solar input bears",
                            in = Dimension.VOLTAGE,
                            within = Plausible.SOLAR_VOLTAGE,
                            find = "its data sheet",
                            example = "75 V")
                    Figure mostVoltage,
            @Field(
                            value = "the most short-circuit current that its solar input bears",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its data sheet",
                            example = "15 A")
                    Figure mostCurrent,
            @Field(value = "whether it sits in the engine bay; asked where it sits that far forward", find = "the plan")
                    Choice<YesNo> engineBay,
            @Field(
                            value =
                                    "the greatest heat around it at which its maker lets it work at full output; asked of one in the"
                                            + " engine bay",
                            in = Dimension.TEMPERATURE,
                            within = Plausible.INSULATION,
                            find = "its data sheet",
                            example = "60 degC")
                    Figure mostHeat)
            implements ElectricalDetails {

        /** Whether the alternator feeds it, as it does where the sheet does not say. */
        public boolean fromAlternator() {
            return !fedBy.known() || fedBy.is(Source.ALTERNATOR);
        }

        public enum Source {
            ALTERNATOR,
            SUN,
            MAINS
        }

        /** A wire that is live with the ignition, or the voltage at its input. */
        public enum Start {
            IGNITION,
            VOLTAGE
        }
    }

    /** What makes the voltage of a house out of the battery's. The circuit whose part it is, is its feed. */
    record Inverter(
            @Field(
                            value = "what it gives of the power that it takes; 90 % where left out",
                            in = Dimension.SHARE,
                            within = Plausible.INVERTER,
                            find = "its data sheet",
                            example = "92 %")
                    Figure efficiency,
            @Field(
                            value = "the power that it gives without stopping",
                            in = Dimension.POWER,
                            within = Plausible.INVERTER_POWER,
                            find = "its data sheet",
                            example = "1000 W")
                    Figure continuous,
            @Field(
                            value =
                                    "the power that it gives for a moment; asked where a load behind it says what it draws as"
                                            + " it starts",
                            in = Dimension.POWER,
                            within = Plausible.INVERTER_POWER,
                            find = "its data sheet",
                            example = "2000 W")
                    Figure surge)
            implements ElectricalDetails {}

    record SolarPanel(
            @Field(
                            value = "rated power of one of its panels",
                            in = Dimension.POWER,
                            within = Plausible.SOLAR_POWER,
                            find = "its label",
                            example = "200 W")
                    Figure power,
            @Field(
                            value = "the charger that it is connected to; the one that the sun feeds where left out",
                            find = "the plan",
                            example = "Solar controller")
                    String charger,
            @Field(
                            value = "open-circuit voltage of one panel at 25 degC, Voc",
                            in = Dimension.VOLTAGE,
                            within = Plausible.SOLAR_VOLTAGE,
                            find = "its label",
                            example = "22.5 V")
                    Figure openCircuit,
            @Field(
                            value =
                                    "how many panels are connected in series, 1 for a single one; a whole string is one part. Where left out"
                                            + " its power counts as that of one, and its volts are asked",
                            find = "the plan",
                            example = "2",
                            within = Plausible.POSITION)
                    Figure inSeries,
            @Field(
                            value =
                                    "how much its open-circuit voltage rises with each degree that it is colder; a careful common"
                                            + " figure where left out",
                            in = Dimension.SHARE,
                            within = Plausible.RISE,
                            find = "its data sheet, the temperature coefficient of Voc",
                            example = "0.3 %")
                    Figure perDegree,
            @Field(
                            value = "short-circuit current of one panel, Isc",
                            in = Dimension.CURRENT,
                            within = Plausible.CURRENT,
                            find = "its label",
                            example = "11.5 A")
                    Figure shortCircuit,
            @Field(
                            value =
                                    "how many such strings, or single panels, this part has side by side, 1 for a single one. Where left"
                                            + " out its power counts as that of one, and its amperes are asked",
                            find = "the plan",
                            example = "1",
                            within = Plausible.POSITION)
                    Figure strings)
            implements ElectricalDetails {

        /** Rated power of all panels, in W; of one where the sheet does not tell how many there are. */
        public Figure wholePower() {
            return power.times(inSeries.or(Figure.of(1, 0))).times(strings.or(Figure.of(1, 0)));
        }
    }

    record SwitchPanel(
            @Field(
                            value = "how many circuits it switches",
                            find = "its data sheet",
                            example = "8",
                            within = Plausible.COUNT)
                    Figure ways)
            implements ElectricalDetails {}
}
