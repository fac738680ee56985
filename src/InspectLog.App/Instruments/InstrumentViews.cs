using InspectLog.App.Forms;
using InspectLog.Journal;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>The workshop's instruments.</summary>
/// <param name="Own">Instruments the workshop has entered.</param>
/// <param name="Assumed">Instruments assumed until it does.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise. Fields: name, kind, accuracy, resolution,
/// unit.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record InstrumentsView(
    IReadOnlyList<Instrument> Own,
    IReadOnlyList<Instrument> Assumed,
    RefusedForm? Form,
    IReadOnlyList<GarageProblem> Problems)
{
    /// <summary>The day it is, for what is overdue.</summary>
    public DateOnly? Today { get; init; }
}

/// <summary>An instrument that is being changed.</summary>
/// <param name="Instrument">The instrument as it is on file.</param>
/// <param name="Form">The form as typed when it was refused; null otherwise.</param>
/// <param name="Problems">Trouble with the garage.</param>
public sealed record InstrumentView(Instrument Instrument, RefusedForm? Form, IReadOnlyList<GarageProblem> Problems);
