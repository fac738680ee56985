using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Inspecting;
using InspectLog.Journal.State;
using InspectLog.Measuring;

namespace InspectLog.App.Vehicles;

/// <summary>What an inspection of a vehicle can be started with. Pure.</summary>
/// <param name="Sheets">The sheets that are for its engine; all of them while the number of cylinders is not known.</param>
/// <param name="Cylinders">Its number of cylinders; null while it is not known.</param>
/// <param name="Counts">The numbers of cylinders there are sheets for, in rising order.</param>
/// <param name="Last">The number its last inspection was started with; null where that is no help.</param>
public sealed record StartOffer(
    IReadOnlyList<CheckSheet> Sheets, int? Cylinders, IReadOnlyList<int> Counts, int? Last)
{
    public static StartOffer To(VehicleState vehicle, SheetLibrary sheets)
    {
        var cylinders = vehicle.Engine?.Cylinders;
        return new(
            [.. BuiltInSheets.All.Where(sheet => cylinders is not { } number || sheet.Fits(number))],
            cylinders,
            [.. BuiltInSheets.All.SelectMany(sheet => sheet.CylinderCounts).Distinct().Order()],
            vehicle.Inspections.LastOrDefault() is { } last ? sheets.Of(last)?.Cylinders : null);
    }

    /// <summary>Whether one press can start it without a word about the engine: the number of cylinders is known, or the
    /// last inspection had one.</summary>
    public bool IsReady => (Cylinders ?? Last) is not null;

    /// <summary>Why nothing is offered, and what to do; null where something is.</summary>
    public string? NothingFits => Sheets.Count > 0
        ? null
        : $"No check sheet is for an engine with {Cylinders} {(Cylinders == 1 ? "cylinder" : "cylinders")}: they are for {ListedNumbers.AllOf(Counts)}. "
            + "If the number is wrong, describe the vehicle again.";

    /// <summary>Reads the fields <c>sheet</c>, the first where it is left out, and, where the engine is not known,
    /// <c>cylinders</c>; and <c>coverage</c>, the sheet's own where it is left out. Gives the sheet for that engine; null with what is wrong noted on the form.</summary>
    public CheckSheet? Read(PostedForm form)
    {
        if (NothingFits is { } nothing)
        {
            form.Refuse("", nothing);
            return null;
        }

        var chosen = form.Text("sheet") is { Length: > 0 } id ? BuiltInSheets.Find(id) : Sheets[0];
        if (chosen is null)
        {
            form.Refuse("sheet", "Choose a sheet from the list.");
            return null;
        }

        var cylinders = Cylinders ?? form.Whole("cylinders", AskForCylinders);
        if (cylinders is null && form.Text("cylinders").Length == 0)
        {
            form.Refuse("cylinders", AskForCylinders);
        }
        else if (cylinders is { } number && !chosen.Fits(number))
        {
            form.Refuse(
                Cylinders is null ? "cylinders" : "sheet",
                $"The sheet {chosen.Title} is for {ListedNumbers.AllOf(chosen.CylinderCounts)} cylinders, not for {number}.");
        }

        var evaluation = EvaluationOf(form, chosen);
        return form.IsValid ? chosen.For(cylinders!.Value) with { Evaluation = evaluation } : null;
    }

    /// <summary>What the expanded uncertainty may be asked to cover: the value a form sends, in percent, with its words. As
    /// the sheet has it comes first.</summary>
    public IReadOnlyList<(string Value, string Text)> Coverages =>
    [
        ("", Sheets.Select(sheet => sheet.Evaluation).Distinct().ToList() is [var one] ? $"{one.CoverageText()} (as the sheet has it)" : "as the sheet has it"),
        .. CommonCoverages.Select(percent => (percent, $"{percent} %")),
    ];

    private static readonly IReadOnlyList<string> CommonCoverages = ["95", "95.45", "99"];

    private static Evaluation EvaluationOf(PostedForm form, CheckSheet sheet)
    {
        var typed = form.Text("coverage");
        if (typed.Length > 0 && !CommonCoverages.Contains(typed))
        {
            form.Refuse("coverage", "Choose what ± covers from the list.");
        }

        return form.IsValid && typed.Length > 0
            ? Evaluation.Covering(double.Parse(typed, CultureInfo.InvariantCulture))
            : sheet.Evaluation;
    }

    private const string AskForCylinders = "Choose how many cylinders the engine has.";
}
