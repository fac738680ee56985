using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that say how parts of a kind vary, for how often a rule goes wrong over many of them.</summary>
internal sealed class PartsOptions
{
    private readonly Option<double?> _mean = StrictNumber.Option(
        "--parts-mean", "Mean of many parts of this kind, with --parts-scatter: says how often the rule goes wrong over them.");

    private readonly Option<double?> _scatter = StrictNumber.Option(
        "--parts-scatter", "Standard deviation of such parts; they are taken as normal.");

    public IReadOnlyList<Option> All => [_mean, _scatter];

    /// <summary>How often the rule goes wrong; null where nothing is said of parts, or the rule can pass none.</summary>
    /// <exception cref="ArgumentException">The scatter, or the uncertainty, is not above 0.</exception>
    /// <exception cref="CommandException">One of the two was given without the other.</exception>
    public GlobalRisk? Read(ParseResult arguments, DecisionRule rule, Estimate estimate, Limits limits)
    {
        return (arguments.GetValue(_mean), arguments.GetValue(_scatter)) switch
        {
            (null, null) => null,
            ({ } mean, { } scatter) => rule.AcceptanceZone(estimate, limits) is { } accepted
                ? GlobalRisk.OfNormalParts(mean, scatter, limits, accepted, estimate.StandardUncertainty)
                : null,
            _ => throw CommandException.BadInput("Give both --parts-mean and --parts-scatter, or neither."),
        };
    }
}
