using System.Globalization;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.App.Bench;

/// <summary>Where the uncertainty of a decided reading comes from, and what would shrink it.</summary>
/// <param name="Parts">Its contributions as they were decided with, largest first.</param>
/// <param name="Largest">Which matters most, in a sentence.</param>
/// <param name="Remedies">What can be done and what it would bring, best first, in sentences; never empty.</param>
public sealed record Doubt(IReadOnlyList<DoubtPart> Parts, string Largest, IReadOnlyList<string> Remedies)
{
    /// <summary>The doubt of a reading; null where it was not decided.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="check">Its check.</param>
    /// <param name="instruments">The workshop's instruments, for ranges that would do better.</param>
    public static Doubt? Of(ReadingDecided reading, Check check, IReadOnlyList<Instrument> instruments)
    {
        if (reading is not { Conformity: { Contributions: [_, ..] parts } conformity, Limits: { } limits })
        {
            return null;
        }

        var sizes = new Sizes(RecordWords.UnitOf(reading, check), conformity.ExpandedUncertainty);
        var variance = conformity.StandardUncertainty * conformity.StandardUncertainty;
        var shares = parts
            .Select(part => new DoubtPart(
                Capital(part.Name),
                variance > 0 ? part.StandardUncertainty * part.StandardUncertainty / variance : 0,
                sizes.Of(part.StandardUncertainty)))
            .ToList();
        var advice = Advice.For(reading.Reading, Limits.Of(limits.Lower, limits.Upper), WithRanges(reading.Instrument, instruments));
        return new Doubt(shares, LargestOf(reading, shares[0], sizes), [.. Remedy(reading, conformity, advice, sizes)]);
    }

    private static string LargestOf(ReadingDecided reading, DoubtPart largest, Sizes sizes)
    {
        var name = largest.Name.ToLowerInvariant();
        var share = $"{(100 * largest.Share).ToString("0", CultureInfo.InvariantCulture)}\u00a0%";
        var rest = BudgetTable.Of(reading.Reading)[0];
        return rest.ExpandedWithout > 0
            ? $"Most of it, {share}, is the {name}. Without that, {sizes.Now} would be {sizes.Expanded(rest.ExpandedWithout)}."
            : $"All of it is the {name}.";
    }

    private static IEnumerable<string> Remedy(ReadingDecided reading, Conformity conformity, Advice advice, Sizes sizes)
    {
        var isDoubtful = conformity.Decision is Decision.ConditionalPass or Decision.ConditionalFail;
        foreach (var one in advice.Improvements)
        {
            var settles = isDoubtful && one.Settles(advice) ? ", which would settle it if the value stays" : "";
            yield return $"{Capital(one.Action)}: {sizes.Now} would come down to {sizes.Expanded(one.ExpandedUncertainty)}{settles}.";
        }

        if (isDoubtful && advice.AccuracyNeeded is { } accuracy && accuracy > 0)
        {
            yield return $"An instrument accurate to {sizes.Expanded(accuracy)} here would settle it.";
        }

        if (reading.Reading is DisplayedReading { Values.Count: 1 })
        {
            yield return "Reading it again two or three times would show its scatter, which a single reading hides; it does not shrink what the instrument itself adds.";
        }
        else if (advice.Improvements.Count == 0)
        {
            yield return "Nothing at hand would shrink it much: that takes a finer instrument or another method.";
        }
    }

    /// <summary>The instrument with the ranges of all instruments of its kind, but for the one it was read with.</summary>
    private static Instrument? WithRanges(Instrument? used, IReadOnlyList<Instrument> instruments) => used is null
        ? null
        : used with
        {
            Ranges =
            [
                .. instruments.Where(one => one.Kind == used.Kind)
                    .SelectMany(one => one.Ranges ?? [])
                    .Where(range => range.Accuracy != used.Accuracy || range.Resolution != used.Resolution),
            ],
        };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Writes uncertainties: two significant digits, as they are given (JCGM 100:2008, 7.2.6).</summary>
    private sealed record Sizes(Unit Unit, double ExpandedNow)
    {
        public string Now => Expanded(ExpandedNow);

        public string Of(double size)
        {
            var space = Unit.Symbol == "°" ? "" : "\u00a0";
            return $"{Printed.UncertainNumbers(Unit.ToBase(0), size, Unit).Spread}{space}{Unit.Symbol}";
        }

        public string Expanded(double size) => $"±\u00a0{Of(size)}";
    }
}

/// <summary>One contribution to an uncertainty.</summary>
/// <param name="Name">What it comes from.</param>
/// <param name="Share">Its share of the variance, 0 to 1.</param>
/// <param name="Size">Its size as a standard uncertainty, with its unit.</param>
public sealed record DoubtPart(string Name, double Share, string Size);
