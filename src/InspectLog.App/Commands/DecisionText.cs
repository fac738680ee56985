using System.Globalization;
using InspectLog.Inspecting.Words;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>A decision as text for people.</summary>
internal static class DecisionText
{
    public static void Write(TextWriter output, Decided decided, Unit unit, bool withBudget)
    {
        output.WriteLine(Sentence(decided, unit));
        if (decided.LimitSource is { } source)
            output.WriteLine($"Limits of the sheet. {source}");
        if (decided.Papers.Words is { Length: > 0 } papers)
            output.WriteLine(papers);
        if (decided.OverParts is { } over)
            output.WriteLine($"Over such parts the rule would accept {Share(over.Consumers)} that are outside, and reject {Share(over.Producers)} that are within (JCGM 106:2012, 9.5).");
        if (NewReading.IsAsGoodAsZero(unit.Kind, decided.Conformity.Value))
            output.WriteLine("Below zero by no more than it may be off: as good as 0.");
        if (!withBudget)
        {
            foreach (var part in decided.Conformity.Contributions)
                output.WriteLine($"  {part.Name}: standard uncertainty {Size(part.StandardUncertainty, unit)}");
            return;
        }

        output.WriteLine();
        WriteTable(output, decided.Budget, unit);
        output.WriteLine();
        WriteResult(output, decided, unit);
        // The other rules give no conditional answers to advise on.
        if (decided.Rule == DecisionRule.NonBinary)
        {
            output.WriteLine();
            WriteAdvice(output, decided, unit);
        }
    }

    // Printed takes base units, and converts a difference otherwise than a value where the unit has a zero of its own.
    private static string Sentence(Decided decided, Unit unit)
    {
        var conformity = decided.Conformity with
        {
            Value = unit.ToBase(decided.Conformity.Value),
            ExpandedUncertainty = unit.DifferenceToBase(decided.Conformity.ExpandedUncertainty),
        };
        var limits = Limits.Of(InBase(decided.Limits.Lower, unit), InBase(decided.Limits.Upper, unit));
        var reading = decided.Given.Reading is Bracket bracket
            ? new Bracket(unit.ToBase(bracket.Goes), unit.ToBase(bracket.Stops))
            : decided.Given.Reading;
        return Printed.Sentence(reading, conformity, limits, unit);
    }

    private static void WriteTable(TextWriter output, IReadOnlyList<BudgetLine> lines, Unit unit)
    {
        string[] heading = ["contribution", "type", "divisor", "u of the quantity", "sensitivity", "contribution u", "ν", "share", "U without it"];
        string[][] rows = [heading, .. lines.Select(line => Row(line, unit))];
        int[] widths = [.. heading.Select((_, column) => rows.Max(row => row[column].Length))];
        foreach (var row in rows)
            output.WriteLine("  " + string.Join("  ", row.Select((cell, column) => cell.PadRight(widths[column]))).TrimEnd());
    }

    private static string[] Row(BudgetLine line, Unit unit)
    {
        // A quantity of its own kind is one whose size is not that of its contribution: a winding's temperature.
        var ofTemperature = line.Contribution.Name == "winding temperature";
        return
        [
            line.Contribution.Name,
            line.IsTypeA ? "A" : "B",
            Divisor(line.Contribution.Shape),
            ofTemperature ? $"{Number(line.InputUncertainty)} °C" : Size(line.InputUncertainty, unit),
            Number(line.Sensitivity) + (ofTemperature ? $" {unit}/°C" : ""),
            Size(line.Contribution.StandardUncertainty, unit),
            Degrees(line.Contribution.DegreesOfFreedom),
            string.Create(CultureInfo.InvariantCulture, $"{100 * line.Share:0.#} %"),
            Size(line.ExpandedWithout, unit),
        ];
    }

    private static void WriteResult(TextWriter output, Decided decided, Unit unit)
    {
        var (estimate, conformity) = (decided.Given.Estimate, decided.Conformity);
        output.WriteLine($"Combined standard uncertainty u = {Size(estimate.StandardUncertainty, unit)}, "
            + $"effective degrees of freedom {Degrees(estimate.DegreesOfFreedom)}, "
            + $"coverage factor k = {Number(estimate.CoverageFactor)} for {estimate.Evaluation.CoverageText()}, "
            + $"expanded uncertainty U = {Size(estimate.ExpandedUncertainty, unit)}.");
        output.WriteLine(estimate.Evaluation.Method == EvaluationMethod.Classical
            ? "k is that of Student's t with the effective degrees of freedom (JCGM 100:2008, G.4)."
            : "U is half the middle of the distribution that the contributions add up to, and k what that makes of u (JCGM 101:2008).");
        if (ContributionWords.OfScatter(decided.Given.Reading) is { } scatter)
            output.WriteLine(scatter);
        output.WriteLine(decided.Rule.Statement);
        output.WriteLine(decided.IsAccepted
            ? $"Probability that it is outside its limits although accepted (specific consumer's risk): {Number(estimate.ShareOutside(decided.Limits))}."
            : $"Probability that it is within its limits although rejected (specific producer's risk): {Number(conformity.ProbabilityOfConformity)}.");
        if (conformity.AcceptanceZoneIsEmpty)
            output.WriteLine("The uncertainty is so large against these limits that no value could pass.");
    }

    private static void WriteAdvice(TextWriter output, Decided decided, Unit unit)
    {
        var advice = decided.Advice;
        var now = decided.Given.Estimate.ExpandedUncertainty;
        if (now <= advice.UncertaintyNeeded)
        {
            output.WriteLine($"The answer is clear of its limit by {Size(advice.UncertaintyNeeded, unit)}.");
            return;
        }

        output.WriteLine(advice.UncertaintyNeeded > 0
            ? $"For a clear answer at this value, ± {Size(now, unit)} would have to come down to ± {Size(advice.UncertaintyNeeded, unit)}."
            : "The value lies on its limit: no uncertainty is small enough for a clear answer.");
        if (advice.ReadingsNeeded is { } readings)
            output.WriteLine($"  {readings} readings in all would do, if the next ones scatter as these.");
        if (advice.AccuracyNeeded is { } accuracy)
            output.WriteLine($"  An instrument accurate to ± {Size(accuracy, unit)} here would do.");
        foreach (var one in advice.Improvements)
            output.WriteLine($"  {Capital(one.Action)}: down to ± {Size(one.ExpandedUncertainty, unit)}"
                + (one.Settles(advice) ? ", which settles it." : "."));
    }

    private static double? InBase(double? value, Unit unit) => value is { } number ? unit.ToBase(number) : null;

    private static string Size(double size, Unit unit) =>
        $"{Printed.UncertainNumbers(unit.ToBase(0), unit.DifferenceToBase(size), unit).Spread} {unit}";

    private static string Divisor(ContributionShape? shape) => shape switch
    {
        ContributionShape.Even => "√3",
        ContributionShape.Triangular => "√6",
        _ => "1",
    };

    private static string Degrees(double degrees) => double.IsPositiveInfinity(degrees) ? "∞" : Number(degrees);

    private static string Number(double number) => number.ToString("G4", CultureInfo.InvariantCulture).Replace('-', '−');

    private static string Share(double share) => string.Create(CultureInfo.InvariantCulture, $"{100 * share:G3} %");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
