using InspectLog.Checks;
using InspectLog.Journal;

namespace InspectLog.App.Sheets;

/// <summary>All sheets.</summary>
internal sealed record SheetsView(IReadOnlyList<CheckSheet> Sheets, IReadOnlyList<GarageProblem> Problems);

/// <summary>One sheet, whole.</summary>
internal sealed record SheetView(CheckSheet Sheet, IReadOnlyList<GarageProblem> Problems);
