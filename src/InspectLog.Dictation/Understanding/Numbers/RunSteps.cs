using InspectLog.Checks;
using InspectLog.Dictation.Understanding.Words;

namespace InspectLog.Dictation.Understanding.Numbers;

/// <summary>The ways to go on from a token of a run: past it, or over a number as a cylinder or as a value.</summary>
internal sealed class RunSteps(RunSpan span, Check check, RunContext context)
{
    /// <summary>Cost of passing over the front of a decimal, or taking it for a value of its own: more than an unlikely
    /// value, or "25.7 volts" would be 0.7 V.</summary>
    public const double TornOff = Sizes.Implausible + 2;

    private const double Skipped = 4;

    private readonly CylinderSteps _cylinders = new(span, check, context);
    private readonly ValueSteps _values = new(span, check, context);

    public List<RunStep> From(int at)
    {
        var steps = new List<RunStep> { new(at + 1, null, IsSeparator(at) ? 0 : span.BeginsDecimal(at) || span.BeginsTens(at) ? TornOff : Skipped) };
        foreach (var reading in span.Numbers(at).Where(reading => reading.Next <= span.Next))
        {
            steps.AddRange(_cylinders.Of(at, reading));
            steps.AddRange(_values.Of(at, reading));
        }

        return steps;
    }

    private bool IsSeparator(int at) => span.Tokens[at].Kind == TokenKind.Mark
        || span.Tokens[at].Stem is "and" or "or" or "then" || span.Tokens[at].Stem is "to" && check.Measurand is not null;
}
