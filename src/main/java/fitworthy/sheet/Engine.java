package fitworthy.sheet;

import fitworthy.quantity.Choice;
import fitworthy.quantity.Dimension;
import fitworthy.quantity.Figure;
import fitworthy.quantity.YesNo;
import fitworthy.schema.Field;
import fitworthy.schema.Plausible;

/** The engine and what feeds it. */
public record Engine(
        @Field(value = "which fuel it burns", find = "the handbook") Choice<Fuel> fuel,
        @Field(
                        value = "swept volume",
                        in = Dimension.VOLUME,
                        within = Plausible.DISPLACEMENT,
                        find = "the handbook",
                        example = "2.8 L")
                Figure displacement,
        @Field(
                        value = "crankshaft speed at rated power",
                        in = Dimension.ROTATION,
                        within = Plausible.CRANKSHAFT,
                        find = "the engine's data sheet, or the handbook",
                        example = "3400 rpm")
                Figure ratedSpeed,
        @Field(
                        value = "boost above the air outside at rated power; 0 kPa without a turbocharger",
                        in = Dimension.PRESSURE,
                        within = Plausible.BOOST,
                        find = "the workshop manual",
                        example = "130 kPa")
                Figure boost,
        @Field(
                        value = "air temperature in the manifold at rated power",
                        in = Dimension.TEMPERATURE,
                        within = Plausible.INTAKE_AIR,
                        find = "the workshop manual",
                        example = "50 degC")
                Figure manifoldTemperature,
        @Field(
                        value = "volumetric efficiency at rated power",
                        in = Dimension.SHARE,
                        within = Plausible.VOLUMETRIC_EFFICIENCY,
                        find = "the workshop manual",
                        example = "88 %")
                Figure volumetricEfficiency,
        @Field(
                        value = "what it burns without a trailer, loaded",
                        in = Dimension.CONSUMPTION,
                        within = Plausible.CONSUMPTION,
                        find = "a fuel log",
                        example = "12.5 L/100km")
                Figure consumption,
        @Field(
                        value = "what it burns with the trailer",
                        in = Dimension.CONSUMPTION,
                        within = Plausible.CONSUMPTION,
                        find = "a fuel log",
                        example = "17.5 L/100km")
                Figure consumptionTowing,
        @Field(
                        value = "what the lift or feed pump moves, return flow included",
                        in = Dimension.FLOW,
                        within = Plausible.FUEL_FLOW,
                        find = "the workshop manual",
                        example = "110 L/h")
                Figure pumpFlow,
        @Field(value = "whether it came with a separator that takes water out of the fuel", find = "the handbook")
                Choice<YesNo> waterSeparator,
        @Field(
                        value = "rating of its own fuel filter",
                        in = Dimension.LENGTH,
                        within = Plausible.FILTER,
                        find = "the filter's maker",
                        example = "5 um")
                Figure filterRating,
        @Field(
                        value = "gas that leaves the crankcase at rated power",
                        in = Dimension.FLOW,
                        within = Plausible.BLOW_BY,
                        find = "the workshop manual, or a blow-by meter",
                        example = "80 L/min")
                Figure blowBy,
        @Field(
                        value = "rating of the alternator",
                        in = Dimension.CURRENT,
                        within = Plausible.CURRENT,
                        find = "its plate",
                        example = "130 A")
                Figure alternator,
        @Field(
                        value =
                                "whether the engine's computer lowers the voltage of the alternator once the starter battery is full;"
                                        + " asked where what charges a second battery goes by that voltage",
                        find = "the handbook, or a meter after half an hour's drive: below 13 V")
                Choice<YesNo> alternatorLowers,
        @Field(
                        value = "what the vehicle itself draws while driving, with lamps and fans on",
                        in = Dimension.CURRENT,
                        within = Plausible.CURRENT,
                        find = "a clamp meter",
                        example = "45 A")
                Figure ownLoad,
        @Field(
                        value = "what the vehicle itself draws when locked",
                        in = Dimension.CURRENT,
                        within = Plausible.STANDBY,
                        find = "a meter in the battery lead, after half an hour",
                        example = "30 mA")
                Figure ownStandby,
        @Field(
                        value = "nominal voltage of the starter battery; where left out, that of the circuits on it",
                        in = Dimension.VOLTAGE,
                        within = Plausible.BATTERY_VOLTAGE,
                        find = "its label",
                        example = "12 V")
                Figure voltage,
        @Field(
                        value = "capacity of the starter battery",
                        in = Dimension.CHARGE,
                        within = Plausible.CHARGE,
                        find = "its label",
                        example = "80 Ah")
                Figure starterBattery) {
    public enum Fuel {
        DIESEL,
        PETROL
    }
}
