using System.Text.Json;
using System.Text.Json.Serialization;
using CsCheck;
using InspectLog.Journal.Entries;
using InspectLog.Journal.Record;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using InspectLog.Measuring;

namespace InspectLog.Journal.Tests.State;

/// <summary>A vehicle whose closed inspections are left on the disk says what one says whose inspections are all in memory.
/// </summary>
public sealed class ShelvedInspectionTests
{
    private static readonly JsonSerializerOptions WithInfinity = new()
    {
        NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    };

    private static readonly InspectionStarted Start = Written.Start;

    [Fact]
    public void One_of_each_kind_says_the_same()
    {
        var log = new HeldLog([]);
        var vehicle = Shelved(log, Some.OneOfEachKind, mostEntries: 1);

        Assert.Equal(Described(Held(log)), Described(vehicle));
        Assert.Contains(vehicle.Inspections, inspection => inspection.IsClosed);
    }

    [Fact]
    public void Whatever_is_done_in_whatever_order_says_the_same() => Gen.Select(Act.Array[1, 80], Gen.Int[1, 40]).Sample(
        (acts, mostEntries) =>
        {
            var bodies = Bodies(acts);
            var log = new HeldLog([]);
            var shelved = Shelved(log, bodies, mostEntries);
            var held = Held(log);
            Assert.Equal(Described(held), Described(shelved));
            foreach (var (one, other) in held.Inspections.Zip(shelved.Inspections))
            {
                Assert.Equal(one.Marks.OrderBy(mark => mark.Key), other.Marks.OrderBy(mark => mark.Key));
                Assert.Equal(Json(one.LastReading("lead-resistance", 2)), Json(other.LastReading("lead-resistance", 2)));
                Assert.Equal(Json(one.Gauged(QuantityKind.Length)), Json(other.Gauged(QuantityKind.Length)));
                Assert.Equal(Json(one.ActionsOf("replaced")), Json(other.ActionsOf("replaced")));
                Assert.Equal(one.HasRecordOf("plug-condition"), other.HasRecordOf("plug-condition"));
                Assert.All(Enumerable.Range(1, bodies.Count), n => Assert.Equal(Json(one.Find(n)), Json(other.Find(n))));
                Assert.All(Enumerable.Range(1, bodies.Count), n => Assert.Equal(Json(one.FindLooseEnd(n)), Json(other.FindLooseEnd(n))));
            }

            Assert.All(Enumerable.Range(1, bodies.Count), n => Assert.Equal(held.InspectionWith(n)?.Number, shelved.InspectionWith(n)?.Number));
            Assert.Equal(held.Naming(Some.Photo.Sha256), shelved.Naming(Some.Photo.Sha256));
        },
        iter: 150);

    [Fact]
    public void Closed_inspection_is_not_in_memory_and_what_pages_ask_of_many_reads_no_lists()
    {
        var bodies = Bodies([.. Enumerable.Range(0, 200).Select(n => n % 20 == 19 ? (0, 1, 2) : (2 + (n % 5), 1, 2))]);
        var log = new HeldLog([]);
        var vehicle = Shelved(log, bodies, mostEntries: 1);
        var reads = log.Reads;

        Assert.All(vehicle.Inspections, inspection => Assert.NotEqual(inspection.IsClosed, inspection.IsHeld));
        Assert.All(vehicle.Inspections, inspection => Assert.True(inspection.HasRecordOf("lead-resistance") || inspection.Entries.Count < 5));
        Assert.All(vehicle.Inspections.SkipLast(1), inspection => Assert.Null(inspection.Find(vehicle.NextSequence)));
        _ = EntryMarks.Of(vehicle);
        Assert.Equal(reads, log.Reads);
    }

    [Fact]
    public void Added_to_after_closing_is_in_memory_until_the_next_is_closed()
    {
        IReadOnlyList<EntryBody> closed = [Some.Vehicle(), Start, new NoteWritten(2, null, "a"), new InspectionClosed(2)];
        var added = Shelved(new([]), [.. closed, new NoteWritten(2, null, "later")], mostEntries: 1);
        Assert.True(added.Inspection(2)!.IsHeld);
        Assert.True(added.Inspection(2)!.Everything[^1].History.IsLater);

        var again = Shelved(new([]), [.. closed, new NoteWritten(2, null, "later"), Start, new InspectionClosed(6)], mostEntries: 1);
        Assert.False(again.Inspection(2)!.IsHeld);
        Assert.Equal(2, again.Inspection(2)!.Everything.Count);
    }

    private static Gen<(int Kind, int At, int Place)> Act => Gen.Select(Gen.Int[0, 16], Gen.Int[0, 200], Gen.Int[1, 3]);

    /// <summary>Entries that refer to earlier ones, whether that makes sense or not.</summary>
    private static List<EntryBody> Bodies(IReadOnlyList<(int Kind, int At, int Place)> acts)
    {
        var bodies = new List<EntryBody> { Some.Vehicle(), Start };
        var (open, starts) = (2L, new List<long> { 2 });
        foreach (var (kind, at, place) in acts)
        {
            var some = 2 + (at % bodies.Count); // any earlier entry, and one that is not there yet
            var inspection = at % 3 == 0 ? starts[at % starts.Count] : open;
            bodies.Add(kind switch
            {
                0 => new InspectionClosed(open),
                1 => new NoteWritten(inspection, null, $"note {at}") { Stamp = new($"stamp-{at}", default) },
                2 or 3 => Reading(inspection, place, at, kind == 3),
                4 => new ObservationMade(inspection, "plug-condition", place, "good", false, null),
                5 => new ActionDone(inspection, "plug-condition", place, at % 2 == 0 ? "replaced" : "cleaned", null),
                6 => new PhotoKept(inspection, Some.Photo, 10, 10, "plug-condition", place),
                7 => new RecordingKept(inspection, Some.Recording, 1, null),
                8 => new TranscriptMade(some, "three", [], true, "model", new string('d', 64)),
                9 => new EntryWithdrawn(some, "wrong"),
                10 => new EntryRestored(some),
                11 => Reading(inspection, place, at, gauged: false) with { Amends = some },
                12 => new LooseEndOpened(inspection, "off", "put on", "spark", place, "lead"),
                13 => new LooseEndTied(some),
                14 => new ReportChoice(some, at % 2 == 0),
                15 => new CheckLeftOut(inspection, "timing", "no lamp"),
                _ => new TranscriptAsked(some),
            });
            if (kind == 0)
            {
                bodies.Add(Start);
                open = bodies.Count;
                starts.Add(open);
            }
        }

        return bodies;
    }

    private static ReadingDecided Reading(long inspection, int place, int at, bool gauged) => gauged
        ? new(inspection, "plug-gap", place, new Bracket(0.6, 0.7), "0.6", new("gauges", "Gauges", QuantityKind.Length, new(0.8, 3), 0.1), null, null, [])
        : new(inspection, "lead-resistance", place, new DisplayedReading([9000, 9000 + at], new(0.8, 3), 10), "9k", Some.Meter, null, null, []);

    private static VehicleState Held(HeldLog log) =>
        JournalScan.Of(log.Bytes).Entries.Aggregate(VehicleState.Before("teasel"), (state, entry) => state.Apply(entry));

    private static VehicleState Shelved(HeldLog log, IReadOnlyList<EntryBody> bodies, long mostEntries)
    {
        var written = Opened(log, mostEntries);
        written.Append(Some.Technician, _ => bodies, (_, _) => { });
        var state = Opened(log, mostEntries).Now.State;
        Assert.Equal(Described(state), Described(written.Now.State));
        return state;
    }

    private static OpenJournal<VehicleState> Opened(HeldLog log, long mostEntries) => new(
        log,
        VehicleState.Before("teasel"),
        (state, entry) => state.Apply(entry),
        Some.Clock(),
        reading: (state, places) => state with { Shelf = new InspectionShelf(places, new ContentCache(mostEntries)) });

    // What the two are written with and linked by differs.
    private static string Described(VehicleState vehicle) => Json(new
    {
        vehicle.Name,
        vehicle.NextSequence,
        vehicle.Limits.Count,
        vehicle.WearParts,
        Inspections = vehicle.Inspections.Select(inspection => new
        {
            inspection.Number,
            inspection.How,
            inspection.IsClosed,
            Captures = inspection.Captures.Select(Json),
            inspection.Readings,
            inspection.Observations,
            inspection.Actions,
            LooseEnds = inspection.LooseEnds.Select(Json),
            Everything = inspection.Everything.Select(Json),
            LeftOut = inspection.LeftOut.Order(Comparer<KeyValuePair<string, string>>.Create((one, other) => string.CompareOrdinal(one.Key, other.Key))),
            Stamps = inspection.Stamps.OrderBy(stamp => stamp.Value),
            inspection.HasPhotos,
            inspection.UnreadVoiceNotes,
            inspection.Repeats,
        }),
    });

    // An object is written as what it is, and not as what it is called.
    private static string Json<T>(T value) => JsonSerializer.Serialize<object?>(value, WithInfinity);
}
