using System.Text.Json.Serialization;
using InspectLog.Checks;
using InspectLog.Checks.Routing;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Understanding;
using InspectLog.Measuring;

namespace InspectLog.App.Commands.Json;

/// <summary>What <c>understand --json</c> writes for each text.</summary>
internal sealed record FindingsJson(IReadOnlyList<FindingJson> Findings)
{
    public static FindingsJson From(IReadOnlyList<Finding> findings, CheckSheet sheet) =>
        new([.. findings.Select(finding => FindingJson.From(finding, sheet))]);
}

/// <summary>What <c>transcribe --json</c> writes for each recording.</summary>
/// <param name="Findings">Left out when no sheet was given.</param>
internal sealed record TranscriptJson(
    string File,
    string Text,
    IReadOnlyList<WordJson> Words,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<FindingJson>? Findings = null)
{
    /// <param name="file">The recording.</param>
    /// <param name="transcript">What was heard.</param>
    /// <param name="findings">What it says; null where no sheet was given.</param>
    public static TranscriptJson From(string file, Transcript transcript, FindingsJson? findings) =>
        new(file, transcript.Text, [.. transcript.Words.Select(WordJson.From)], findings?.Findings);
}

/// <summary>A heard word; times in seconds from the start of the recording.</summary>
internal sealed record WordJson(string Text, double Start, double End, double Probability)
{
    public static WordJson From(HeardWord word) => new(word.Text, word.Start, word.End, word.Probability);
}

/// <summary>What <c>transcribe --json</c> writes for a file it could not use.</summary>
internal sealed record ProblemJson(string File, string Problem);

/// <summary>What <c>route --json</c> writes.</summary>
internal sealed record RoutingJson(IReadOnlyList<int> Wrong, IReadOnlyList<int[]> Swaps, IReadOnlyList<string> Effects)
{
    public static RoutingJson From(LeadRouting routing) => new(
        routing.Wrong,
        [.. routing.Swaps.Select(swap => new[] { swap.First, swap.Second })],
        [.. routing.Effects.Select(effect => effect.Text)]);
}

/// <summary>What <c>refer --json</c> writes, in the unit given on the command line.</summary>
internal sealed record ReferredJson(double Value, double StandardUncertainty);

/// <summary>What <c>refer --rise</c> answers.</summary>
/// <param name="Temperature">Temperature of the winding, °C.</param>
/// <param name="TemperatureExpandedUncertainty">Its expanded uncertainty (95.45 %).</param>
/// <param name="Rise">How far that is above what cools it, in degrees.</param>
/// <param name="RiseStandardUncertainty">Standard uncertainty of the rise.</param>
/// <param name="RiseExpandedUncertainty">Expanded uncertainty of the rise (95.45 %).</param>
internal sealed record RiseJson(
    double Temperature,
    double TemperatureExpandedUncertainty,
    double Rise,
    double RiseStandardUncertainty,
    double RiseExpandedUncertainty);
