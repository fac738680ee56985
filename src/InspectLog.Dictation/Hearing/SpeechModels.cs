using System.Reflection;

namespace InspectLog.Dictation.Hearing;

/// <summary>The two model files hearing needs, and the hashes they must have.</summary>
/// <param name="Whisper">The transcribing model, in whisper.cpp's format.</param>
/// <param name="VoiceActivity">The Silero voice-activity model, in whisper.cpp's format.</param>
public sealed record SpeechModels(ModelFile Whisper, ModelFile VoiceActivity)
{
    private const string ShippedWhisper = "ggml-base-garage-q8_0.bin";
    private const string ShippedVoiceActivity = "ggml-silero-v6.2.3.bin";

    /// <summary>The models that come with the program, from the folder <c>model</c> beside it.</summary>
    public static SpeechModels Shipped() => ShippedIn(Path.Combine(AppContext.BaseDirectory, "model"));

    /// <summary>The models that come with the program, from another folder.</summary>
    /// <param name="folder">The folder that holds both files.</param>
    public static SpeechModels ShippedIn(string folder)
    {
        var hashes = ReadHashes();
        return new(Of(ShippedWhisper), Of(ShippedVoiceActivity));

        ModelFile Of(string name) => new(Path.Combine(folder, name), hashes[name]);
    }

    /// <summary>The shipped voice-activity model with another Whisper model, of which no hash is expected.</summary>
    /// <param name="whisperFile">Path of the model file.</param>
    public static SpeechModels With(string whisperFile) => Shipped() with { Whisper = new ModelFile(whisperFile, null) };

    /// <summary>Whether both files may be loaded. Hashes them only when they changed since the last call.</summary>
    public SpeechReadiness Check()
    {
        var whisper = Whisper.Check();
        var problem = whisper.Problem ?? VoiceActivity.Check().Problem;
        return new(problem is null, Whisper.Name, whisper.Sha256, problem);
    }

    private static Dictionary<string, string> ReadHashes()
    {
        using var sums = Assembly.GetExecutingAssembly().GetManifestResourceStream("SHA256SUMS")
            ?? throw new InvalidOperationException("SHA256SUMS is not embedded.");
        using var lines = new StreamReader(sums);
        return lines.ReadToEnd()
            .Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => line.Split("  ", 2))
            .ToDictionary(parts => parts[1].Trim(), parts => parts[0], StringComparer.Ordinal);
    }
}
