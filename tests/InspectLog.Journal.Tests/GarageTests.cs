using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Serialization;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests;

/// <summary>A garage at work: what is appended is there, in order, and nothing else is.</summary>
public sealed class GarageTests : IDisposable
{
    private static readonly JsonSerializerOptions WithInfinity = new()
    {
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    private readonly TempFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Everything_appended_is_there_after_opening_again()
    {
        string id;
        string before;
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            id = garage.AddVehicle(Some.Technician, Some.Vehicle());
            garage.Append(id, Some.Technician, _ => Some.OneOfEachKind);
            garage.AppendToWorkshop(Some.Technician, new InstrumentAdded(Some.Meter));
            before = Describe(garage, id);
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Equal("marigold", id);
        Assert.Empty(again.Problems);
        Assert.Equal(before, Describe(again, id));
        Assert.Equal([Some.Meter], again.Workshop.Instruments);
        Assert.Equal(1 + Some.OneOfEachKind.Count + 1, again.Entries(id).Count); // a closing is among them, which notes the workshop's journal
        Assert.All(again.Entries(id), entry => Assert.NotNull(entry.Body));
    }

    [Fact]
    public void Entry_carries_UTC_time_and_the_workshops_offset()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());

        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());

        var entry = Assert.Single(garage.Entries(id));
        Assert.Equal(new DateTimeOffset(2026, 11, 25, 10, 30, 0, 123, TimeSpan.Zero), entry.Time);
        Assert.Equal(TimeSpan.FromHours(1), entry.Offset);
        Assert.Equal(11, entry.LocalTime.Hour);
    }

    [Fact]
    public void Clock_that_goes_backwards_leaves_the_order_alone()
    {
        using var garage = Garage.Open(_folder.Path, new BackwardsClock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Note(id, "later by number, earlier by the clock");

        var entries = garage.Entries(id);

        Assert.Equal([1L, 2L], entries.Select(entry => entry.Sequence));
        Assert.True(entries[1].Time < entries[0].Time);
    }

    [Theory]
    [InlineData("marigold")]
    [InlineData("../vehicles/teasel")]
    [InlineData("")]
    public void Unknown_vehicle_is_not_found(string id)
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel"));

        Assert.Null(garage.FindVehicle(id));
        Assert.Throws<UnknownVehicleException>(() => garage.Note(id, "lost"));
        Assert.Throws<UnknownVehicleException>(() => garage.Entries(id));
    }

    [Fact]
    public void Deciding_to_append_nothing_appends_nothing()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());

        var state = garage.Append(id, Some.Technician, _ => []);

        Assert.Equal(2, state.NextSequence);
        Assert.Single(garage.Entries(id));
    }

    [Fact]
    public void Body_with_a_number_JSON_cannot_hold_is_refused_and_leaves_no_trace()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        var before = File.ReadAllBytes(_folder.At("vehicles", id, "journal.jsonl"));

        Assert.Throws<ArgumentException>(() => garage.Append(
            id, Some.Technician, _ => [new LimitsSet("plug-gap", double.NaN, null, "manual")]));

        Assert.Equal(before, File.ReadAllBytes(_folder.At("vehicles", id, "journal.jsonl")));
        Assert.Equal(3, garage.Note(id, "still writable").NextSequence);
    }

    [Fact]
    public async Task Appends_of_many_threads_come_one_after_the_other()
    {
        using var garage = Garage.Open(_folder.Path, Some.Clock());
        string[] ids = [garage.AddVehicle("a", Some.Vehicle("Teasel")), garage.AddVehicle("a", Some.Vehicle("Heron"))];
        var decidedAt = new ConcurrentBag<(string, long)>();

        await Task.WhenAll(Enumerable.Range(0, 8).Select(worker => Task.Run(
            () =>
            {
                for (var n = 0; n < 20; n++)
                {
                    var id = ids[(worker + n) % 2];
                    garage.Append(id, $"worker {worker}", state =>
                    {
                        decidedAt.Add((id, state.NextSequence));
                        return [new NoteWritten(0, null, $"note {n}")];
                    });
                }
            },
            TestContext.Current.CancellationToken)));

        Assert.Equal(160, decidedAt.Distinct().Count());
        Assert.All(ids, id => Assert.Equal(Enumerable.Range(1, 81), garage.Entries(id).Select(e => (int)e.Sequence)));
        Assert.Equal(160, garage.Search("note").Count);
    }

    [Fact]
    public void Garage_that_was_closed_takes_no_more()
    {
        var garage = Garage.Open(_folder.Path, Some.Clock());
        var id = garage.AddVehicle(Some.Technician, Some.Vehicle());
        garage.Dispose();

        Assert.Throws<ObjectDisposedException>(() => garage.Note(id, "too late"));
        Assert.Throws<ObjectDisposedException>(() => garage.AddVehicle(Some.Technician, Some.Vehicle("Teasel")));
        Assert.Throws<ObjectDisposedException>(() => garage.Media.Keep("late"u8, "audio/wav"));
        Assert.Throws<ObjectDisposedException>(garage.Vehicles);
        Assert.Throws<ObjectDisposedException>(garage.RebuildIndex);
        using var again = Garage.Open(_folder.Path, Some.Clock());
        Assert.Single(again.Vehicles());
    }

    private static string Describe(Garage garage, string id) => JsonSerializer.Serialize(new
    {
        State = garage.FindVehicle(id),
        Entries = garage.Entries(id).Select(entry => (entry with { Body = null }).ToString()),
        Vehicles = garage.Vehicles(),
        Waiting = garage.WaitingRecordings(),
        Hits = garage.Search("m"),
    }, WithInfinity);

    private sealed class BackwardsClock : TimeProvider
    {
        private DateTimeOffset _now = new(2026, 11, 25, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => _now -= TimeSpan.FromHours(1);
    }
}
