using System.CommandLine;
using InspectLog.Dictation.Hearing;

namespace InspectLog.App.Commands;

/// <summary>The option that names a speech model.</summary>
internal static class SpeechModelChoice
{
    public static Option<string?> Option() => new("--model")
    {
        Description = "Transcribe with this Whisper model (whisper.cpp format) instead of the one that comes with the program.",
        HelpName = "FILE",
    };

    public static ISpeechToText Open(string? modelFile) =>
        new WhisperSpeech(modelFile is null ? SpeechModels.Shipped() : SpeechModels.With(modelFile));
}
