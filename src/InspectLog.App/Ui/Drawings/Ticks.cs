using System.Globalization;

namespace InspectLog.App.Ui.Drawings;

/// <summary>A marked place on an axis.</summary>
public readonly record struct Tick(double At, string Label);

/// <summary>Chooses round places to mark on an axis.</summary>
public static class Ticks
{
    /// <summary>The most steps from nought that doubles tell apart.</summary>
    private const double MostSteps = 1L << 53;

    /// <summary>Sizes between which a step is multiplied out in decimal.</summary>
    private const double SmallestInDecimal = 1e-15;

    private const double LargestInDecimal = 1e20;

    private static readonly int[] MonthSteps = [1, 3, 6, 12, 24, 60, 120, 240, 600, 1200];

    /// <summary>Round numbers between two ends: steps of 1, 2 or 5 times a power of ten. None where the ends are too
    /// close together for their size to have any.</summary>
    /// <param name="from">Lower end.</param>
    /// <param name="to">Upper end, above <paramref name="from"/>.</param>
    /// <param name="most">The most ticks wanted, 1 or more.</param>
    /// <param name="label">Writes a number.</param>
    public static IReadOnlyList<Tick> Round(double from, double to, int most, Func<double, string> label)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10((to - from) / Math.Max(most, 1))));
        return (new[] { 1.0, 2, 5, 10, 20 }
            .Select(times => Multiples(from, to, times * power))
            .FirstOrDefault(numbers => numbers.Count <= Math.Max(most, 1)) ?? [])
            .ConvertAll(number => new Tick(number, label(number)));
    }

    /// <summary>First days of months or years between two days, counted in days.</summary>
    public static IReadOnlyList<Tick> Calendar(double from, double to, int most)
    {
        var (first, last) = (DayOf(from), DayOf(to));
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

    /// <summary>A day of the calendar counted in days; the first or last there is where it lies beyond them.</summary>
    public static DateTime DayOf(double days) => new(
        (long)(Math.Clamp(days, 0, DateTime.MaxValue.Ticks / TimeSpan.TicksPerDay) * TimeSpan.TicksPerDay));

    private static List<double> Multiples(double from, double to, double step)
    {
        var (first, last) = (Math.Ceiling(from / step), Math.Floor(to / step));
        if (!double.IsFinite(step) || !(Math.Abs(first) < MostSteps && Math.Abs(last) < MostSteps))
        {
            return [];
        }

        return [.. Enumerable.Range(0, (int)Math.Clamp(last - first + 1, 0, int.MaxValue)).Select(i => Multiple(first + i, step))];
    }

    /// <summary>Multiplied out and not added up, in decimal where that holds it, so that 0.3 is not
    /// 0.30000000000000004.</summary>
    private static double Multiple(double times, double step) =>
        step is > SmallestInDecimal and < LargestInDecimal && Math.Abs(times * step) < LargestInDecimal
            ? (double)((decimal)times * (decimal)step)
            : times * step;

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
