using InspectLog.Journal.Entries;
using InspectLog.Journal.State;
using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.State;

/// <summary>What is drawn over photos: put right, withdrawn and restored as any entry is.</summary>
public sealed class PhotoMarkTests
{
    private static readonly PhotoKept Photo = new(2, Some.Photo, 4032, 3024, null, null);

    [Fact]
    public void Marks_of_a_photo_are_the_last_ones_and_those_before_stay()
    {
        var state = Written.State(Photo, Marks(3, "crack"), Marks(3, "old crack") with { Amends = 4 });

        var marks = state.MarksOf(3)!;
        Assert.Equal((4L, "old crack"), (marks.Sequence, marks.Body.Marks[0].Text));
        Assert.Equal("crack", ((PhotoMarked)Assert.Single(marks.History.Past).Says).Marks[0].Text);
        Assert.Equal([3L], state.Everything.Select(kept => kept.Sequence));
    }

    [Fact]
    public void Marks_are_withdrawn_and_count_again_without_their_photo()
    {
        var withdrawn = Written.State(Photo, Marks(3, "crack"), new EntryWithdrawn(4, "wrong photo"));
        var restored = Written.State(Photo, Marks(3, "crack"), new EntryWithdrawn(4, "wrong photo"), new EntryRestored(4));

        Assert.Equal("wrong photo", withdrawn.MarksOf(3)!.History.Withdrawn!.Reason);
        Assert.Null(withdrawn.Photos.Single().History.Withdrawn);
        Assert.Null(restored.MarksOf(3)!.History.Withdrawn);
    }

    [Fact]
    public void Marks_made_after_closing_are_told_to_be_later()
    {
        var state = Written.State(Photo, new InspectionClosed(2), Marks(3, "crack"));

        Assert.True(state.MarksOf(3)!.History.IsLater);
    }

    [Fact]
    public void Marks_of_what_is_no_photo_are_of_nothing()
    {
        var state = Written.State(new NoteWritten(2, null, "words"), Marks(3, "crack"), Marks(99, "crack"));

        Assert.Null(state.MarksOf(3));
        Assert.Empty(state.PhotoMarks);
    }

    private static PhotoMarked Marks(long photo, string text) =>
        new(photo, [new(MarkShape.Arrow, [new(0.5, 0.5), new(0.25, 0.25)]) { Text = text }]);
}
