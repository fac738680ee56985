namespace InspectLog.Photos.Likeness;

/// <summary>Solves small systems of linear equations.</summary>
internal static class LinearEquations
{
    /// <summary>Solves symmetric equations by elimination with the largest element first.</summary>
    /// <param name="equations">The upper triangle of the matrix, and the right side in the last column. Used up.</param>
    /// <returns>The solution; null where there is no single one.</returns>
    public static double[]? Solve(double[,] equations)
    {
        var count = equations.GetLength(0);
        for (var row = 1; row < count; row++)
            for (var column = 0; column < row; column++)
                equations[row, column] = equations[column, row];

        for (var step = 0; step < count; step++)
        {
            var largest = step;
            for (var row = step + 1; row < count; row++)
                if (Math.Abs(equations[row, step]) > Math.Abs(equations[largest, step]))
                    largest = row;
            if (!(Math.Abs(equations[largest, step]) > 1e-9))
                return null;
            for (var column = 0; column <= count; column++)
                (equations[step, column], equations[largest, column]) = (equations[largest, column], equations[step, column]);
            for (var row = 0; row < count; row++)
            {
                var factor = row == step ? 0 : equations[row, step] / equations[step, step];
                for (var column = step; column <= count; column++)
                    equations[row, column] -= factor * equations[step, column];
            }
        }

        var solution = new double[count];
        for (var row = 0; row < count; row++)
            solution[row] = equations[row, count] / equations[row, row];
        return solution;
    }
}
