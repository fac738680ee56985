using System.Security.Cryptography;

namespace InspectLog.Dictation.Hearing;

/// <summary>A model file, checked before native code sees it.</summary>
/// <param name="path">Where it is.</param>
/// <param name="expectedSha256">The SHA-256 it must have, lower-case hex; null when any will do.</param>
public sealed class ModelFile(string path, string? expectedSha256)
{
    private readonly Lock _lock = new();
    private (long Length, DateTime Written, ModelFileState State)? _known;

    /// <summary>Where it is.</summary>
    public string Path { get; } = path;

    /// <summary>Name without folder.</summary>
    public string Name => System.IO.Path.GetFileName(Path);

    /// <summary>Hash of the file and what is wrong with it. Hashes it only when it changed since the last call.</summary>
    public ModelFileState Check()
    {
        lock (_lock)
        {
            var file = new FileInfo(Path);
            if (!file.Exists)
                return new(null, $"The speech model {Name} is missing. {Remedy}");
            if (_known is { } known && known.Length == file.Length && known.Written == file.LastWriteTimeUtc)
                return known.State;

            var state = Read();
            _known = state.Sha256 is null ? null : (file.Length, file.LastWriteTimeUtc, state);
            return state;
        }
    }

    private string Remedy => expectedSha256 is null
        ? "Check the path given with --model. Recordings are kept and can be transcribed later."
        : "Install the program again, or name another model with --model FILE. Recordings are kept and can be transcribed later.";

    private ModelFileState Read()
    {
        try
        {
            using var stream = File.OpenRead(Path);
            var hash = Convert.ToHexStringLower(SHA256.HashData(stream));
            return new(hash, expectedSha256 is null ? ProblemOfOther(stream) : ProblemOfShipped(hash));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new(null, $"The speech model {Name} cannot be read ({e.Message}). {Remedy}");
        }
    }

    private string? ProblemOfShipped(string hash) =>
        hash == expectedSha256 ? null : $"The speech model {Name} is damaged: it is not the file that came with the program. {Remedy}";

    private string? ProblemOfOther(FileStream stream)
    {
        stream.Position = 0;
        return WhisperModelLayout.IsWhole(stream) ? null : $"{Name} is not a whole speech model in whisper.cpp's format. {Remedy}";
    }
}

/// <summary>What a model file is like.</summary>
/// <param name="Sha256">Its SHA-256, lower-case hex; null when it could not be read.</param>
/// <param name="Problem">What is wrong and what to do; null when it may be loaded.</param>
public sealed record ModelFileState(string? Sha256, string? Problem);
