using InspectLog.App.Commands;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Tests.Commands;

/// <summary>What a command line answered.</summary>
internal sealed record CommandRun(int ExitCode, string Out, string Error)
{
    public IReadOnlyList<string> Lines => Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    public static Task<CommandRun> OfAsync(params string[] arguments) => WithAsync(new NoSpeech(), "", arguments);

    public static async Task<CommandRun> WithAsync(ISpeechToText speech, string input, params string[] arguments)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var surroundings = new Surroundings(new StringReader(input), output, error, TimeProvider.System, _ => speech, _ => speech);
        var exitCode = await CommandLine.RunAsync(arguments, surroundings);
        return new(exitCode, output.ToString(), error.ToString());
    }

    private sealed class NoSpeech : ISpeechToText
    {
        public SpeechReadiness Readiness => new(false, "none", null, "There is no speech model here.");

        public Task<Transcript> TranscribeAsync(
            PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken) =>
            throw new SpeechUnavailableException(Readiness.Problem!);
    }
}
