namespace InspectLog.App.Ui.Drawings;

/// <summary>Places the numbers under the axis so that none runs into another or out of the drawing.</summary>
internal static class StripLabels
{
    /// <summary>Width of a character at 14 px, on the wide side: fonts differ.</summary>
    private const double CharacterWidth = 9;

    private const double Gap = 10;

    public static IReadOnlyList<StripLabel> Place(StripFacts facts, Scale axis, double width, Func<double, string> format)
    {
        var placed = new List<(double From, double To, StripLabel Label)>();
        foreach (var value in Wanted(facts).Where(axis.Holds).Distinct())
        {
            var label = Fit(axis.At(value), format(value), width);
            if (placed.TrueForAll(other => label.To + Gap <= other.From || label.From >= other.To + Gap))
            {
                placed.Add(label);
            }
            else if (value == facts.Upper && facts.Lower is not null)
            {
                // Limits close together are told apart by standing back from each other.
                placed[0] = Within(Anchored(axis.At(facts.Lower.Value), "end", placed[0].Label.Text), width);
                placed.Add(Within(Anchored(axis.At(value), "start", format(value)), width));
            }
        }

        return [.. placed.Select(one => one.Label)];
    }

    /// <summary>The values worth a label, the most needed first.</summary>
    private static IEnumerable<double> Wanted(StripFacts facts)
    {
        IEnumerable<double?> values = facts is { Lower: null, Upper: null }
            ? [facts.Reading?.Value, facts.Nominal]
            : [facts.Lower, facts.Upper, facts.Nominal];
        return values.OfType<double>();
    }

    private static (double From, double To, StripLabel Label) Fit(double at, string text, double width) =>
        Within(Anchored(at, "middle", text), width);

    /// <summary>Moves a label that would run out of the drawing to its edge.</summary>
    private static (double From, double To, StripLabel Label) Within(
        (double From, double To, StripLabel Label) placed, double width) =>
        placed.From < 0 ? Anchored(0, "start", placed.Label.Text)
        : placed.To > width ? Anchored(width, "end", placed.Label.Text)
        : placed;

    private static (double From, double To, StripLabel Label) Anchored(double at, string anchor, string text)
    {
        var length = text.Length * CharacterWidth;
        var from = anchor switch { "start" => at, "end" => at - length, _ => at - (length / 2) };
        return (from, from + length, new StripLabel(at, anchor, text));
    }
}
