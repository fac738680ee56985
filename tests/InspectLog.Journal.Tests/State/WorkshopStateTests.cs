using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;
using static InspectLog.Journal.Tests.Support.Written;

namespace InspectLog.Journal.Tests.State;

/// <summary>The workshop: its instruments and its own words.</summary>
public sealed class WorkshopStateTests
{
    [Fact]
    public void Workshop_lists_the_instruments_in_use()
    {
        var state = new EntryBody[]
        {
            new InstrumentAdded(Some.Meter),
            new InstrumentAdded(Some.Meter with { Id = "gauge-1" }),
            new InstrumentAdded(Some.Meter with { Id = "gauge-2" }),
            new InstrumentAdded(Some.Meter with { Name = "New meter" }),
            new InstrumentRetired("gauge-2"),
        }.Aggregate(WorkshopState.Empty, (now, body) => now.Apply(Entry(1, body)));

        Assert.Equal(["gauge-1", "meter-1"], state.Instruments.Select(instrument => instrument.Id));
        Assert.Equal("New meter", state.Instruments[1].Name);
    }

    [Fact]
    public void Workshop_knows_every_access_and_which_hold()
    {
        var now = Entry(1, new AccessWithdrawn(1)).LocalTime;
        var state = new EntryBody[]
        {
            new AccessGiven("Tess Okafor", "Her phone", AccessRole.Technician, new string('a', 64)),
            new AccessGiven("A buyer", "Link", AccessRole.Viewer, new string('b', 64)) { Until = now.AddDays(1) },
            new AccessWithdrawn(1),
            new AccessWithdrawn(9),
        }.Select((body, i) => Entry(i + 1, body)).Aggregate(WorkshopState.Empty, (before, entry) => before.Apply(entry));

        Assert.Equal([(1, false), (2, true)], state.Accesses.Select(access => (access.Number, access.Holds(now))));
        Assert.False(state.Accesses[1].Holds(now.AddDays(1)));
    }

    [Fact]
    public void Workshop_lists_its_own_words_until_they_are_removed()
    {
        var state = new EntryBody[]
        {
            new OwnWordAdded("sheet", "cooked", "lead-condition", "burnt"),
            new OwnWordAdded("sheet", "sparkler", "plug-condition", null),
            new OwnWordRemoved(1),
            new OwnWordRemoved(9),
        }.Select((body, i) => Entry(i + 1, body)).Aggregate(WorkshopState.Empty, (now, entry) => now.Apply(entry));

        var word = Assert.Single(state.Words);
        Assert.Equal((2, "sparkler", "Tess Okafor"), (word.Number, word.Body.Phrase, word.Actor));
    }
}
