package fitworthy.figures.room;

import fitworthy.figures.measure.Working;
import fitworthy.figures.plan.PointMass;
import fitworthy.figures.plan.PointMass.Sort;
import fitworthy.quantity.Figure;
import fitworthy.sheet.Point;
import java.util.List;

/**
 * What is taken more of: a trailer's mass, cargo, litres.
 *
 * @param result what the most of it is called in a formula
 * @param sort what sort of mass it is
 * @param at where it weighs on the vehicle
 * @param weighs what a unit of it weighs there, kg
 * @param toUnits what a formula does to kg on the vehicle to have units, such as {@code / density}; empty for kg
 * @param inputs what that names
 */
record Taken(String result, Sort sort, Point at, Figure weighs, String toUnits, List<Working.Input> inputs) {

    /** So many units of it on the vehicle. */
    PointMass mass(double units) {
        return new PointMass(result, sort, weighs.times(units), at, false);
    }
}
