using InspectLog.Journal.Entries;
using System.Globalization;

namespace InspectLog.App.Bench;

/// <summary>How the press that was just answered is taken back in one press, where a press alone did it: an end ticked off, a
/// finding dropped.</summary>
/// <param name="Action">Address of the form, below that of the inspection.</param>
/// <param name="Ends">The loose ends the form names; none for a finding.</param>
public sealed record PressUndo(string Action, IReadOnlyList<long> Ends)
{
    /// <summary>Address that opens loose ends again.</summary>
    public const string Untie = "loose-ends/untie";

    /// <summary>The way back from what was recorded; null where there is none but to withdraw it where it stands. Pure.
    /// </summary>
    public static PressUndo? Of(IReadOnlyList<EntryBody> recorded)
    {
        var ends = recorded.OfType<LooseEndTied>().Where(tied => tied.Record is null).Select(tied => tied.LooseEnd).ToList();
        var dropped = recorded.OfType<FindingDropped>().ToList();
        return recorded.Count == 0 ? null
            : ends.Count == recorded.Count ? new(Untie, ends)
            : dropped.Count == recorded.Count ? new(Reopen(dropped[0].Finding), [])
            : null;
    }

    /// <summary>Address that lets a finding wait again.</summary>
    public static string Reopen(FindingReference finding) =>
        string.Create(CultureInfo.InvariantCulture, $"findings/{finding.Recording}/{finding.Index}/reopen");
}
