using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.Inspecting;
using InspectLog.Journal;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Record;
using System.Globalization;

namespace InspectLog.App.Garages;

/// <summary>Gathers what was found.</summary>
internal static class FindViewBuilder
{
    /// <summary>What is found by some words.</summary>
    /// <param name="garage">The garage.</param>
    /// <param name="sheets">The sheets its inspections were started with.</param>
    /// <param name="time">The clock.</param>
    /// <param name="words">The words as they were typed.</param>
    /// <param name="show">How many hits to show, as an address has it; anything that is no number shows the first.</param>
    public static FindView Build(Garage garage, SheetLibrary sheets, TimeProvider time, string words, string? show)
    {
        var asked = words.Trim();
        IReadOnlyList<SearchHit> found = asked.Length == 0 ? [] : [.. garage.Search(asked).Where(hit => garage.Entries(hit.VehicleId).Has(hit.Sequence))];
        var shown = found.Take(Math.Max(FindView.Step, Number(show))).ToList();
        var groups = shown.Index()
            .GroupBy(hit => hit.Item.VehicleId)
            .Select(hits => new FoundGroup(
                hits.First().Item.VehicleName, [.. hits.Select(hit => Entry(garage, sheets, time, asked, hit.Item, hit.Index + 1))]));
        return new(asked, [.. groups], shown.Count, found.Count, garage.Problems);
    }

    private static FoundEntry Entry(
        Garage garage, SheetLibrary sheets, TimeProvider time, string words, SearchHit hit, int number)
    {
        var vehicle = garage.FindVehicle(hit.VehicleId)!;
        var entry = garage.Entries(hit.VehicleId).At(hit.Sequence)!;
        return new(
            number,
            Marked(hit.Text, words),
            EntryAddress.Of(vehicle, sheets, entry).AsFound,
            TimeZoneInfo.ConvertTime(hit.Time, time.LocalTimeZone),
            Marked(By(garage, hit, entry.Body), words),
            hit.Mark is { } mark ? EntryMarkWords.Of(mark) : null);
    }

    // The program wrote the words down; a person said them.
    private static string By(Garage garage, SearchHit hit, EntryBody? body) => body is TranscriptMade { Recording: var recording }
        ? garage.Entries(hit.VehicleId).At(recording)?.Actor ?? hit.Actor
        : hit.Actor;

    private static IReadOnlyList<TextPiece> Marked(string text, string words) =>
        [.. MarkedText.Pieces(text, SearchedWords.In(text, words))];

    private static int Number(string? typed) =>
        int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
