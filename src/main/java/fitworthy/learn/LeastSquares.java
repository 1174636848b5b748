package fitworthy.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Generalised least squares: the best linear estimate of unknowns whose effects are observed with errors of known
 * covariance (Aitken's estimate, {@code (X' V^-1 X)^-1 X' V^-1 y}; JCGM 100 and any text on regression, from memory).
 * What the observations do not tell apart is found, not made up: it lies in the null space of {@code X' V^-1 X}.
 */
final class LeastSquares {

    /** How often an interval holds what it is of. */
    private static final double LEVEL = 0.95;

    /** Half an interval of 95 % in standard deviations, where these are known. */
    static final double NORMAL = new NormalDistribution().inverseCumulativeProbability(0.5 + LEVEL / 2);

    /** Scatter beyond this share of what chance gives is not chance. */
    private static final double CHANCE = 0.99;

    /** What is smaller, of matrices whose diagonal is one, is rounding. */
    private static final double ROUNDING = 1e-9;

    /** The share of an unknown in what is not told that is more than rounding. */
    private static final double MIXED = 1e-6;

    /**
     * Observations whose errors hang together, and are independent of those of all other rows.
     *
     * @param observed what was observed, in kg
     * @param covariance of the errors, in kg squared; positive definite
     * @param effects what one kilogram of each unknown adds to each row, by the number of the unknown
     */
    record Rows(double[] observed, double[][] covariance, Map<Integer, double[]> effects) {}

    private final double[] values;
    private final RealMatrix covariance;
    private final RealMatrix mixed;
    private final double scatter;
    private final int free;

    private LeastSquares(double[] values, RealMatrix covariance, RealMatrix mixed, double scatter, int free) {
        this.values = values;
        this.covariance = covariance;
        this.mixed = mixed;
        this.scatter = scatter;
        this.free = free;
    }

    /**
     * Solves for the unknowns.
     *
     * @param known the standard deviation within which each unknown is known to be zero beforehand, in kg; infinite where
     *     nothing is known
     */
    static LeastSquares of(List<Rows> all, double[] known) {
        int unknowns = known.length;
        double[][] normal = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        double squares = 0;
        int observations = 0;
        for (Rows rows : all) {
            RealMatrix weight = new CholeskyDecomposition(MatrixUtils.createRealMatrix(rows.covariance()))
                    .getSolver()
                    .getInverse();
            RealVector observed = MatrixUtils.createRealVector(rows.observed());
            observations += rows.observed().length;
            squares += weight.operate(observed).dotProduct(observed);
            rows.effects().forEach((i, effect) -> {
                RealVector weighted = weight.operate(MatrixUtils.createRealVector(effect));
                right[i] += weighted.dotProduct(observed);
                rows.effects()
                        .forEach(
                                (j, other) -> normal[i][j] += weighted.dotProduct(MatrixUtils.createRealVector(other)));
            });
        }
        for (int i = 0; i < unknowns; i++) {
            if (Double.isFinite(known[i])) {
                normal[i][i] += 1 / (known[i] * known[i]);
                observations++;
            }
        }
        return solved(normal, right, squares, observations);
    }

    /** Solves for unknowns that are scaled to have an information of one each, so that rounding can be told. */
    private static LeastSquares solved(double[][] normal, double[] right, double squares, int observations) {
        int unknowns = right.length;
        if (unknowns == 0) {
            RealMatrix none = MatrixUtils.createRealIdentityMatrix(1);
            return new LeastSquares(right, none, none, squares, observations);
        }
        double[] scale = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            scale[i] = normal[i][i] > 0 ? 1 / Math.sqrt(normal[i][i]) : 1;
        }
        RealMatrix scaling = MatrixUtils.createRealDiagonalMatrix(scale);
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(
                scaling.multiply(MatrixUtils.createRealMatrix(normal)).multiply(scaling));
        double[] sizes = eigen.getEigenvalues();
        IntPredicate told = i -> sizes[i] > ROUNDING;
        double[] inverse = IntStream.range(0, unknowns)
                .mapToDouble(i -> told.test(i) ? 1 / sizes[i] : 0)
                .toArray();
        double[] untold = IntStream.range(0, unknowns)
                .mapToDouble(i -> told.test(i) ? 0 : 1)
                .toArray();
        RealMatrix covariance = scaling.multiply(spanned(eigen, inverse)).multiply(scaling);
        double[] values = covariance.operate(right);
        double explained = MatrixUtils.createRealVector(values).dotProduct(MatrixUtils.createRealVector(right));
        int rank = (int) IntStream.range(0, unknowns).filter(told).count();
        return new LeastSquares(
                values, covariance, spanned(eigen, untold), Math.max(0, squares - explained), observations - rank);
    }

    private static RealMatrix spanned(EigenDecompositionSymmetric eigen, double[] sizes) {
        return eigen.getV()
                .multiply(MatrixUtils.createRealDiagonalMatrix(sizes))
                .multiply(eigen.getVT());
    }

    /** Whether the observations tell an unknown. */
    boolean tells(int unknown) {
        return mixed.getEntry(unknown, unknown) < MIXED;
    }

    /** The unknowns that one is only told together with, itself left out. */
    List<Integer> mixedWith(int unknown) {
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (i != unknown && Math.abs(mixed.getEntry(unknown, i)) > MIXED) {
                others.add(i);
            }
        }
        return others;
    }

    /** The estimate of an unknown that is told, in kg. */
    double value(int unknown) {
        return values[unknown];
    }

    /** Half the width of its interval of 95 %, in kg. */
    double within(int unknown) {
        return factor() * Math.sqrt(covariance.getEntry(unknown, unknown));
    }

    /** How far two estimates go together, -1 to 1. */
    double correlation(int one, int other) {
        return covariance.getEntry(one, other)
                / Math.sqrt(covariance.getEntry(one, one) * covariance.getEntry(other, other));
    }

    /** Squared errors in units of their variance; as many as {@link #free} on the average. */
    double scatter() {
        return scatter;
    }

    /** How many observations are left over. */
    int free() {
        return free;
    }

    /** Whether the observations scatter more than their errors can explain. */
    boolean scatters() {
        return free > 0 && scatter > new ChiSquaredDistribution(free).inverseCumulativeProbability(CHANCE);
    }

    /** Where they scatter too much, errors are taken to be as large as they show. */
    private double factor() {
        return scatters()
                ? Math.sqrt(scatter / free) * new TDistribution(free).inverseCumulativeProbability(0.5 + LEVEL / 2)
                : NORMAL;
    }
}
