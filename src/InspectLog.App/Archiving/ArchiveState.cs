using InspectLog.Archives.Making;
using InspectLog.Journal.Sealing;

namespace InspectLog.App.Archiving;

/// <summary>How an archive stands that somebody asked for.</summary>
public abstract record ArchiveState
{
    private ArchiveState()
    {
    }

    /// <summary>It is being made.</summary>
    public sealed record Making(ArchiveProgress Progress) : ArchiveState;

    /// <summary>It can be downloaded.</summary>
    public sealed record Ready(string File) : ArchiveState
    {
        /// <summary>Bytes.</summary>
        public long Length { get; } = new FileInfo(File).Length;

        /// <summary>Whether the archive is sealed.</summary>
        public bool IsSealed { get; } = HoldsSeal(File);

        private static bool HoldsSeal(string file)
        {
            using var zip = System.IO.Compression.ZipFile.OpenRead(file);
            return zip.Entries.Any(entry => entry.FullName.EndsWith($"/{SealBundle.Jws}", StringComparison.Ordinal));
        }
    }

    /// <summary>There is none, for a reason.</summary>
    public sealed record Failed(string Reason) : ArchiveState;
}

/// <summary>An archive that is being made.</summary>
internal sealed class ArchiveInMaking : IProgress<ArchiveProgress>
{
    private volatile string? _failure;
    private readonly Lock _lock = new();
    private ArchiveProgress _progress;

    /// <summary>The work on it.</summary>
    public Task Work { get; set; } = Task.CompletedTask;

    /// <summary>Why there is none; null while that is not so.</summary>
    public string? Failure
    {
        get => _failure;
        set => _failure = value;
    }

    /// <summary>How far it is.</summary>
    public ArchiveProgress Progress
    {
        get
        {
            lock (_lock)
            {
                return _progress;
            }
        }
    }

    /// <inheritdoc/>
    public void Report(ArchiveProgress value)
    {
        lock (_lock)
        {
            _progress = value;
        }
    }
}
