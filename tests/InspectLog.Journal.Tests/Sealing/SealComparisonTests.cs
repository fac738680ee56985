using InspectLog.Journal.Entries;
using InspectLog.Journal.Sealing;

namespace InspectLog.Journal.Tests.Sealing;

/// <summary>The three ways in which a changed journal looks sound by itself, and what a seal says to each.</summary>
public sealed class SealComparisonTests
{
    [Fact]
    public void Journal_that_was_sealed_is_what_was_sealed()
    {
        var journal = SomeSeals.Journal(6);

        var found = SealComparison.Of(SomeSeals.Of(journal.Chain()), journal.Chain());

        Assert.Equal((SealStanding.Current, 6, 0), (found.Standing, found.Matches, found.Later));
        Assert.True(found.Stands);
    }

    [Fact]
    public void Journal_that_went_on_continues_what_was_sealed()
    {
        var journal = SomeSeals.Journal(6);

        var found = SealComparison.Of(SomeSeals.Of(journal.Chain()), SomeSeals.After(journal, new NoteWritten(0, null, "Later")).Chain());

        Assert.Equal((SealStanding.Continued, 6, 1, true), (found.Standing, found.Matches, found.Later, found.Stands));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(5)]
    public void Entries_cut_from_the_end_are_found(int left)
    {
        var journal = SomeSeals.Journal(6);

        var found = SealComparison.Of(SomeSeals.Of(journal.Chain()), journal.GetRange(0, left).Chain());

        Assert.Equal((SealStanding.Cut, Math.Min(left, 1), false), (found.Standing, found.Matches, found.Stands));
    }

    [Fact]
    public void Entries_cut_and_others_written_in_their_place_are_found()
    {
        var journal = SomeSeals.Journal(6);
        var earlier = SomeSeals.Of(journal.GetRange(0, 3).Chain());
        var seal = SomeSeals.Of(journal.Chain(), earlier.AsEarlier());

        var asLong = SomeSeals.After(journal.GetRange(0, 4), new NoteWritten(0, null, "Not so"), new NoteWritten(0, null, "at all"));
        var shorter = SomeSeals.After(journal.GetRange(0, 2), new NoteWritten(0, null, "Not so"), new NoteWritten(0, null, "at all"));

        Assert.Equal((SealStanding.Rewritten, 3), Found(seal, asLong.Chain()));
        Assert.Equal((SealStanding.Rewritten, 1), Found(seal, shorter.Chain()));
        Assert.Equal((SealStanding.Cut, 3), Found(seal, journal.GetRange(0, 4).Chain()));
    }

    /// <summary>The same words with all hashes made anew: the salts differ, as nobody knows the salt of a body that was changed
    /// from its hash.</summary>
    [Fact]
    public void Hashes_rewritten_from_the_beginning_are_found()
    {
        Assert.Equal((SealStanding.OtherJournal, 0), Found(SomeSeals.Of(SomeSeals.Journal(6).Chain()), SomeSeals.Journal(6).Chain()));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(6)]
    [InlineData(40)]
    public void Another_vehicles_whole_journal_is_found(int count)
    {
        Assert.Equal(
            (SealStanding.OtherJournal, 0), Found(SomeSeals.Of(SomeSeals.Journal(6).Chain()), SomeSeals.Journal(count, "Teasel").Chain()));
    }

    [Fact]
    public void Every_single_entry_changed_with_the_chain_made_anew_from_there_is_found()
    {
        var journal = SomeSeals.Journal(12);
        var seal = SomeSeals.Of(journal.Chain());
        for (var at = 0; at < journal.Count; at++)
        {
            var changed = SomeSeals.After(
                journal.GetRange(0, at), [.. journal.Skip(at).Select((entry, n) => n == 0 ? new NoteWritten(0, null, "Changed") : entry.Body!)]);
            Assert.False(SealComparison.Of(seal, changed.Chain()).Stands);
        }
    }

    [Fact]
    public void Entry_withheld_since_is_named_and_one_that_was_withheld_then_is_not()
    {
        var journal = SomeSeals.Journal(6);
        var seal = SomeSeals.Of(journal.Withholding(3));

        var found = SealComparison.Of(seal, SomeSeals.After(journal, new NoteWritten(0, null, "Later")).Withholding(2, 3, 5, 7));
        Assert.Equal([2, 5], found.WithheldSince);
        Assert.Empty(found.GivenBack);
        Assert.True(found.Stands);

        Assert.Equal([3], SealComparison.Of(seal, journal.Chain()).GivenBack);
    }

    [Fact]
    public void Damaged_journal_is_told_as_damaged_and_not_as_cut()
    {
        var journal = SomeSeals.Journal(6);
        var seal = SomeSeals.Of(journal.Chain());

        Assert.Equal(SealStanding.Unknown, SealComparison.Of(seal, JournalChain.Of(journal.GetRange(0, 4), isDamaged: true)).Standing);
        Assert.Equal(SealStanding.Current, SealComparison.Of(seal, JournalChain.Of(journal.RemoveAt(2), isDamaged: true)).Standing);
    }

    private static (SealStanding Standing, long Matches) Found(Seal seal, JournalChain chain)
    {
        var found = SealComparison.Of(seal, chain);
        return (found.Standing, found.Matches);
    }
}
