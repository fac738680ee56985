using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Journal;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Addenda;

/// <summary>The page that adds to a closed inspection.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Inspection">The inspection.</param>
/// <param name="Measured">Where a reading can belong: the measured checks with their places.</param>
/// <param name="Anywhere">Where a photo can belong.</param>
/// <param name="Checks">What a note can be about: a check as a whole, as notes have no place.</param>
/// <param name="Instruments">The instruments a reading can be taken with.</param>
/// <param name="Form">The form that was refused; null when none was.</param>
/// <param name="Asked">What is asked about the number typed; null for nothing.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record AddendumView(
    VehicleState Vehicle,
    InspectionState Inspection,
    IReadOnlyList<(string Value, string Text)> Measured,
    IReadOnlyList<(string Value, string Text)> Anywhere,
    IReadOnlyList<(string Value, string Text)> Checks,
    IReadOnlyList<Instrument> Instruments,
    RefusedForm? Form,
    AskedNumber? Asked,
    IReadOnlyList<GarageProblem> Problems);
