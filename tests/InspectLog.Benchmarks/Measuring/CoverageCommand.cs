using System.Globalization;
using InspectLog.Measuring;

namespace InspectLog.Benchmarks.Measuring;

/// <summary>How often value ± U holds the true value, by simulation: for few and for many readings, and for scatter far
/// below and far above what the instrument adds. The width is set against Monte Carlo draws of JCGM 101:2008 from the same
/// readings, and against the classical evaluation, whose coverage is shown as well.</summary>
internal static class CoverageCommand
{
    private const int Seed = 20_260_901;
    private const int UsualTrials = 100_000;

    // Trials of each cell whose width is compared; each takes many draws.
    private const int Compared = 400;

    private static readonly int[] Counts = [1, 2, 3, 5, 10];
    private static readonly double[] Ratios = [0.1, 0.3, 1, 3, 10];

    /// <summary>Runs it.</summary>
    /// <param name="arguments">How many trials a cell; 100,000 where none is said.</param>
    public static int Run(string[] arguments)
    {
        var trials = arguments is [var given, ..] ? int.Parse(given, CultureInfo.InvariantCulture) : UsualTrials;
        Console.WriteLine("scatter/instrument: standard deviation of one reading against the instrument's standard uncertainty");
        Console.WriteLine("readings  scatter/instr.  covered %  classical %  width / JCGM 101  width / classical");
        var least = 1.0;
        foreach (var count in Counts)
        {
            foreach (var ratio in Ratios)
            {
                var cell = CoverageCell.Simulate(new Random(Seed), count, ratio, trials, Math.Min(trials, Compared));
                least = Math.Min(least, cell.Covered);
                Console.WriteLine(string.Create(
                    CultureInfo.InvariantCulture,
                    $"{count,8}  {ratio,14}  {100 * cell.Covered,9:0.00}  {100 * cell.ClassicalCovered,11:0.00}  {cell.AgainstDraws,16:0.000}  {cell.AgainstClassical,17:0.000}"));
            }
        }

        var error = Math.Sqrt(Coverage.Probability * (1 - Coverage.Probability) / trials);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"stated {100 * Coverage.Probability:0.00} %, least {100 * least:0.00} %, standard error of a cell {100 * error:0.00} %"));
        Console.WriteLine("One reading: with a scatter known from ten degrees of freedom. Without one the program says that it is not known.");
        return 0;
    }
}
