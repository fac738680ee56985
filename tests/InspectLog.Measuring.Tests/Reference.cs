using System.Globalization;

namespace InspectLog.Measuring.Tests;

/// <summary>Figures worked out apart from the program: TestData/reference, made by make_reference.py there.</summary>
internal static class Reference
{
    private const int Shown = 5;

    /// <summary>The cases of a file, each as its fields by their order, without the heading.</summary>
    internal static IEnumerable<string> Lines(string name) =>
        File.ReadLines(Path.Combine(AppContext.BaseDirectory, "TestData", "reference", name)).Skip(1);

    internal static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    internal static double? Maybe(string text) => text.Length > 0 ? Number(text) : null;

    internal static double[] Numbers(string text, char between = ';') => [.. text.Split(between).Select(Number)];

    internal static Limits Limits(string lower, string upper) => Measuring.Limits.Of(Maybe(lower), Maybe(upper));

    /// <summary>Whether two figures differ by no more than a share of the expected one, or of what it is made of.</summary>
    internal static bool Near(double expected, double? actual, double share, double scale = 0) =>
        actual is { } found && Math.Abs(found - expected) <= share * Math.Max(Math.Abs(expected), scale);

    /// <summary>Compares the cases of a file, or those chosen. What is wrong with a case comes back from it, or null.
    /// </summary>
    internal static void AllAgree(
        string name, int cases, Func<string[], string?> compare, Func<string[], bool>? chosen = null)
    {
        var (count, failures) = (0, new List<string>());
        foreach (var line in Lines(name).Where(line => chosen?.Invoke(line.Split(',')) ?? true))
        {
            count++;
            if (Wrong(line, compare) is { } wrong)
            {
                failures.Add($"{wrong}: {line}");
            }
        }

        Assert.Equal(cases, count);
        Assert.True(
            failures.Count == 0,
            $"{failures.Count} of {count} cases of {name} fail; the first:\n{string.Join('\n', failures.Take(Shown))}");
    }

    private static string? Wrong(string line, Func<string[], string?> compare)
    {
        try
        {
            return compare(line.Split(','));
        }
        catch (ArgumentException problem)
        {
            return $"refused ({problem.Message})";
        }
    }
}
