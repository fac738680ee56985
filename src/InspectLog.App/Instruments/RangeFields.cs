using InspectLog.App.Forms;
using InspectLog.Measuring;

namespace InspectLog.App.Instruments;

/// <summary>Reads the ranges of an instrument: the field fullScale for the one whose step and accuracy stand beside it, and
/// moreRanges for others, one a line: largest value, step, and the accuracy where it is another.</summary>
public static class RangeFields
{
    private const string Largest =
        "Type the largest value it shows, above its smallest step and with a point, such as 200; or leave it empty.";

    private const string Line = "Write a range a line: largest value; smallest step; accuracy where it is another, such as 2000; 1; 1% + 5.";

    /// <summary>The ranges; none where the fields are empty. What is wrong is noted on the form.</summary>
    public static IReadOnlyList<MeterRange> Read(PostedForm form, Unit unit, Accuracy accuracy, double resolution)
    {
        var lines = Numbers.Lines(form, "moreRanges");
        var text = form.Text("fullScale");
        if (text.Length == 0)
        {
            if (lines.Count > 0)
            {
                form.Refuse("fullScale", "Type the largest value of the first range too, or leave the other ranges empty.");
            }

            return [];
        }

        if (!(Numbers.Read(text) is { } most && most > resolution))
        {
            form.Refuse("fullScale", Largest);
            return [];
        }

        var ranges = lines.Select(line => Of(form, line, unit, accuracy)).OfType<MeterRange>().Prepend(Made(most, resolution, accuracy, unit)).ToList();
        if (ranges.DistinctBy(range => range.FullScale).Count() < ranges.Count)
        {
            form.Refuse("moreRanges", "Two ranges have the same largest value. Write each once.");
        }

        return ranges;
    }

    private static MeterRange? Of(PostedForm form, string[] line, Unit unit, Accuracy first)
    {
        if (line is not [var full, var step, ..] || line.Length > 3
            || Numbers.Read(full) is not { } most || Numbers.Read(step) is not { } resolution || !(resolution > 0 && most > resolution))
        {
            form.Refuse("moreRanges", $"\"{string.Join("; ", line)}\" is no range. {Line}");
            return null;
        }

        var accuracy = first;
        if (line is [_, _, var text] && !Accuracy.TryParse(text, unit.Kind, out accuracy, out var problem))
        {
            form.Refuse("moreRanges", $"{full}: {problem}");
            return null;
        }

        return Made(most, resolution, accuracy, unit);
    }

    private static MeterRange Made(double fullScale, double resolution, Accuracy accuracy, Unit unit) => new(
        MeterRange.NameOf(unit.ToBase(fullScale), unit), unit.ToBase(fullScale), accuracy, unit.DifferenceToBase(resolution));
}
