using InspectLog.Journal.Tests.Support;

namespace InspectLog.Journal.Tests.Storage;

/// <summary>The data folder is its owner's alone.</summary>
public sealed class OwnerOnlyTests : IDisposable
{
    private const UnixFileMode Others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute
        | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;

    private readonly TempFolder _folder = new();
    private readonly TempFolder _elsewhere = new();

    public void Dispose()
    {
        _folder.Dispose();
        _elsewhere.Dispose();
    }

    [Fact]
    [System.Runtime.Versioning.UnsupportedOSPlatform("windows")]
    public void Folder_that_others_could_read_is_closed_at_the_start_with_all_that_is_in_it()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such modes.");
        using (var garage = Garage.Open(_folder.Path, Some.Clock()))
        {
            garage.AddVehicle(Some.Technician, Some.Vehicle());
            garage.Media.Keep("a photo"u8, "image/jpeg");
        }

        var outside = _elsewhere.At("outside");
        File.WriteAllText(outside, "somebody else's");
        File.CreateSymbolicLink(_folder.At("link"), outside);
        foreach (var path in Everything().Append(_folder.Path).Append(outside))
        {
            File.SetUnixFileMode(path, File.GetUnixFileMode(path) | Others);
        }

        using var again = Garage.Open(_folder.Path, Some.Clock());

        Assert.Empty(again.Problems);
        Assert.All(Everything().Append(_folder.Path), path => Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(path) & Others));
        Assert.Equal(Others, File.GetUnixFileMode(outside) & Others);
        Assert.Equal(3, again.Note("marigold", "goes on").NextSequence);
    }

    /// <summary>All that was there when the folder was last closed; the lock and the index are made anew at a start.</summary>
    private IEnumerable<string> Everything() => Directory
        .EnumerateFileSystemEntries(_folder.Path, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint })
        .Where(path => !Path.GetFileName(path).StartsWith("index", StringComparison.Ordinal));
}
