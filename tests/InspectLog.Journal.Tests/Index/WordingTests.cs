using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Index;

/// <summary>Whoever opens the garage words its entries for search.</summary>
public sealed class WordingTests : IDisposable
{
    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Entry_is_found_by_what_the_wording_shows_and_by_what_else_it_names()
    {
        using var garage = Open(new Worded("1"));
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Note(id, "a walrus");

        Assert.Equal("Entry 2 said (a walrus)", Assert.Single(garage.Search("said walrus")).Text);
        Assert.Single(garage.Search("tusks"));
    }

    [Fact]
    public void Index_of_another_wording_is_made_again_and_of_the_same_is_used()
    {
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.Note(garage.AddVehicle(Some.Technician, Some.Vehicle()), "a walrus");
        }

        Assert.Equal([OpeningStep.Reading, OpeningStep.MakingLists], StepsOfOpening(new Worded("1")));
        Assert.Equal([OpeningStep.Reading], StepsOfOpening(new Worded("1")));
        Assert.Equal([OpeningStep.Reading, OpeningStep.MakingLists], StepsOfOpening(new Worded("2")));
        using var again = Open(new Worded("2"));
        Assert.Single(again.Search("tusks"));
    }

    [Fact]
    public void Private_facts_stay_out_whatever_the_wording_would_say()
    {
        using var garage = Open(new Worded("1"));
        garage.AddVehicle(Some.Technician, Some.Vehicle(), new PrivateFactsNoted("Ana Lindqvist", "", "ZZ-000-42"));

        Assert.Empty(garage.Search("Lindqvist"));
        Assert.Empty(garage.Search("ZZ-000-42"));
        Assert.DoesNotContain(garage.Search("tusks"), hit => hit.Sequence == 2);
    }

    private IEnumerable<OpeningStep> StepsOfOpening(IEntryWording wording)
    {
        var told = new Told();
        Garage.Open(_folder.Path, Some.Clock(), told, wording: _ => wording).Dispose();
        return told.Steps.Distinct().Order();
    }

    private Garage Open(IEntryWording wording) => Garage.Open(_folder.Path, Some.Clock(), wording: _ => wording);

    /// <summary>Steps come from several threads only while journals are read, and here there is one journal.</summary>
    private sealed class Told : IProgress<GarageOpening>
    {
        public List<OpeningStep> Steps { get; } = [];

        public void Report(GarageOpening value) => Steps.Add(value.Step);
    }

    private sealed class Worded(string version) : IEntryWording
    {
        public string Version => version;

        public EntryText? Of(VehicleState vehicle, JournalEntry entry) => new(
            entry.Body switch
            {
                NoteWritten note => $"Entry {entry.Sequence} said ({note.Text})",
                PrivateFactsNoted facts => $"{facts.Owner} {facts.Vin}",
                _ => entry.Kind,
            },
            [entry.Body is NoteWritten or PrivateFactsNoted ? "tusks" : ""]);
    }
}
