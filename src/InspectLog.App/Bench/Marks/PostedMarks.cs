using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;
using InspectLog.App.Forms;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench.Marks;

/// <summary>A mark as a form brings it: what was typed of it is text.</summary>
internal sealed record PostedMark(string Shape, IReadOnlyList<IReadOnlyList<double>> Points)
{
    public string? Text { get; init; }

    public IReadOnlyList<IReadOnlyList<double>>? Reference { get; init; }

    public string? Known { get; init; }

    public string? Second { get; init; }

    public string? Tolerance { get; init; }

    public string? Unit { get; init; }

    public string? Pick { get; init; }

    /// <summary>The length in words, for the script to show.</summary>
    public string? Says { get; init; }

    public static PostedMark Of(PhotoMark mark)
    {
        var plain = new PostedMark(mark.Shape.ToString().ToLowerInvariant(), Pairs(mark.Points)) { Text = mark.Text };
        return mark.Measured is not { } measured ? plain : plain with
        {
            Reference = Pairs(measured.Reference),
            Known = Typed(measured.Lengths[0]),
            Second = measured.Lengths.Count > 1 ? Typed(measured.Lengths[1]) : "",
            Tolerance = Typed(measured.Tolerance),
            Unit = Units.Millimetre.Symbol,
            Pick = Typed(measured.Pick),
            Says = MarkWords.Length(measured),
        };
    }

    private static IReadOnlyList<IReadOnlyList<double>> Pairs(IReadOnlyList<MarkPoint> points) => [.. points.Select(point => (IReadOnlyList<double>)[point.X, point.Y])];

    private static string Typed(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}

/// <summary>Reads marks from a form: those a script drew, one in each field <c>mark</c>, and one that was typed in numbers. What is
/// wrong is noted on the form.</summary>
internal static class PostedMarks
{
    public static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        MaxDepth = 8,
    };

    // In a photo something from a grain to a car is seen; its copy tells no more than a few thousand steps.
    private static readonly PlausibleSpan Seen = new(0.01, 10_000);
    private static readonly PlausibleSpan SeenTolerance = new(0, 1000);

    private const string Broken = "A mark did not come whole. Open the page again and draw it once more.";
    private const int LongestMark = 12_000;

    // A share to five places is a twentieth of a pixel of the largest copies.
    private const int Decimals = 5;

    /// <summary>All marks of a form, in their order.</summary>
    public static IReadOnlyList<PhotoMark> Read(PostedForm form, (int Width, int Height) size)
    {
        var marks = form.All("mark").Select(text => One(form, text, size)).OfType<PhotoMark>().ToList();
        return TypedMark.Read(form) is { } typed ? [.. marks, typed] : marks;
    }

    /// <summary>One mark; null where it is wrong.</summary>
    public static PhotoMark? One(PostedForm form, string text, (int Width, int Height) size)
    {
        if (text.Length > LongestMark || Parsed(text) is not { } posted || !Enum.TryParse<MarkShape>(posted.Shape, ignoreCase: true, out var shape)
            || !Enum.GetNames<MarkShape>().Contains(posted.Shape, StringComparer.OrdinalIgnoreCase))
        {
            form.Refuse("", Broken);
            return null;
        }

        var words = PlainText.Of(posted.Text ?? "").Trim();
        if (words.Length > PhotoMarking.LongestText)
        {
            form.Refuse("", $"Keep the words of a mark to {PhotoMarking.LongestText} characters.");
        }

        var mark = new PhotoMark(shape, Points(posted.Points)) { Text = words.Length > 0 ? words : null };
        return shape == MarkShape.Measure ? Measured(form, mark, posted, size) : mark;
    }

    private static PhotoMark? Measured(PostedForm form, PhotoMark mark, PostedMark posted, (int Width, int Height) size)
    {
        var unit = Units.Find(posted.Unit ?? "") is { Kind: QuantityKind.Length } chosen ? chosen : Units.Millimetre;
        var reference = Points(posted.Reference ?? []);
        var known = Length(form, "known", posted.Known, unit, "Type the length that is known.");
        var second = reference.Count == 4 ? Length(form, "second", posted.Second, unit, "Type the other side of the rectangle as well.") : null;
        var tolerance = string.IsNullOrWhiteSpace(posted.Tolerance) ? 0 : form.Certain("tolerance", TypedNumber.Read(posted.Tolerance, QuantityKind.Length, unit, SeenTolerance));
        if (!double.TryParse(posted.Pick, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var pick))
        {
            form.Refuse("pick", "Type how closely a point can be picked, in pixels, such as 1.");
        }

        if (!form.IsValid || known is not { } length || tolerance is not { } off || mark.Points.Count != 2)
        {
            form.Refuse("", "A measuring line is not whole: pick the known length, then both ends of what is to be measured.");
            return null;
        }

        try
        {
            double[] lengths = second is { } side ? [length, side] : [length];
            return mark with { Measured = PhotoLengths.Measure(mark.Points, reference, lengths, off, size, pick) };
        }
        catch (ArgumentException problem)
        {
            form.Refuse("known", problem.Message);
            return null;
        }
    }

    private static double? Length(PostedForm form, string field, string? text, Unit unit, string missing)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            form.Refuse(field, missing);
            return null;
        }

        return form.Certain(field, TypedNumber.Read(text.Trim(), QuantityKind.Length, unit, Seen));
    }

    private static PostedMark? Parsed(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<PostedMark>(text, Options) is { } mark
                && mark.Points.Concat(mark.Reference ?? []).All(pair => pair.Count == 2 && pair.All(double.IsFinite))
                ? mark
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static List<MarkPoint> Points(IReadOnlyList<IReadOnlyList<double>> pairs) =>
        [.. pairs.Select(pair => new MarkPoint(Math.Round(pair[0], Decimals), Math.Round(pair[1], Decimals)))];
}
