using InspectLog.Journal.Entries;
using InspectLog.Journal.Index;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>What the search finds, and in which order.</summary>
public sealed class SearchTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("kilohms", 1)]
    [InlineData("KILOHMS nine", 1)]
    [InlineData("kilo", 1)] // the beginning of a word is enough
    [InlineData("ohms", 0)] // its end is not
    [InlineData("nine walrus", 0)] // each word must occur
    [InlineData("Hauptstrasse", 1)]
    [InlineData("HAUPTSTRAẞE", 1)]
    [InlineData("hauptstraße", 1)]
    [InlineData("creme brulee", 1)]
    [InlineData("Crème Brûlée!", 1)]
    [InlineData("burnt", 2)]
    [InlineData("not burnt", 1)]
    [InlineData("plug-condition", 1)]
    [InlineData("cylinder 3", 3)]
    [InlineData("marigold", 1)]
    [InlineData("saloon", 2)]
    [InlineData("timing light", 1)]
    [InlineData("stand", 1)]
    [InlineData("9k", 1)]
    [InlineData("9 k", 1)]
    [InlineData("2 teasel", 0)] // a whole number is no beginning of another
    [InlineData("Okafor", 12)] // who made an entry finds it
    [InlineData("", 0)]
    [InlineData("  ?! ", 0)]
    [InlineData("% _ @0 ' \" $.x", 0)]
    [InlineData("Lindqvist", 0)] // private facts are not searched
    [InlineData("ZZ-000-42", 0)]
    public void Search_finds_entries_that_hold_every_word(string words, int hits)
    {
        using var garage = FilledGarage.In(_folder);

        Assert.Equal(hits, garage.Search(words).Count);
    }

    [Fact]
    public void Hit_says_where_it_stands()
    {
        using var garage = FilledGarage.In(_folder);

        var hit = Assert.Single(garage.Search("nine kilohms"));

        Assert.Equal(("teasel", "Teasel"), (hit.VehicleId, hit.VehicleName));
        Assert.Equal("Number three, nine kilohms.", hit.Text);
        var entry = garage.Entries("teasel")[(int)hit.Sequence - 1];
        Assert.Equal(entry.Time, hit.Time);
        var recording = Assert.IsType<TranscriptMade>(entry.Body).Recording;
        Assert.NotNull(garage.FindVehicle("teasel")!.Inspection(hit.Inspection!.Value)!.FindVoiceNote(recording));
    }

    [Fact]
    public void Hits_are_all_there_with_the_newest_first()
    {
        var clock = Some.Clock();
        using var garage = Garage.Open(_folder.Path, clock);
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        for (var n = 0; n < 120; n++)
        {
            clock.Advance(TimeSpan.FromSeconds(n % 2)); // two entries may have the same time
            garage.Note(id, $"note {n}");
        }

        var hits = garage.Search("note");

        Assert.Equal(Enumerable.Range(0, 120).Reverse().Select(n => $"note {n}"), hits.Select(hit => hit.Text));
    }

    [Fact]
    public void Word_without_end_can_be_kept_and_found()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Note(id, new string('x', 100_000));

        Assert.Single(garage.Search(new string('x', 2000)));
        Assert.Empty(garage.Problems);
    }
}
