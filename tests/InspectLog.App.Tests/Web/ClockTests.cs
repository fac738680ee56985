using InspectLog.Journal.Entries;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Web;

/// <summary>Clocks that are set back, and devices whose clocks are wrong, are said where the entry is shown.</summary>
public sealed class ClockTests
{
    private static readonly DateTimeOffset Start = new(2026, 11, 25, 10, 30, 0, TimeSpan.Zero);

    [Fact]
    public async Task Clock_that_was_set_back_is_said_at_the_entry_and_the_order_stays()
    {
        var clock = new SetBackClock { Now = Start };
        await using var app = await TestApp.StartAsync(time: clock);
        await app.StartInspectionAsync();
        clock.Now = Start - TimeSpan.FromHours(3);
        Note(app, "after the clock was set back", null);
        clock.Now += TimeSpan.FromMinutes(1);
        Note(app, "and a minute later", null);

        var journal = await app.PageAsync("/vehicles/marigold/journal");

        Assert.Equal(["entry-4", "entry-3", "entry-2", "entry-1"], journal.QuerySelectorAll(".journal > li").Select(entry => entry.Id));
        Assert.Contains("The workshop’s clock was set back: by the clock this came 3 hours before the entry before it.", journal.GetElementById("entry-3")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("set back:", journal.GetElementById("entry-4")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(-59, null)]
    [InlineData(59, null)]
    [InlineData(-90, "90 s before it came in: it waited on the device, or the device’s clock is slow.")]
    [InlineData(-7300, "2 hours before it came in")]
    [InlineData(600, "10 minutes after it came in: the device’s clock is fast.")]
    public async Task Device_whose_clock_is_more_than_a_minute_off_is_said_at_the_entry(int seconds, string? said)
    {
        var clock = new FakeTimeProvider(Start);
        await using var app = await TestApp.StartAsync(time: clock);
        await app.StartInspectionAsync();
        Note(app, "stamped", new("one", clock.GetUtcNow().AddSeconds(seconds)));

        var entry = (await app.PageAsync("/vehicles/marigold/journal")).GetElementById("entry-3")!.TextContent;

        Assert.Equal(said is not null, entry.Contains("By the clock of the device", StringComparison.Ordinal));
        Assert.Contains(said ?? "", entry, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Device_that_sends_a_time_at_the_ends_of_the_calendar_breaks_no_page()
    {
        await using var app = await TestApp.StartAsync();
        await app.StartInspectionAsync();
        Note(app, "first", new("one", DateTimeOffset.MinValue));
        Note(app, "last", new("two", DateTimeOffset.MaxValue.AddMilliseconds(-1)));

        var journal = await app.PageAsync("/vehicles/marigold/journal");

        Assert.Contains("on 1 January 0001", journal.GetElementById("entry-3")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("on 31 December 9999", journal.GetElementById("entry-4")!.TextContent, StringComparison.Ordinal);
    }

    private static void Note(TestApp app, string text, CaptureStamp? stamp) =>
        app.Garage.Append("marigold", "Tess Okafor", _ => [new NoteWritten(2, null, text) { Stamp = stamp }]);

    private sealed class SetBackClock : TimeProvider
    {
        public required DateTimeOffset Now { get; set; }

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
