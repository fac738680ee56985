namespace InspectLog.Dictation.Hearing;

/// <summary>Turns recordings into transcripts, offline. One transcription runs at a time.</summary>
public interface ISpeechToText
{
    /// <summary>Whether it can transcribe, and if not, why and what to do.</summary>
    SpeechReadiness Readiness { get; }

    /// <summary>Raised when it can transcribe after it could not. On any thread.</summary>
    event EventHandler? BecameReady
    {
        add { }
        remove { }
    }

    /// <summary>Loads the model ahead of the first recording, so that it is as quick as the next.</summary>
    /// <exception cref="SpeechUnavailableException">The model or the native library is missing or corrupt.</exception>
    Task WarmUpAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    /// <summary>Transcribes one recording.</summary>
    /// <param name="audio">The recording; any length up to the longest, also empty or silent.</param>
    /// <param name="examples">A few findings as they are wanted, a sentence each, for the model to go by where it does
    /// not hear clearly; null for none.</param>
    /// <param name="progress">Receives the share done, 0 to 1.</param>
    /// <param name="cancellationToken">Stops at the next window of audio.</param>
    /// <exception cref="SpeechUnavailableException">The model or the native library is missing or corrupt.</exception>
    /// <exception cref="RecordingFailedException">The model failed on this recording.</exception>
    Task<Transcript> TranscribeAsync(
        PcmAudio audio, string? examples, IProgress<double>? progress, CancellationToken cancellationToken);
}

/// <summary>Shorter ways to ask for a transcript.</summary>
public static class SpeechToTextExtensions
{
    /// <summary>Transcribes one recording without examples to go by.</summary>
    /// <inheritdoc cref="ISpeechToText.TranscribeAsync"/>
    public static Task<Transcript> TranscribeAsync(
        this ISpeechToText speech, PcmAudio audio, IProgress<double>? progress, CancellationToken cancellationToken) =>
        speech.TranscribeAsync(audio, examples: null, progress, cancellationToken);
}

/// <summary>Whether speech can be transcribed.</summary>
/// <param name="Ready">True when it can.</param>
/// <param name="Model">Name of the model file, without folder.</param>
/// <param name="ModelSha256">SHA-256 of the model file, lower-case hex; null when it could not be read.</param>
/// <param name="Problem">What is wrong and what to do; null when ready.</param>
public sealed record SpeechReadiness(bool Ready, string Model, string? ModelSha256, string? Problem);

/// <summary>Speech cannot be transcribed now; recordings are kept and can be transcribed later.</summary>
public class SpeechUnavailableException(string message, Exception? inner = null) : Exception(message, inner);

/// <summary>This recording could not be transcribed, though others may be; it is kept and can be tried again later.</summary>
public sealed class RecordingFailedException(string message, Exception? inner = null) : SpeechUnavailableException(message, inner);
