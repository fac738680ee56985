using InspectLog.App.Ui;
using InspectLog.Journal.State;
using System.Globalization;

namespace InspectLog.App.Vehicles;

/// <summary>Why an entry no longer counts as it stands, in words.</summary>
public static class EntryMarkWords
{
    /// <summary>"Withdrawn on 25 November 2026, 14:02, by Tess Okafor: misread."</summary>
    public static string Of(EntryMark mark) => mark switch
    {
        WithdrawnSince withdrawn => $"Withdrawn {Since(mark)}: {withdrawn.Reason.TrimEnd('.')}.",
        PutRightSince right => string.Create(CultureInfo.InvariantCulture, $"Put right {Since(mark)}, with entry {right.Entry}."),
        UndoneSince undone => string.Create(CultureInfo.InvariantCulture, $"Undone {Since(mark)}, with entry {undone.Entry}."),
        _ => "It no longer counts.",
    };

    /// <summary>"Withdrawn on 25 November 2026, 14:02, by Tess Okafor: misread. Undone on 26 November 2026, 09:10, by Tess
    /// Okafor, with entry 12."</summary>
    public static string Of(Restoration undone)
    {
        var withdrawn = undone.Withdrawn;
        return $"{Of(new WithdrawnSince(withdrawn.Reason, withdrawn.At, withdrawn.By))} {Of(new UndoneSince(undone.Entry, undone.At, undone.By))}";
    }

    private static string Since(EntryMark mark) => $"on {Times.DateAndClock(mark.At)}, by {mark.By}";
}
