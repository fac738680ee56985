using InspectLog.App.Commands;
using InspectLog.Journal;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Commands;

/// <summary>What is printed while a data folder is opened.</summary>
public sealed class OpeningProgressTests
{
    [Fact]
    public void Opening_that_is_quick_prints_nothing_and_a_slow_one_a_line_a_second()
    {
        var clock = new FakeTimeProvider();
        using var printed = new StringWriter { NewLine = "\n" };
        var progress = new OpeningProgress(printed, clock);

        for (var journal = 1; journal <= 10; journal++)
        {
            clock.Advance(TimeSpan.FromMilliseconds(300));
            progress.Report(new(journal <= 6 ? OpeningStep.Reading : OpeningStep.MakingLists, journal, 10));
        }

        Assert.Equal("Journals read: 4 of 10\nJournals put into lists and search: 8 of 10\n", printed.ToString());
    }
}
