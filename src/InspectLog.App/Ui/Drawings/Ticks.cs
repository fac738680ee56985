using System.Globalization;

namespace InspectLog.App.Ui.Drawings;

/// <summary>A marked place on an axis.</summary>
public readonly record struct Tick(double At, string Label);

/// <summary>Chooses round places to mark on an axis.</summary>
public static class Ticks
{
    private static readonly int[] MonthSteps = [1, 3, 6, 12, 24, 60, 120, 240, 600, 1200];

    /// <summary>Round numbers between two ends: steps of 1, 2 or 5 times a power of ten.</summary>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end, above <paramref name="from"/>.</param>
    /// <param name="most">The most ticks wanted, 1 or more.</param>
    /// <param name="label">Writes a number.</param>
    public static IReadOnlyList<Tick> Round(double from, double to, int most, Func<double, string> label)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10((to - from) / Math.Max(most, 1))));
        return new[] { 1.0, 2, 5, 10, 20 }
            .Select(times => Multiples(from, to, times * power))
            .First(numbers => numbers.Count <= Math.Max(most, 1))
            .ConvertAll(number => new Tick(number, label(number)));
    }

    /// <summary>First days of months or years between two days, counted in days.</summary>
    public static IReadOnlyList<Tick> Calendar(double from, double to, int most)
    {
        var first = new DateTime((long)(from * TimeSpan.TicksPerDay));
        var last = new DateTime((long)(to * TimeSpan.TicksPerDay));
        foreach (var step in MonthSteps)
        {
            var days = FirstDays(first, last, step).Take(most + 1).ToList();
            if (days.Count <= most)
            {
                var format = step < 12 ? "MMM yyyy" : "yyyy";
                return days.ConvertAll(day => new Tick(
                    (double)day.Ticks / TimeSpan.TicksPerDay, day.ToString(format, CultureInfo.InvariantCulture)));
            }
        }

        return [];
    }

    private static List<double> Multiples(double from, double to, double step)
    {
        var first = Math.Ceiling(from / step);
        var count = (int)(Math.Floor(to / step) - first) + 1;

        // Multiplied out and not added up, so that 0.3 is not 0.30000000000000004.
        return [.. Enumerable.Range(0, Math.Max(count, 0)).Select(i => (double)((decimal)(first + i) * (decimal)step))];
    }

    private static IEnumerable<DateTime> FirstDays(DateTime from, DateTime to, int months)
    {
        var number = (from.Year * 12) + from.Month - 1;
        for (var month = (number / months * months) + (number % months == 0 && from.Day == 1 ? 0 : months);
             month / 12 <= to.Year && new DateTime(month / 12, (month % 12) + 1, 1) <= to;
             month += months)
        {
            yield return new DateTime(month / 12, (month % 12) + 1, 1);
        }
    }
}
