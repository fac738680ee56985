using InspectLog.App.Forms;
using InspectLog.Checks;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Reads a bracket between gauges from a form: one gauge on each side, or a stack of blades with + between them,
/// and how far each may be from its marked size. What is wrong is noted on the form.</summary>
public static class GaugeFields
{
    /// <summary>The fields they are typed in.</summary>
    public static readonly IReadOnlyList<string> Names = ["goes", "stops", "gauges", "tolerance"];

    /// <summary>Fields beside which it stands what is wrong with them.</summary>
    public static readonly IReadOnlyList<string> SaidAtTheField = ["goes", "stops"];

    // A blade of a stack is thinner than what it measures.
    private const double ThinnestBlade = 0.01;

    /// <summary>The bracket of the fields <c>goes</c>, <c>stops</c> and <c>tolerance</c>; null when it is wrong or has to be
    /// answered for first.</summary>
    /// <param name="form">The form.</param>
    /// <param name="check">The check; it is a measured one.</param>
    /// <param name="asked">What has to be answered first; null where nothing has.</param>
    public static Bracket? Read(PostedForm form, Check check, out AskedNumber? asked)
    {
        asked = null;
        var measurand = check.Measurand!;
        var goes = Stack(form, "goes", "Type the largest gauge that goes.", measurand);
        var stops = Stack(form, "stops", "Type the smallest gauge that stops.", measurand);
        var tolerance = Tolerance(form, measurand);
        if (goes?.Whole.BaseValue >= stops?.Whole.BaseValue)
        {
            form.Refuse("stops", "The gauge that stops must be thicker than the one that goes.");
        }

        if (!form.IsValid || goes is null || stops is null)
        {
            return null;
        }

        asked = ReadingFields.Asked(form, [goes.Whole, stops.Whole], check);
        return asked is null ? Between(form, goes, stops, tolerance) : null;
    }

    private static Bracket? Between(PostedForm form, BladeStack goes, BladeStack stops, double? tolerance)
    {
        try
        {
            return tolerance is { } each
                ? FeelerBlades.Bracket(goes.Blades(each), stops.Blades(each))
                : FeelerBlades.Exact(goes.Sizes, stops.Sizes);
        }
        catch (ArgumentException problem)
        {
            form.Refuse("stops", problem.Message);
            return null;
        }
    }

    private static BladeStack? Stack(PostedForm form, string field, string missing, Measurand measurand)
    {
        var text = form.Required(field, missing);
        var parts = text.Split('+', StringSplitOptions.TrimEntries);
        var sizes = text.Length == 0 ? [] : parts
            .Select(part => form.Certainly(field, form.Number(part, parts.Length > 1 ? Thin(measurand) : measurand)))
            .ToList();
        return sizes.Count == 0 || sizes.Contains(null) ? null : new([.. sizes.Select(size => size!.BaseValue)], sizes[0]!.Unit);
    }

    private static Measurand Thin(Measurand measurand) =>
        measurand with { Plausible = measurand.Plausible with { From = Math.Min(ThinnestBlade, measurand.Plausible.From) } };

    private static double? Tolerance(PostedForm form, Measurand measurand)
    {
        var text = form.Text("tolerance");
        if (text.Length == 0)
        {
            return null;
        }

        var span = new PlausibleSpan(0, measurand.Plausible.To);
        return form.Certain("tolerance", TypedNumber.Read(text, measurand.Kind, measurand.DisplayUnit, span));
    }

    private sealed record BladeStack(IReadOnlyList<double> Sizes, Unit Unit)
    {
        public TypedNumber.Certain Whole { get; } = new(Sizes.Sum(), Unit);

        public IReadOnlyList<Blade> Blades(double tolerance) => [.. Sizes.Select(size => new Blade(size, tolerance))];
    }
}
