using System.Globalization;
using InspectLog.App.Forms;
using InspectLog.Inspecting.Recording;
using InspectLog.Journal.Entries;

namespace InspectLog.App.Bench.Marks;

/// <summary>A mark that was typed, where a page has no scripts: its places in percent of the photo's width and height.</summary>
internal static class TypedMark
{
    /// <summary>The fields of its places: of the first point, and of the second.</summary>
    public static readonly IReadOnlyList<string> Fields = ["x1", "y1", "x2", "y2"];

    /// <summary>Reads the fields <c>typed</c> (arrow, ring or text), <c>x1</c> to <c>y2</c> and <c>words</c>; null where nothing was typed, or
    /// it is wrong.</summary>
    public static PhotoMark? Read(PostedForm form)
    {
        if (form.Text("typed").Length == 0)
        {
            return null;
        }

        var shape = form.Choice("typed", MarkShape.Arrow, "Choose an arrow, a ring or words.");
        var places = Fields.Take(shape == MarkShape.Text ? 2 : 4).Select(field => Percent(form, field)).ToList();
        var words = form.Text("words");
        if (words.Length > PhotoMarking.LongestText)
        {
            form.Refuse("words", $"Keep the words of a mark to {PhotoMarking.LongestText} characters.");
        }
        else if (shape == MarkShape.Text && words.Length == 0)
        {
            form.Refuse("words", "Type the words that are to stand in the photo.");
        }
        else if (shape is MarkShape.Line or MarkShape.Measure)
        {
            form.Refuse("typed", "Choose an arrow, a ring or words.");
        }

        return form.IsValid
            ? new(shape, [.. places.Chunk(2).Select(pair => new MarkPoint(pair[0], pair[1]))]) { Text = words.Length > 0 ? words : null }
            : null;
    }

    private static double Percent(PostedForm form, string field)
    {
        if (double.TryParse(form.Text(field), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent is >= 0 and <= 100)
        {
            return percent / 100;
        }

        form.Refuse(field, "Type a number from 0 to 100: percent of the photo’s width from the left, or of its height from the top.");
        return 0;
    }
}
