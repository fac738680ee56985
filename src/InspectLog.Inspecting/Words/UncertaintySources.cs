using System.Globalization;
using InspectLog.Checks;
using InspectLog.Journal.Entries;
using InspectLog.Measuring;

namespace InspectLog.Inspecting.Words;

/// <summary>Where the uncertainty of a decided reading comes from, and what would shrink it.</summary>
/// <param name="Parts">Its contributions as they were decided with, largest first.</param>
/// <param name="Largest">Which matters most, in a sentence.</param>
/// <param name="Remedies">What can be done and what it would bring, best first, in sentences; never empty.</param>
public sealed record UncertaintySources(IReadOnlyList<UncertaintySource> Parts, string Largest, IReadOnlyList<string> Remedies)
{
    /// <summary>The sources of a reading; null where it was not decided, or its numbers are too large to work with.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="check">Its check.</param>
    /// <param name="instruments">The workshop's instruments, for ranges that would do better.</param>
    public static UncertaintySources? Of(ReadingDecided reading, Check check, IReadOnlyList<Instrument> instruments)
    {
        try
        {
            return Worked(reading, check, instruments);
        }
        catch (ArgumentException)
        {
            return null; // The journal holds numbers too large to work with; the page is shown all the same.
        }
    }

    private static UncertaintySources? Worked(ReadingDecided reading, Check check, IReadOnlyList<Instrument> instruments)
    {
        if (reading is not { Conformity: { Contributions: [_, ..] parts } conformity, Limits: { } limits })
        {
            return null;
        }

        var text = new UncertaintyText(ComparedWords.FigureUnit(reading, check), conformity.ExpandedUncertainty);
        var u = conformity.StandardUncertainty;
        var shares = parts
            .Select(part => new UncertaintySource(
                Capital(part.Name),
                u > 0 ? Math.Pow(part.StandardUncertainty / u, 2) : 0,
                text.Of(part.StandardUncertainty),
                ContributionWords.FoundFrom(part)))
            .ToList();
        var span = Limits.Of(limits.Lower, limits.Upper);
        var evaluation = RecordWords.EvaluationOf(reading);
        var together = reading.With is { } with ? Compared.Of(with.Form, reading.Reading, with.Reading, with.SameInstrument, reading.Conformity.Evaluation) : (Estimate?)null;
        var advice = together is { } figure
            ? Advice.For(figure, span)
            : Advice.For(reading.Reading, span, WithRanges(reading.Reading is Bracket ? null : reading.Instrument, instruments), evaluation);
        var lines = together is { } known ? BudgetTable.Of(known) : BudgetTable.Of(reading.Reading, evaluation);
        return new UncertaintySources(
            shares,
            LargestOf(shares[0], lines[0].ExpandedWithout, text),
            [.. OneMeter(reading, text), .. Remedy(reading, conformity, advice, text)]);
    }

    /// <summary>What one meter for both readings would bring, where it is not known that one took both.</summary>
    private static IEnumerable<string> OneMeter(ReadingDecided reading, UncertaintyText text)
    {
        if (reading.With is not { Form: ComparisonForm.Difference, SameInstrument: false } with)
        {
            yield break;
        }

        var one = Compared.Of(with.Form, reading.Reading, with.Reading, sameInstrument: true, reading.Conformity!.Evaluation).ExpandedUncertainty;
        if (one < text.ExpandedNow)
        {
            yield return $"Read both with one meter on one range, entered as an instrument of the workshop: {text.Now} would come down to {text.Expanded(one)}, since its error in percent is then the same share of both.";
        }
    }

    private static string LargestOf(UncertaintySource largest, double without, UncertaintyText text)
    {
        var name = largest.Name.ToLowerInvariant();
        if (without == 0)
        {
            return $"All of it is the {name}.";
        }

        // A share that rounds to all of it is not all of it, and half of it is not most of it.
        var percent = Math.Min(Math.Round(100 * largest.Share), 99);
        var how = percent > 50 ? "Most of it" : "The largest part";
        return $"{how}, {percent.ToString("0", CultureInfo.InvariantCulture)}\u00a0%, is the {name}. "
            + $"Without that, {text.Now} would be {text.Expanded(without)}.";
    }

    private static IEnumerable<string> Remedy(ReadingDecided reading, Conformity conformity, Advice advice, UncertaintyText text)
    {
        var isConditional = conformity.Decision.IsUnclear();
        foreach (var one in advice.Improvements)
        {
            var settles = isConditional && one.Settles(advice) ? ", which would settle it if the value stays" : "";
            yield return $"{Capital(one.Action)}: {text.Now} would come down to {text.Expanded(one.ExpandedUncertainty)}{settles}.";
        }

        if (isConditional && advice.AccuracyNeeded is { } accuracy && accuracy > 0)
        {
            yield return $"An instrument accurate to {text.Expanded(accuracy)} here would settle it.";
        }

        if (ContributionWords.OfScatter(reading.Reading) is { } scatter)
        {
            yield return scatter;
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
                    .Where(range => range.Accuracy != used.Accuracy || range.Resolution != used.Resolution)
                    .Select(range => range with { Accuracy = range.Accuracy.On(range.FullScale) }),
            ],
        };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>Writes uncertainties: two significant digits, as they are given (JCGM 100:2008, 7.2.6).</summary>
    private sealed record UncertaintyText(Unit Unit, double ExpandedNow)
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
/// <param name="FoundFrom">How it was found: evaluation type, and divisor or degrees of freedom.</param>
public sealed record UncertaintySource(string Name, double Share, string Size, string FoundFrom);
