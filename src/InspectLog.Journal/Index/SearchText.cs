using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Index;

/// <summary>What of an entry can be searched for.</summary>
internal static class SearchText
{
    /// <summary>The text; null where there is nothing to find. Private facts are left out on purpose: they can be
    /// erased from the journal, and must not live on in the index.</summary>
    public static string? Of(EntryBody? body) => body switch
    {
        VehicleAdded v => Join(v.Name, v.Description),
        VehicleDescribed v => Join(v.Name, v.Description),
        WearPartAdded p => p.Name,
        TranscriptMade { Text.Length: > 0 } t => t.Text,
        NoteWritten n => n.Text,
        ReadingDecided r => At(r.Check, r.Cylinder, r.AsGiven),
        ObservationMade o => At(o.Check, o.Cylinder, o.Negated ? "not " + o.Condition : o.Condition),
        ActionDone a => At(a.Check, a.Cylinder, a.Action),
        CheckLeftOut c => At(c.Check, null, c.Reason),
        LooseEndOpened l => l.Text,
        LooseEndWaived l => l.Reason,
        EntryWithdrawn w => w.Reason,
        _ => null,
    };

    private static string Join(string name, string description) =>
        description.Length == 0 ? name : $"{name}: {description}";

    private static string At(string check, int? cylinder, string text) =>
        cylinder is null ? $"{check}: {text}" : $"{check}, cylinder {cylinder}: {text}";
}
