using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that choose a decision rule, by the names of the standards that describe them.</summary>
internal sealed class RuleOptions
{
    private const double UsualRisk = 0.05;

    private readonly Option<Rule> _rule = RuleOption();

    private readonly Option<double?> _factor = StrictNumber.Option(
        "--guard-factor", "For --rule guard-band: the guard band in expanded uncertainties, up to 5. Without it: 1.");

    private readonly Option<double?> _risk = StrictNumber.Option(
        "--risk", "For --rule risk: the largest probability that a passed value is outside, up to 0.5. Without it: 0.05.");

    public IReadOnlyList<Option> All => [_rule, _factor, _risk];

    /// <summary>The rule chosen.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="usual">What counts where none is chosen.</param>
    /// <exception cref="ArgumentException">Its factor or risk is out of range.</exception>
    public DecisionRule Read(ParseResult arguments, DecisionRule usual)
    {
        var (name, factor, risk) = (arguments.GetValue(_rule), arguments.GetValue(_factor), arguments.GetValue(_risk));
        return (name, factor, risk) switch
        {
            (Rule.GuardBand, _, null) => DecisionRule.GuardFactor(factor ?? 1),
            (Rule.Risk, null, _) => DecisionRule.Risk(risk ?? UsualRisk),
            (_, { }, _) => throw CommandException.BadInput("--guard-factor goes with --rule guard-band alone."),
            (_, _, { }) => throw CommandException.BadInput("--risk goes with --rule risk alone."),
            (Rule.Simple, _, _) => DecisionRule.Simple,
            (Rule.Iso14253, _, _) => DecisionRule.Iso14253,
            _ => arguments.GetResult(_rule) is { Implicit: false } ? DecisionRule.NonBinary : usual,
        };
    }

    private static Option<Rule> RuleOption() => NamedChoice.Option(
        "--rule",
        "The decision rule: non-binary or ilac-g8 (ILAC-G8:09/2019, 4.2.3; the default), simple (4.2.1), guard-band "
            + "(4.2.2; JCGM 106:2012, 8.3.2), risk (JCGM 106:2012, 8.3.2), iso-14253-1 (proven conforming, proven non-conforming or neither, at 95 %).",
        "RULE",
        ("non-binary", Rule.NonBinary), ("ilac-g8", Rule.NonBinary), ("simple", Rule.Simple),
        ("guard-band", Rule.GuardBand), ("risk", Rule.Risk), ("iso-14253-1", Rule.Iso14253));

    private enum Rule
    {
        NonBinary,
        Simple,
        GuardBand,
        Risk,
        Iso14253,
    }
}
