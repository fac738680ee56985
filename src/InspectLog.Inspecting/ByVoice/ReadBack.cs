using InspectLog.Checks;
using InspectLog.Inspecting.Proposals;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;
using System.Globalization;

namespace InspectLog.Inspecting.ByVoice;

/// <summary>Answers to what was spoken, in sentences that can be read at arm's length and said aloud. Pure.</summary>
public static class ReadBack
{
    /// <summary>What was understood: "Coil secondary: 10.6 kΩ, would be a pass."</summary>
    public static string Understood(IReadOnlyList<ProposalCard> cards) => Sentences(cards.Select(Understood));

    /// <summary>One finding with the decision it would get, and why it is doubtful.</summary>
    public static string Understood(ProposalCard card)
    {
        var decision = card.Preview is { } preview ? $", would be a {preview.Decision.Words()}" : "";
        return $"{Said(card)}{decision}.{Why(card)}";
    }

    /// <summary>What was confirmed, and what stays open and why.</summary>
    /// <param name="sure">The cards that were confirmed.</param>
    /// <param name="made">The entries that did it.</param>
    /// <param name="left">The cards that stay open.</param>
    public static string Confirmed(
        IReadOnlyList<ProposalCard> sure, IReadOnlyList<EntryBody> made, IReadOnlyList<ProposalCard> left)
    {
        var ends = made.OfType<LooseEndOpened>().Select(end => $"Loose end: {end.Text}.");
        return Sentences(
        [
            .. sure.Select((card, i) => $"{(i == 0 ? "Confirmed: " : "")}{Said(card)}{Decided(card, made)}."),
            .. ends,
            .. left.Select(card => $"Left open: {Said(card)}.{Why(card)}"),
        ]);
    }

    /// <summary>What was dropped.</summary>
    public static string Dropped(IReadOnlyList<ProposalCard> cards) =>
        Sentences(cards.Select((card, i) => $"{(i == 0 ? "Dropped: " : "")}{Said(card)}."));

    /// <summary>Which records were withdrawn.</summary>
    public static string TakenBack(BenchScene scene, IReadOnlyList<long> records) =>
        Sentences(records.Select((record, i) => $"{(i == 0 ? "Taken back: " : "")}{Record(scene, record)}."));

    /// <summary>Which check is open now; the screen has its cautions.</summary>
    public static string Opened(Check check) =>
        $"Next: {check.Title}.{(check.Cautions.Count > 0 ? " Mind the cautions on the screen." : "")}";

    private static string Said(ProposalCard card) => $"{card.Title}: {card.Text}";

    private static string Why(ProposalCard card) =>
        (card.Doubt is { } doubt ? $" Doubtful: {doubt}."
        : card.Check is null ? " This sheet has no such check."
        : card.NotShown is { } notShown ? $" {notShown}"
        : "")
        + (card.WhichPlace is { } which ? $" {which}" : "");

    private static string Decided(ProposalCard card, IReadOnlyList<EntryBody> made) =>
        made.OfType<ReadingDecided>().FirstOrDefault(reading => reading.From.Contains(card.First.Reference))
            is { Conformity.Decision: var decision }
            ? $", {decision.Words()}"
            : "";

    private static string Record(BenchScene scene, long record)
    {
        var (inspection, sheet) = (scene.Inspection, scene.Sheet);
        if (inspection.Readings.Find(one => one.Sequence == record)?.Body is { } reading)
        {
            var value = sheet.Find(reading.Check) is { } check ? RecordWords.Value(reading, check) : reading.AsGiven;
            return $"{RecordWords.Heading(sheet, reading.Check, reading.Cylinder)}: {value}";
        }

        if (inspection.Observations.Find(one => one.Sequence == record)?.Body is { } seen)
        {
            return $"{RecordWords.Heading(sheet, seen.Check, seen.Cylinder)}: {RecordWords.Seen(seen)}";
        }

        return inspection.Actions.Find(one => one.Sequence == record)?.Body is { } done
            ? $"{RecordWords.Heading(sheet, done.Check, done.Cylinder)}: {done.Action}"
            : record.ToString(CultureInfo.InvariantCulture);
    }

    private static string Sentences(IEnumerable<string> sentences) => string.Join(' ', sentences);
}
