using System.Globalization;
using InspectLog.App.Ui;
using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.App.Wear;

/// <summary>Parts that wear, in words.</summary>
public static class WearWords
{
    /// <summary>"24 months or 20 000 km, whichever comes first".</summary>
    public static string Interval(WearInterval interval) => interval switch
    {
        { Months: { } months, Distance: { } distance } =>
            $"{Months(months)} or {Times.Odometer(distance, interval.DistanceUnit)}, whichever comes first",
        { Months: { } months } => Months(months),
        { Distance: { } distance } => Times.Odometer(distance, interval.DistanceUnit),
        _ => "no interval",
    };

    /// <summary>"1 March 2026, at 80 150 km".</summary>
    public static string Fitted(Fitting fitting) => fitting.Odometer is { } odometer
        ? $"{Times.Date(fitting.On)}, at {Times.Odometer(odometer, fitting.OdometerUnit)}"
        : Times.Date(fitting.On);

    /// <summary>When it is due, or that it is, in a sentence: "Due on 1 March 2028 or at 100 150 km (11 738 km to go)."</summary>
    public static string Due(WearDue due) => due switch
    {
        { IsDue: true } => $"Due {string.Join(" and ", Reached(due))}.",
        { On: null, At: null } => "Not known when it is due.",
        _ => $"Due {string.Join(" or ", Ahead(due))}.",
    };

    /// <summary>What an inspection recorded as replaced: "Recorded as replaced on 1 March 2026."</summary>
    public static string Replaced(Replacement replaced) => $"Recorded as replaced on {Times.Date(replaced.On)}.";

    /// <summary>That what was recorded as replaced does not count: "No new one was fitted, as noted on 1 March 2026: a used
    /// one was put in". Null where nobody said so of the one that is fitted.</summary>
    public static string? NotRenewed(WearPart part) =>
        part.NotRenewed is { } said && Times.DayOf(said.Time) >= part.Fitted.On
            ? $"No new one was fitted, as noted on {Times.Date(Times.DayOf(said.Time))}: {said.Body.Reason}"
            : null;

    /// <summary>A due part in a line for lists of what needs attention; null when it is not due.</summary>
    public static string? Attention(WearPart part, WearDue due) =>
        due.IsDue ? $"{part.Name}: due {string.Join(" and ", Reached(due))}" : null;

    private static IEnumerable<string> Reached(WearDue due)
    {
        if (due is { DaysLeft: <= 0, On: { } on })
        {
            yield return $"since {Times.Date(on)}";
        }

        if (due is { DistanceLeft: <= 0 and var left, At: { } at })
        {
            yield return left == 0
                ? $"at {Times.Odometer(at, due.Unit.Symbol)}, which is now"
                : $"for {Times.Odometer(Math.Ceiling(-left), due.Unit.Symbol)}";
        }
    }

    private static IEnumerable<string> Ahead(WearDue due)
    {
        if (due.On is { } on)
        {
            yield return $"on {Times.Date(on)}";
        }

        if (due.At is { } at)
        {
            var left = due.DistanceLeft is { } distance ? $" ({Times.Odometer(Math.Floor(distance), due.Unit.Symbol)} to go)" : "";
            yield return $"at {Times.Odometer(at, due.Unit.Symbol)}{left}";
        }
    }

    private static string Months(int months) =>
        string.Create(CultureInfo.InvariantCulture, $"{months} {(months == 1 ? "month" : "months")}");
}
