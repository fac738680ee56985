using System.CommandLine;
using InspectLog.Measuring;

namespace InspectLog.App.Commands;

/// <summary>The options that say how an expanded uncertainty is found.</summary>
internal sealed class EvaluationOptions
{
    private readonly Option<EvaluationMethod> _method = NamedChoice.Option(
        "--evaluation",
        "How the expanded uncertainty is found: distribution (JCGM 101:2008; the default), or classical (k from the effective "
            + "degrees of freedom, JCGM 100:2008, G.4), which covers too little with two or three readings.",
        "HOW",
        ("distribution", EvaluationMethod.Distribution), ("classical", EvaluationMethod.Classical));

    private readonly Option<double?> _coverage = StrictNumber.Option(
        "--coverage", "How much of the distribution lies within ±U, in percent: 95 or 99, say. Without it: 95.45.");

    public IReadOnlyList<Option> All => [_method, _coverage];

    /// <summary>The evaluation chosen.</summary>
    /// <param name="arguments">The command line.</param>
    /// <param name="usual">What counts where no coverage is chosen.</param>
    /// <exception cref="CommandException">The coverage is out of range.</exception>
    public Evaluation Read(ParseResult arguments, Evaluation usual)
    {
        var method = arguments.GetValue(_method);
        try
        {
            return (arguments.GetValue(_coverage) is { } percent ? Evaluation.Covering(percent) : usual)
                with { Method = method };
        }
        catch (ArgumentException)
        {
            throw CommandException.BadInput($"--coverage is in percent, from {Evaluation.LeastPercent} to 99.9.");
        }
    }
}
