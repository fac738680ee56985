using System.Globalization;
using InspectLog.App.Bench;
using InspectLog.App.Forms;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Standing;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Reports;

/// <summary>What the form that closes an inspection says. Pure.</summary>
public static class Closing
{
    /// <summary>Checks that are neither done nor left out.</summary>
    public static IEnumerable<CheckLine> Missing(BenchScene scene) => scene.Sheet.Checks
        .Select(check => new CheckLine(check, Standings.Of(scene.Inspection, scene.Sheet, check), false))
        .Where(line => line.Progress.IsToDo);

    /// <summary>The entries that the form makes: reasons for checks left out, loose ends tied and waived, and the close
    /// itself where nothing is missing then and nothing came in since the page was shown.</summary>
    public static IReadOnlyList<EntryBody> Bodies(PostedForm form, BenchScene now)
    {
        List<EntryBody> settled = [.. Settled(form, now)];
        var isReady = settled.Count == Missing(now).Count() + now.Inspection.OpenLooseEnds.Count();
        return isReady && News(form, now) is null ? [.. settled, new InspectionClosed(now.Inspection.Number)] : settled;
    }

    /// <summary>What came in since the page was shown, in a sentence; null where nothing did. A form that does not say
    /// what it showed is not compared.</summary>
    public static string? News(PostedForm form, BenchScene now) =>
        ShownInspection.Read(form.Text("seen"))?.News(now.Inspection);

    /// <summary>Notes on the form what is still missing.</summary>
    public static void Refuse(PostedForm form, BenchScene scene)
    {
        foreach (var line in Missing(scene))
        {
            form.Refuse($"reason-{line.Check.Id}", $"{line.Check.Title}: do it, or say why it is left out.");
        }

        foreach (var end in scene.Inspection.OpenLooseEnds)
        {
            form.Refuse(Field("waive", end.Sequence), $"{end.What.Text}: put it right, or say why it stays.");
        }
    }

    private static IEnumerable<EntryBody> Settled(PostedForm form, BenchScene scene)
    {
        var number = scene.Inspection.Number;
        foreach (var line in Missing(scene))
        {
            if (form.Text($"reason-{line.Check.Id}") is { Length: > 0 } reason)
            {
                yield return new CheckLeftOut(number, line.Check.Id, reason);
            }
        }

        var together = form.All("tie-all").SelectMany(ends => ends.Split(' ')).ToHashSet();
        foreach (var end in scene.Inspection.OpenLooseEnds)
        {
            if (form.Ticked(Field("tie", end.Sequence)) || together.Contains(end.Sequence.ToString(CultureInfo.InvariantCulture)))
            {
                yield return new LooseEndTied(end.Sequence);
            }
            else if (form.Text(Field("waive", end.Sequence)) is { Length: > 0 } reason)
            {
                yield return new LooseEndWaived(end.Sequence, reason);
            }
        }
    }

    private static string Field(string what, long sequence) =>
        string.Create(CultureInfo.InvariantCulture, $"{what}-{sequence}");
}
