package brakewright.numeric;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The coefficients with which columns make up for values best.
 *
 * <p>Source: ordinary least squares by QR (Apache Commons Math 3.6.1); standard errors that hold
 * where rows scatter unlike each other, the first of MacKinnon and White, Journal of Econometrics
 * 29 (1985), whose factor is {@code n/(n − k)}.
 *
 * @param coefficients one for each column
 * @param errors the standard error of each
 */
@SuppressWarnings("ArrayRecordComponent")
public record LeastSquares(double[] coefficients, double[] errors) {

    /** Columns more alike than this tell nothing apart. */
    private static final double SINGULAR = 1e-9;

    /**
     * Solves for the coefficients of rows that were gathered.
     *
     * @param columns of every row, more rows than columns
     * @param values of every row
     * @return the solution; empty where the columns cannot be told apart
     */
    public static Optional<LeastSquares> of(List<double[]> columns, List<Double> values) {
        return of(
                columns.toArray(double[][]::new),
                values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /**
     * Solves for the coefficients.
     *
     * @param columns of every row, more rows than columns
     * @param values of every row
     * @return the solution; empty where the columns cannot be told apart
     */
    public static Optional<LeastSquares> of(double[][] columns, double[] values) {
        RealMatrix rows = new Array2DRowRealMatrix(columns);
        int count = rows.getColumnDimension();
        double[] scales = new double[count];
        for (int column = 0; column < count; column++) {
            scales[column] = rows.getColumnVector(column).getNorm();
            if (!(scales[column] > 0.0)) {
                return Optional.empty();
            }
            rows.setColumnVector(column, rows.getColumnVector(column).mapDivide(scales[column]));
        }
        DecompositionSolver solver = new QRDecomposition(rows, SINGULAR).getSolver();
        if (!solver.isNonSingular()) {
            return Optional.empty();
        }
        double[] solution = solver.solve(new ArrayRealVector(values)).toArray();
        double[] residuals = rows.operate(solution);
        RealMatrix inverse =
                new LUDecomposition(rows.transpose().multiply(rows)).getSolver().getInverse();
        double factor = columns.length / (double) (columns.length - count);
        double[] errors = new double[count];
        for (int column = 0; column < count; column++) {
            double sum = 0.0;
            for (int row = 0; row < columns.length; row++) {
                double weight = 0.0;
                for (int other = 0; other < count; other++) {
                    weight += inverse.getEntry(column, other) * rows.getEntry(row, other);
                }
                double part = weight * (values[row] - residuals[row]);
                sum += part * part;
            }
            errors[column] = Math.sqrt(factor * sum) / scales[column];
            solution[column] /= scales[column];
        }
        return Optional.of(new LeastSquares(solution, errors));
    }
}
