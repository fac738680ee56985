using System.Diagnostics;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Notices;

/// <summary>The program as it is published, in a folder that goes with the tests. It was built with them.</summary>
public sealed class PublishedProgram : IAsyncLifetime
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-published-");

    public string Folder => _folder.FullName;

    /// <summary>Every file, by its path in the folder with slashes.</summary>
    public IEnumerable<string> Files => Directory.GetFiles(Folder, "*", SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'));

    public async ValueTask InitializeAsync()
    {
        var start = new ProcessStartInfo(
            "dotnet",
            [
                "publish", Repository.PathOf("src", "InspectLog.App"), "--no-build", "--nologo", "--verbosity", "quiet",
                "--configuration", Configuration(), "--output", Folder,
            ])
        {
            RedirectStandardOutput = true,
        };
        start.Environment["MSBUILDDISABLENODEREUSE"] = "1";
        using var publishing = Process.Start(start)!;
        var said = await publishing.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await publishing.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(publishing.ExitCode == 0, said);
    }

    public ValueTask DisposeAsync()
    {
        _folder.Delete(recursive: true);
        return ValueTask.CompletedTask;
    }

    /// <summary>Debug or Release: the folder above the one the tests run from.</summary>
    private static string Configuration() => new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;
}
