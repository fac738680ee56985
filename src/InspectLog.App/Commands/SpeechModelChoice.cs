using System.CommandLine;
using InspectLog.Dictation.Hearing;
using InspectLog.Dictation.Hearing.Worker;

namespace InspectLog.App.Commands;

/// <summary>What hears dictation, and from when on.</summary>
/// <param name="ModelFile">A speech model other than the one that comes with the program; null for that one.</param>
/// <param name="WhenNeeded">Whether it is loaded with the first recording and not at the start.</param>
internal sealed record SpeechStart(string? ModelFile, bool WhenNeeded);

/// <summary>The options about the speech model.</summary>
internal static class SpeechModelChoice
{
    public static Option<bool> WhenNeededOption() => new("--speech-when-needed")
    {
        Description = "Load the speech model with the first recording and not at the start: for a computer short of memory. The first recording then waits a few seconds longer.",
    };

    public static Option<string?> Option() => new("--model")
    {
        Description = "Transcribe with this Whisper model (whisper.cpp format) instead of the one that comes with the program.",
        HelpName = "FILE",
    };

    /// <summary>Speech recognition in this process.</summary>
    public static ISpeechToText Open(string? modelFile) => new WhisperSpeech(Models(modelFile));

    /// <summary>Speech recognition in a process of its own, which a crash or an endless decode takes nothing else down with.</summary>
    public static ISpeechToText OpenApart(string? modelFile) => new SpeechWorkerClient(
        SpeechWorkerVerb.CommandFor(modelFile), Models(modelFile), SpeechWorkerPatience.Usual, TimeProvider.System);

    /// <summary>The model file given with the models that come with the program, or only those.</summary>
    public static SpeechModels Models(string? modelFile) =>
        modelFile is null ? SpeechModels.Shipped() : SpeechModels.With(modelFile);
}
