using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>Tells whether an entry is still as it was when a form about it was opened. Pure.</summary>
public static class SeenEntry
{
    /// <summary>How the entry stands, for the field <c>seen</c>.</summary>
    public static string Of(IKept kept) => string.Create(
        CultureInfo.InvariantCulture,
        $"{kept.History.LastChange?.ChangedBy ?? kept.Sequence}{(kept.History.Withdrawn is { } withdrawn ? $"-{withdrawn.At.Ticks}" : "")}");

    /// <summary>What to say where somebody changed or withdrew it since the form was opened; null where nobody did.</summary>
    public static string? News(PostedForm form, IKept now) => !form.Has("seen") || form.Text("seen") == Of(now) ? null
        : now.History.Withdrawn is { } withdrawn ? $"{withdrawn.By} withdrew this meanwhile: {withdrawn.Reason}. Save again if it is to count all the same."
        : now.History.LastChange is { } change ? $"{change.By} put this right meanwhile. Look at what it says now, and save again if yours is to stand."
        : "It was withdrawn when this was opened, and counts again. Look at it, and save again if yours is to stand.";
}
