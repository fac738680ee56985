using System.Collections.Concurrent;
using System.Security.Cryptography;
using InspectLog.App.Media;
using InspectLog.Archives.Making;
using InspectLog.Checks;
using InspectLog.Journal;
using InspectLog.Journal.Sealing;
using InspectLog.Journal.Verification;
using InspectLog.Photos.Developing;

namespace InspectLog.App.Archiving;

/// <summary>Makes archives for pages, each once and in the background, into files of the data folder that are downloaded from
/// there and swept after a day. Safe for use by many threads.</summary>
public sealed class ArchiveDesk : IDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromDays(1);

    private readonly string _dataFolder;
    private readonly TimeProvider _time;
    private readonly ArchiveMaker _maker;
    private readonly CancellationTokenSource _stop = new();
    private readonly ConcurrentDictionary<string, ArchiveInMaking> _making = new(StringComparer.Ordinal);

    public ArchiveDesk(Garage garage, IPhotoDeveloper developer, IWebHostEnvironment host, TimeProvider time)
    {
        (_dataFolder, _time) = (garage.Folder, time);
        _maker = new ArchiveMaker(new ReportFiles(host.WebRootPath), new CleanCopies(developer), BuiltInSheets.FileOf, time);
    }

    private string Folder => Path.Combine(_dataFolder, "archives");

    /// <summary>Begins to make an archive; gives its number.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="profile">What of it is given.</param>
    /// <param name="key">What it is sealed with, which is disposed here; null leaves it unsealed.</param>
    public string Begin(string vehicle, ArchiveProfile profile, SealKey? key)
    {
        Sweep();
        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));
        var making = new ArchiveInMaking();
        _making[id] = making;
        making.Work = Task.Run(() => MakeAsync(vehicle, id, profile, key, making), CancellationToken.None);
        return id;
    }

    /// <summary>An archive of a vehicle that is being made or was; null where there is none of this number.</summary>
    public ArchiveState? Find(string vehicle, string id) =>
        id.Length != 32 || !id.All(char.IsAsciiHexDigitLower) ? null
        : FileOf(vehicle, id) is { } file ? new ArchiveState.Ready(file)
        : _making.GetValueOrDefault(id) switch
        {
            { Failure: { } failure } => new ArchiveState.Failed(failure),
            { } making => new ArchiveState.Making(making.Progress),
            null => null,
        };

    /// <inheritdoc/>
    public void Dispose()
    {
        _stop.Cancel();
        Task.WhenAll(_making.Values.Select(one => one.Work)).ContinueWith(_ => { }, TaskScheduler.Default).Wait(TimeSpan.FromSeconds(10));
        _stop.Dispose();
    }

    private async Task MakeAsync(string vehicle, string id, ArchiveProfile profile, SealKey? key, ArchiveInMaking making)
    {
        using var disposed = key;
        try
        {
            await _maker.MakeAsync(
                VehicleReading.Of(_dataFolder, vehicle), profile, (name, day) => new ZipTarget(FolderOf(vehicle, id), name, day),
                key is null ? null : new(new Sealer(_time, ProgramName.WithVersion), key), making, _stop.Token);
        }
        catch (ArchiveRefusedException refused)
        {
            making.Failure = refused.Message;
        }
        catch (OperationCanceledException)
        {
            making.Failure = "The program was stopped. Make the archive again.";
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            making.Failure = $"The archive could not be written ({problem.Message}). See whether the disk has room, and make it again.";
        }
        catch (Exception unforeseen)
        {
            making.Failure = $"Something went wrong in the program ({unforeseen.Message}), so there is no archive. Nothing was changed.";
        }
    }

    private string FolderOf(string vehicle, string id) => Path.Combine(Folder, vehicle, id);

    private string? FileOf(string vehicle, string id) => FolderOf(vehicle, id) is var folder && Directory.Exists(folder)
        ? Directory.GetFiles(folder, "*.zip").FirstOrDefault(file => Path.GetFileName(file)[0] != '.')
        : null;

    /// <summary>Removes archives of yesterday, and what a stop of the program left half made. A download that goes on meanwhile
    /// keeps its file.</summary>
    private void Sweep()
    {
        var old = _time.GetUtcNow().UtcDateTime - Longest;
        var folders = Directory.Exists(Folder) ? Directory.GetDirectories(Folder).SelectMany(Directory.GetDirectories) : [];
        foreach (var folder in folders.Where(folder => Directory.GetLastWriteTimeUtc(folder) < old))
        {
            _making.TryRemove(Path.GetFileName(folder), out _);
            Directory.Delete(folder, recursive: true);
        }
    }
}
