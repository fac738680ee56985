using System.Globalization;

namespace InspectLog.Measuring;

/// <summary>A rule that says what a value with its uncertainty means against limits. Agreed before measuring, pinned
/// on the sheet, and printed in the report (JCGM 106:2012, 3.3.12).</summary>
public sealed record DecisionRule
{
    private const string NonBinaryId = "non-binary";
    private const string GuardFactorId = "guard band ";
    private const string RiskId = "risk ";

    // Either a guard band as a multiple of the expanded uncertainty, or the risk that an accepted value is outside.
    private readonly double? _guardFactor;
    private readonly double? _risk;

    private DecisionRule(string id, double? guardFactor, double? risk, string statement)
    {
        Id = id;
        Statement = statement;
        _guardFactor = guardFactor;
        _risk = risk;
    }

    /// <summary>The default: four answers, with a guard band of one expanded uncertainty (ILAC-G8:09/2019, 4.2.3).</summary>
    public static DecisionRule NonBinary { get; } = new(
        NonBinaryId, 1, null,
        "Non-binary rule of ILAC-G8:09/2019 with a guard band equal to the expanded uncertainty: pass and fail "
        + "are given where the value is clear of the limit by it, conditional pass and conditional fail where not.")
    {
        Conditional = true,
    };

    /// <summary>Simple acceptance: pass within the limits, fail outside, whatever the uncertainty (ILAC-G8:09/2019,
    /// 4.2.1). Up to half of the values on a limit are then wrong.</summary>
    public static DecisionRule Simple { get; } = new(
        "simple", 0, null,
        "Simple acceptance (ILAC-G8:09/2019): pass within the limits, fail outside. The uncertainty is not taken into "
        + "account; a value on a limit is as likely outside as inside.");

    /// <summary>ISO 14253-1:2017 with its usual 95 % (from memory): conformity is proven where the value is within the
    /// limits with that probability, nonconformity where it is outside them with that probability, and in between neither
    /// is.</summary>
    public static DecisionRule Iso14253 { get; } = new(
        "iso-14253-1", null, 0.05,
        "ISO 14253-1: proven conforming where the value is within the limits with a probability of at least 95 %, proven "
        + "non-conforming where it is outside them with at least 95 %; otherwise neither is proven.")
    {
        Proves = true,
    };

    /// <summary>The rule's name in records; <see cref="Find"/> reads it back.</summary>
    public string Id { get; }

    // Whether there is an answer between pass and fail.
    private bool Conditional { get; init; }

    // Whether it also asks for proof before it rejects.
    private bool Proves { get; init; }

    /// <summary>What the rule says, in a sentence for the report.</summary>
    public string Statement { get; }

    /// <summary>Pass and fail with a guard band r times the expanded uncertainty (JCGM 106:2012, 8.3.2): 1 is the
    /// guard-banded rule of ILAC-G8:09/2019, 4.2.2; 0.83 is its figure for ISO 14253-1.</summary>
    /// <param name="factor">r, above 0, at most 5.</param>
    public static DecisionRule GuardFactor(double factor)
    {
        if (!(factor is > 0 and <= 5))
        {
            throw new ArgumentException("A guard band is more than 0 and at most 5 expanded uncertainties.");
        }

        return new(
            Named(GuardFactorId, factor), factor, null,
            $"Guard-banded acceptance (JCGM 106:2012): pass where the value is within the limits by at least {Text(factor)} "
            + "times the expanded uncertainty, otherwise fail.");
    }

    /// <summary>Pass only where the probability of conformity is high enough, otherwise fail (JCGM 106:2012, 8.3).</summary>
    /// <param name="risk">The largest accepted probability that a passed value is outside the limits: above 0, at most
    /// 0.5.</param>
    public static DecisionRule Risk(double risk)
    {
        if (!(risk is > 0 and <= 0.5))
        {
            throw new ArgumentException("The accepted risk lies above 0 and is at most 50 %.");
        }

        return new(
            Named(RiskId, risk), null, risk,
            "Guard-banded acceptance (JCGM 106:2012): pass where the probability that the value is outside the limits "
            + $"is at most {Text((double)((decimal)risk * 100))} %, otherwise fail.");
    }

    /// <summary>Finds a rule by its <see cref="Id"/>; null where it is none.</summary>
    public static DecisionRule? Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id == NonBinary.Id ? NonBinary
            : id == Simple.Id ? Simple
            : id == Iso14253.Id ? Iso14253
            : Number(id, GuardFactorId) is > 0 and <= 5 and var factor ? GuardFactor(factor)
            : Number(id, RiskId) is > 0 and <= 0.5 and var risk ? Risk(risk)
            : null;
    }

    /// <summary>The values this rule passes, for the uncertainty of an estimate; null where it can pass none, because
    /// the uncertainty is too large against the limits.</summary>
    public AcceptanceZone? AcceptanceZone(in Estimate estimate, Limits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        return _risk is { } risk
            ? RiskZone.Of(estimate, limits, risk)
            : Measuring.AcceptanceZone.Inside(limits, GuardBand(estimate));
    }

    /// <summary>Whether there is any value this rule would pass; see <see cref="AcceptanceZone"/>.</summary>
    internal bool CanAccept(in Estimate estimate, Limits limits) =>
        _risk is { } risk
            ? RiskZone.CanAccept(estimate, limits, risk)
            : Measuring.AcceptanceZone.Inside(limits, GuardBand(estimate)) is not null;

    internal Decision Decide(in Estimate estimate, Limits limits)
    {
        if (_risk is { } risk)
        {
            var accepted = RiskZone.Accepts(estimate, limits, risk);
            return !Proves ? accepted ? Decision.Pass : Decision.Fail
                : accepted ? Decision.ProvenConforming
                : RiskZone.Rejects(estimate, limits, risk) ? Decision.ProvenNonConforming
                : Decision.NeitherProven;
        }

        var zone = Zones.Decide(estimate.Value, limits, GuardBand(estimate));
        return Conditional || zone == Decision.Pass ? zone : Decision.Fail;
    }

    private double GuardBand(in Estimate estimate) => _guardFactor.GetValueOrDefault() * estimate.ExpandedUncertainty;

    private static string Named(string prefix, double number) => prefix + Text(number);

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);

    private static double? Number(string id, string prefix) =>
        id.StartsWith(prefix, StringComparison.Ordinal)
        && double.TryParse(
            id.AsSpan(prefix.Length), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
