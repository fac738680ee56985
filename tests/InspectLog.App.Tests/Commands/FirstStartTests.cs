using System.Diagnostics;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Commands;

/// <summary>What somebody reads who starts the program for the first time, and what it leaves behind.</summary>
public sealed class FirstStartTests : IDisposable
{
    private readonly DirectoryInfo _home = Directory.CreateTempSubdirectory("inspectlog-home-");

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _home.Delete(recursive: true);

    [Fact]
    public async Task First_start_says_where_the_pages_are_and_nothing_else()
    {
        var data = Path.Combine(_home.FullName, "data");
        using var program = Start(data);
        var errors = program.StandardError.ReadToEndAsync(Stop);
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Eventually.Patience);

        var first = await program.StandardOutput.ReadLineAsync(patience.Token);
        Assert.NotNull(first);
        await AskForEveryPageAsync(new Uri(first[first.IndexOf("http://", StringComparison.Ordinal)..].Split(' ')[0]), patience.Token);
        Interrupt(program);
        var rest = await program.StandardOutput.ReadToEndAsync(patience.Token);
        await program.WaitForExitAsync(patience.Token);

        Assert.Equal("", await errors);
        Assert.Matches(@"^InspectLog is open at http://127\.0\.0\.1:\d+/$", first);
        Assert.Equal("", rest);
        Assert.Equal(["data"], Directory.GetFileSystemEntries(_home.FullName).Select(Path.GetFileName));
        Assert.DoesNotContain(Directory.GetFiles(data, "*", SearchOption.AllDirectories), file => file.EndsWith(".xml", StringComparison.Ordinal));
    }

    private static async Task AskForEveryPageAsync(Uri address, CancellationToken stop)
    {
        using var client = new HttpClient { BaseAddress = address };
        foreach (var page in new[] { Links.Garage, Links.NewVehicle, Links.Instruments, Links.Sheets, Links.About })
        {
            (await client.GetAsync(page, stop)).EnsureSuccessStatusCode();
        }
    }

    private Process Start(string data)
    {
        var start = new ProcessStartInfo(
            "dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), "serve", "--data", data, "--port", "0"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        start.Environment["HOME"] = _home.FullName;
        return Process.Start(start)!;
    }

    /// <summary>As Ctrl+C does.</summary>
    private static void Interrupt(Process program)
    {
        using var kill = Process.Start("kill", ["-INT", $"{program.Id}"]);
        kill.WaitForExit();
    }
}
