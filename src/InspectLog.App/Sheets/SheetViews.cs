using InspectLog.Checks;
using InspectLog.Journal;

namespace InspectLog.App.Sheets;

/// <summary>All sheets.</summary>
public sealed record SheetsView(IReadOnlyList<CheckSheet> Sheets, IReadOnlyList<GarageProblem> Problems);

/// <summary>One sheet, whole.</summary>
public sealed record SheetView(CheckSheet Sheet, IReadOnlyList<GarageProblem> Problems);
