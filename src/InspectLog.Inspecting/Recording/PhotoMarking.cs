using InspectLog.Journal.Entries;
using InspectLog.Journal.State;

namespace InspectLog.Inspecting.Recording;

/// <summary>The entries that mark photos, and what they must hold to. Pure.</summary>
public static class PhotoMarking
{
    /// <summary>So many marks over a photo at most: more hide it.</summary>
    public const int MostMarks = 40;

    /// <summary>So many points in a line drawn by hand at most.</summary>
    public const int MostPoints = 200;

    /// <summary>Longest words of a mark: they have to fit over a picture.</summary>
    public const int LongestText = 80;

    /// <summary>The entries that let a photo have these marks from now on; none where it has them already, or was never marked and
    /// shall have none.</summary>
    public static IReadOnlyList<EntryBody> Bodies(BenchScene scene, PhotoCapture photo, IReadOnlyList<PhotoMark> marks)
    {
        var before = scene.Inspection.MarksOf(photo.Sequence);
        return before is null ? (marks.Count == 0 ? [] : [new PhotoMarked(photo.Sequence, marks)])
            : before.History.Withdrawn is null && before.Body.Marks.Count == marks.Count && before.Body.Marks.Zip(marks).All(pair => AreSame(pair.First, pair.Second)) ? []
            : [new PhotoMarked(photo.Sequence, marks) { Amends = before.Sequence }];
    }

    /// <summary>Why marks are not let into a journal; null where they are.</summary>
    internal static string? Refusal(VehicleState vehicle, PhotoMarked marked) =>
        vehicle.InspectionWith(marked.Photo) is not { } inspection || inspection.Find(marked.Photo) is not PhotoCapture
            ? "The photo that was to be marked is not there. Open the page again."
        : marked.Amends is { } first && (inspection.Find(first) as Recorded<PhotoMarked>)?.Body.Photo != marked.Photo
            ? "What was to be put right is not there, or is of another kind. Open the page again."
        : marked.Marks.Count > MostMarks ? $"A photo takes {MostMarks} marks. Take some away, or mark another photo."
        : marked.Marks.Select(Refusal).FirstOrDefault(problem => problem is not null);

    private static string? Refusal(PhotoMark mark)
    {
        var points = mark.Points.Count;
        return mark.Points.Any(point => !(point.X is >= 0 and <= 1 && point.Y is >= 0 and <= 1)) ? "A mark lies outside of the photo. Draw it within."
            : mark.Shape switch
            {
                MarkShape.Text when points != 1 || string.IsNullOrWhiteSpace(mark.Text) => "Type the words that are to stand in the photo.",
                MarkShape.Line when points is < 2 or > MostPoints => "A line drawn by hand is too long or has no length. Draw it once more, in parts.",
                MarkShape.Arrow or MarkShape.Ring or MarkShape.Measure when points != 2 => "A mark is not whole. Draw it once more.",
                MarkShape.Measure when mark.Measured is null => "A measuring line needs what was measured.",
                _ when mark.Text?.Length > LongestText => $"Keep the words of a mark to {LongestText} characters.",
                _ => null,
            };
    }

    private static bool AreSame(PhotoMark one, PhotoMark other) =>
        one.Shape == other.Shape && one.Text == other.Text && one.Points.SequenceEqual(other.Points) && AreSame(one.Measured, other.Measured);

    private static bool AreSame(PhotoMeasurement? one, PhotoMeasurement? other) => (one, other) is not ({ } was, { } now)
        ? one is null && other is null
        : was.Reference.SequenceEqual(now.Reference) && was.Lengths.SequenceEqual(now.Lengths)
            && (was.Tolerance, was.Pick, was.Width, was.Height) == (now.Tolerance, now.Pick, now.Width, now.Height);
}
