using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.State;

namespace InspectLog.App.Bench;

/// <summary>The form that puts right what was recorded.</summary>
/// <param name="Address">Base address of the inspection's pages.</param>
/// <param name="Sheet">The inspection's sheet.</param>
/// <param name="Kept">What is put right.</param>
/// <param name="At">Where the form stands: one of the constants here.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise. Fields: check, cylinder; for a reading value,
/// unit, leads, temperature, within; for a bracket goes, stops, unit; for an observation condition, absent; for an action
/// action; for a note, typed or spoken, text.</param>
/// <param name="Asked">What has to be answered before it is recorded; null where nothing has.</param>
public sealed record AmendView(
    string Address, CheckSheet Sheet, IKept Kept, string At, RefusedForm? Form = null, AskedNumber? Asked = null)
{
    /// <summary>Below the entry in Captured.</summary>
    public const string Captured = "captured";

    /// <summary>On the card of the open check.</summary>
    public const string Result = "result";

    /// <summary>On a page of its own.</summary>
    public const string OnPage = "page";

    /// <summary>Id of the form, and what the ids of its fields begin with.</summary>
    public string FormId => IdOf(At, Kept.Sequence);

    /// <summary>Id of the form for an entry.</summary>
    public static string IdOf(string at, long entry) => FormattableString.Invariant($"amend-{at}-{entry}");
}

/// <summary>The page with nothing on it but that form.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Amend">The form.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record AmendPageView(
    VehicleState Vehicle, InspectionState Inspection, AmendView Amend, IReadOnlyList<GarageProblem> Problems);
