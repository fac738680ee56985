using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;

namespace InspectLog.Archives.Making;

/// <summary>Which entries a profile withholds. Pure.</summary>
public static class Withholding
{
    /// <summary>Sequences of the entries whose bodies are not given.</summary>
    /// <param name="entries">The journal.</param>
    /// <param name="vehicle">What it says as a whole.</param>
    /// <param name="profile">The profile.</param>
    public static IReadOnlySet<long> Of(IReadOnlyList<JournalEntry> entries, VehicleState vehicle, ArchiveProfile profile)
    {
        var leftOut = profile.WithholdsLeftOutOfReport ? LeftOut(vehicle) : [];
        var withheld = new HashSet<long>();
        foreach (var entry in entries)
        {
            // What is said of what was said of a photo, as why its marks were withdrawn, goes with it as well.
            if ((profile.WithholdsPrivateFacts && entry.Kind == PrivateFacts)
                || leftOut.Contains(entry.Sequence)
                || (AboutCapture.Of(entry.Body) is { } about && (leftOut.Contains(about) || withheld.Contains(about))))
            {
                withheld.Add(entry.Sequence);
            }
        }

        return withheld;
    }

    // By its kind, so that those of a later version are withheld as well.
    private const string PrivateFacts = "private-facts";

    private static HashSet<long> LeftOut(VehicleState vehicle) =>
    [
        .. vehicle.Inspections
            .SelectMany(inspection => inspection.Everything.OfType<Capture>())
            .Where(capture => capture.History.IsLeftOutOfReport)
            .Select(capture => capture.Sequence),
    ];
}
