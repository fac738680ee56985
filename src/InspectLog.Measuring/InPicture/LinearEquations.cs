namespace InspectLog.Measuring;

/// <summary>A few linear equations, solved by Gauss's elimination with the largest element of the column as pivot.</summary>
internal static class LinearEquations
{
    // Elements are about 1; what is left of one that is no more than this is rounding.
    private const double Nothing = 1e-12;

    /// <summary>The solution; null where there is none, or more than one.</summary>
    /// <param name="rows">One equation a row: the factors of the unknowns, and what they add up to. It is changed.</param>
    public static double[]? Solve(double[,] rows)
    {
        var count = rows.GetLength(0);
        for (var column = 0; column < count; column++)
        {
            BringLargestUp(rows, column);
            if (!(Math.Abs(rows[column, column]) > Nothing))
            {
                return null;
            }

            for (var row = column + 1; row < count; row++)
            {
                Subtract(rows, row, column, rows[row, column] / rows[column, column]);
            }
        }

        var solution = new double[count];
        for (var row = count - 1; row >= 0; row--)
        {
            var left = rows[row, count];
            for (var column = row + 1; column < count; column++)
            {
                left -= rows[row, column] * solution[column];
            }

            solution[row] = left / rows[row, row];
        }

        return solution;
    }

    private static void BringLargestUp(double[,] rows, int column)
    {
        var largest = column;
        for (var row = column + 1; row < rows.GetLength(0); row++)
        {
            largest = Math.Abs(rows[row, column]) > Math.Abs(rows[largest, column]) ? row : largest;
        }

        for (var at = 0; at < rows.GetLength(1); at++)
        {
            (rows[column, at], rows[largest, at]) = (rows[largest, at], rows[column, at]);
        }
    }

    private static void Subtract(double[,] rows, int from, int pivot, double times)
    {
        for (var at = pivot; at < rows.GetLength(1); at++)
        {
            rows[from, at] -= times * rows[pivot, at];
        }
    }
}
