package org.copperbook.calc.winding;

/** Gaussian elimination with row exchange, for the few dozen unknowns of a winding's network. */
final class LinearSystem {
    private LinearSystem() {
    }

    /** Solves a square system given with its right side as the last column; the matrix is used up. */
    static double[] solve(double[][] matrix) {
        int n = matrix.length;
        for (int column = 0; column < n; column++) {
            int pivot = column;
            for (int r = column + 1; r < n; r++) {
                if (Math.abs(matrix[r][column]) > Math.abs(matrix[pivot][column])) {
                    pivot = r;
                }
            }
            double[] top = matrix[pivot];
            matrix[pivot] = matrix[column];
            matrix[column] = top;
            for (int r = column + 1; r < n; r++) {
                double factor = matrix[r][column] / top[column];
                for (int c = column; factor != 0 && c <= n; c++) {
                    matrix[r][c] -= factor * top[c];
                }
            }
        }
        double[] solution = new double[n];
        for (int r = n - 1; r >= 0; r--) {
            double sum = matrix[r][n];
            for (int c = r + 1; c < n; c++) {
                sum -= matrix[r][c] * solution[c];
            }
            solution[r] = sum / matrix[r][r];
        }
        return solution;
    }
}
