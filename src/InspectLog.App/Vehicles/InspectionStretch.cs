using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>A stretch of a vehicle's inspections, newest first: all of many would be too much for one page. Pure.</summary>
/// <param name="Shown">The inspections of the stretch.</param>
/// <param name="IsNewest">Whether it begins with the newest of all.</param>
/// <param name="Older">How many older ones there are.</param>
public sealed record InspectionStretch(IReadOnlyList<InspectionState> Shown, bool IsNewest, int Older)
{
    /// <summary>Inspections of a stretch.</summary>
    public const int Length = 10;

    /// <summary>The stretch before an inspection.</summary>
    /// <param name="all">All inspections, oldest first.</param>
    /// <param name="before">Number of the inspection before which it ends, as an address has it; anything that is none
    /// stands for the newest.</param>
    public static InspectionStretch Of(IReadOnlyList<InspectionState> all, string? before)
    {
        var end = long.TryParse(before, NumberStyles.None, CultureInfo.InvariantCulture, out var given)
            ? all.Count(inspection => inspection.Number < given)
            : all.Count;
        end = end == 0 ? all.Count : end;
        var start = Math.Max(0, end - Length);
        return new([.. Enumerable.Range(start, end - start).Reverse().Select(at => all[at])], end == all.Count, start);
    }
}
