using System.Globalization;
using System.Text.RegularExpressions;

namespace InspectLog.Measuring;

/// <summary>Reads the terms of a stated accuracy.</summary>
internal static partial class AccuracyTerms
{
    private enum Of
    {
        Reading,
        Range,
        Counts,
        Fixed,
    }

    /// <summary>Adds the terms up; gives what is wrong, or null.</summary>
    internal static string? Read(IReadOnlyList<string> terms, QuantityKind? kind, out Accuracy? accuracy)
    {
        accuracy = null;
        var sizes = new Dictionary<Of, double>();
        foreach (var term in terms)
        {
            var match = Term().Match(term);
            if (!match.Success)
            {
                return AccuracyText.NotOne();
            }

            var number = double.Parse(match.Groups["number"].Value.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
            if (Meaning(match, kind, ref number, out var problem) is not { } meaning)
            {
                return problem;
            }

            if (!sizes.TryAdd(meaning, number))
            {
                return meaning == Of.Reading
                    ? AccuracyText.NotOne(": it has two percentages of the reading. Say of the other that it is of the range")
                    : AccuracyText.NotOne(": it has two terms of the same kind");
            }
        }

        accuracy = new(sizes.GetValueOrDefault(Of.Reading), sizes.GetValueOrDefault(Of.Counts))
        {
            PercentOfRange = sizes.GetValueOrDefault(Of.Range),
            Fixed = sizes.GetValueOrDefault(Of.Fixed),
        };
        return null;
    }

    /// <summary>What a term is of; null with the problem. A number with a unit becomes one in the base unit.</summary>
    private static Of? Meaning(Match term, QuantityKind? kind, ref double number, out string? problem)
    {
        problem = null;
        if (term.Groups["range"].Success)
        {
            return Of.Range;
        }

        if (term.Groups["percent"].Success)
        {
            return Of.Reading;
        }

        var word = term.Groups["unit"].Value.Trim();
        if (word.Length == 0 || term.Groups["counts"].Success)
        {
            return Of.Counts;
        }

        var units = Units.Named(word);
        if (units.FirstOrDefault(unit => unit.Kind == kind) is { } unit)
        {
            number = unit.DifferenceToBase(number);
            return Of.Fixed;
        }

        problem = units.Count > 0 && kind is { } measured
            ? $"{units[0].Symbol} is a unit of {Kinds.Noun(units[0].Kind)}, but the instrument measures {Kinds.Noun(measured)}."
            : AccuracyText.NotOne();
        return null;
    }

    // A comma followed by exactly three digits is left out: it could be a thousands mark.
    [GeneratedRegex(
        """
        ^\s*(?<number>[0-9]+(?:\.[0-9]+|,[0-9]{1,2})?|\.[0-9]+)(?![0-9.,])\s*
        (?:
          (?<percent>%)\s*(?:of\ )?\s*(?:the\ )?\s*(?:reading|rdg|rd|value)?\.?
        | (?<range>%)\s*(?:of\ )?\s*(?:the\ )?\s*(?:range|rng|full\ scale|fs|f\.s|fsd)\.?
        | (?<counts>counts?|digits?|dgts?|d|lsd)\.?
        | (?<unit>[^%0-9]*)
        )\s*$
        """,
        RegexOptions.IgnorePatternWhitespace | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Term();
}
