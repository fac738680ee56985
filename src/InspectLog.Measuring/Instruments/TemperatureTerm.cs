using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>What a data sheet adds to the accuracy for each degree outside the temperatures it is stated for.</summary>
/// <param name="From">Lowest temperature the accuracy is stated for, °C.</param>
/// <param name="To">Highest, °C; <paramref name="From"/> or more.</param>
public sealed partial record TemperatureTerm(double From, double To)
{
    /// <summary>The share of the stated accuracy that is added for each °C, as in "0.1 × accuracy"; null where it is given as
    /// <see cref="PerDegree"/>.</summary>
    public double? ShareOfAccuracy { get; init; }

    /// <summary>What is added for each °C, as in "0.05 % + 0.2 counts"; null where it is a share of the accuracy.</summary>
    public Accuracy? PerDegree { get; init; }

    /// <summary>How many degrees a temperature lies outside the stated ones, 0 or more.</summary>
    public double Outside(double temperature) => Math.Max(0, Math.Max(From - temperature, temperature - To));

    /// <summary>The accuracy at a temperature.</summary>
    /// <param name="stated">The stated accuracy.</param>
    /// <param name="temperature">The temperature about the instrument, °C.</param>
    public Accuracy At(Accuracy stated, double temperature)
    {
        ArgumentNullException.ThrowIfNull(stated);
        var outside = Outside(temperature);
        return outside == 0 ? stated
            : stated.Times(1 + (outside * ShareOfAccuracy.GetValueOrDefault())).Plus((PerDegree ?? new(0, 0)).Times(outside));
    }

    /// <summary>Reads what is added for each degree: <c>0.1 x accuracy</c>, <c>0.1x</c>, or an accuracy as
    /// <see cref="Accuracy.TryParse"/> reads it.</summary>
    /// <param name="text">The text as typed.</param>
    /// <param name="span">The temperatures the accuracy is stated for: <c>18 to 28</c> or <c>23 ± 5</c>, °C.</param>
    /// <param name="kind">What the instrument measures.</param>
    /// <param name="term">The term, where the texts are one.</param>
    /// <param name="problem">Otherwise what is wrong and what to do.</param>
    public static bool TryParse(
        string? text,
        string? span,
        QuantityKind kind,
        [NotNullWhen(true)] out TemperatureTerm? term,
        [NotNullWhen(false)] out string? problem)
    {
        term = null;
        if (ReadSpan(span ?? "") is not { } stated)
        {
            problem = "Type the temperatures the accuracy is stated for, such as 18 to 28 or 23 ± 5.";
            return false;
        }

        var share = Share().Match(text ?? "");
        if (share.Success)
        {
            var size = Number(share.Groups["share"].Value);
            problem = size is > 0 and <= 10 ? null : "The share of the accuracy for each °C lies above 0 and up to 10, such as 0.1 x accuracy.";
            term = problem is null ? stated with { ShareOfAccuracy = size } : null;
            return problem is null;
        }

        term = Accuracy.TryParse(text, kind, out var perDegree, out problem) ? stated with { PerDegree = perDegree } : null;
        return problem is null;
    }

    /// <summary>What is added for each degree as text, readable by <see cref="TryParse"/>.</summary>
    /// <param name="unit">The unit to write a fixed size in.</param>
    public string Written(Unit unit) => ShareOfAccuracy is { } share
        ? string.Create(CultureInfo.InvariantCulture, $"{share} × accuracy")
        : (PerDegree ?? new(0, 0)).Written(unit);

    /// <summary>The stated temperatures as text, readable by <see cref="TryParse"/>.</summary>
    public string WrittenSpan() => string.Create(CultureInfo.InvariantCulture, $"{From} to {To}").Replace('-', '−');

    private static TemperatureTerm? ReadSpan(string text)
    {
        var match = Span().Match(text.Replace('−', '-'));
        if (!match.Success)
        {
            return null;
        }

        var (first, second) = (Number(match.Groups["first"].Value), Number(match.Groups["second"].Value));
        var (from, to) = match.Groups["about"].Success ? (first - second, first + second) : (first, second);
        return from <= to && from >= -60 && to <= 100 ? new(from, to) : null;
    }

    private static double Number(string text) =>
        double.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"^\s*(?<share>[0-9]*\.?[0-9]+)\s*[x×*]\s*(?:the\s+)?(?:stated\s+|specified\s+)?(?:accuracy|spec\.?)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Share();

    [GeneratedRegex(
        @"^\s*(?<first>-?[0-9]+(?:\.[0-9]+)?)\s*(?:°?\s*C)?\s*(?:(?<about>±|\+\s*/?\s*-)|to|\.\.|…)\s*(?<second>-?[0-9]+(?:\.[0-9]+)?)\s*(?:°?\s*C)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Span();
}
