using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using InspectLog.Tests;

namespace InspectLog.App.Tests.Commands;

/// <summary>The program as who has no .NET gets it: made by the script, unpacked, started by its start file.</summary>
[Trait("Takes", "long")]
public sealed partial class InstalledProgramTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(8);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-installed-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public async Task Program_for_linux_starts_without_dotnet_brings_its_own_runtime_and_shows_its_pages()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The program for Linux is started on Linux.");
        await RunAsync(Repository.PathOf("src", "make-program"), "--to", _folder.FullName, "linux-x64");
        await RunAsync("tar", "-C", _folder.FullName, "-xzf", Path.Combine(_folder.FullName, "inspectlog-linux-x64.tar.gz"));
        var unpacked = Path.Combine(_folder.FullName, "InspectLog");
        Assert.All(
            ["inspectlog", "THIRD-PARTY-NOTICES", "LICENSE", "README.md", "libcoreclr.so", Path.Combine("model", "SHA256SUMS"), Path.Combine("wwwroot", "sw.js")],
            file => Assert.True(File.Exists(Path.Combine(unpacked, file)), $"{file} is missing"));
        Assert.Equal(["linux-x64"], Directory.GetDirectories(Path.Combine(unpacked, "runtimes")).Select(Path.GetFileName));

        using var program = await StartAsync(unpacked);
        try
        {
            var address = await AddressAsync(program);
            using var client = new HttpClient();
            using var answer = await client.GetAsync(address, TestContext.Current.CancellationToken);

            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            Assert.StartsWith(address.AbsoluteUri, await ShownAsync(), StringComparison.Ordinal);
            var loaded = File.ReadAllLines($"/proc/{program.Id}/maps").Where(line => line.Contains("libcoreclr", StringComparison.Ordinal)).ToList();
            Assert.NotEmpty(loaded);
            Assert.All(loaded, line => Assert.Contains(unpacked, line, StringComparison.Ordinal));
        }
        finally
        {
            program.Kill(entireProcessTree: true);
            await program.WaitForExitAsync(TestContext.Current.CancellationToken);
        }
    }

    /// <summary>Made and looked into, and not started: there is no such computer here. <c>INSPECTLOG_MAKE_ALL=1</c>, since each takes
    /// minutes.</summary>
    [Theory]
    [InlineData("win-x64", "inspectlog.exe", "coreclr.dll", "Start InspectLog.cmd", "win-x64", "whisper.dll", "MZ")]
    [InlineData("osx-arm64", "inspectlog", "libcoreclr.dylib", "Start InspectLog.command", "macos-arm64", "libwhisper.dylib", "\u00cf\u00fa\u00ed\u00fe")]
    public async Task Program_for_another_computer_holds_all_it_needs(
        string kind, string program, string runtime, string start, string native, string speech, string magic)
    {
        Assert.SkipWhen(Environment.GetEnvironmentVariable("INSPECTLOG_MAKE_ALL") is null, "Made where INSPECTLOG_MAKE_ALL is set.");
        await RunAsync(Repository.PathOf("src", "make-program"), "--to", _folder.FullName, kind);
        await RunAsync("tar", "-C", _folder.FullName, "-xzf", Path.Combine(_folder.FullName, $"inspectlog-{kind}.tar.gz"));
        var unpacked = Path.Combine(_folder.FullName, "InspectLog");
        Assert.All(
            [program, runtime, start, "THIRD-PARTY-NOTICES", "LICENSE", "README.md", Path.Combine("model", "SHA256SUMS"), Path.Combine("wwwroot", "sw.js"), Path.Combine("runtimes", native, speech)],
            file => Assert.True(File.Exists(Path.Combine(unpacked, file)), $"{file} is missing"));
        Assert.Equal([native], Directory.GetDirectories(Path.Combine(unpacked, "runtimes")).Select(Path.GetFileName));

        // The first bytes of a program say for which system it is: DOS header of Windows, Mach-O of 64 bits.
        foreach (var file in new[] { program, runtime, Path.Combine("runtimes", native, speech) })
        {
            Assert.StartsWith(magic, System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(unpacked, file)), 0, 4), StringComparison.Ordinal);
        }
    }

    /// <summary>By its start file, with nothing of this process's surroundings: a home of its own, and on the path the few
    /// things any Linux has, and what it takes for a browser: it writes down what it is given.</summary>
    private async Task<Process> StartAsync(string unpacked)
    {
        var path = Directory.CreateDirectory(Path.Combine(_folder.FullName, "path")).FullName;
        foreach (var tool in new[] { "sh", "dirname" })
        {
            File.CreateSymbolicLink(Path.Combine(path, tool), Path.Combine("/usr/bin", tool));
        }

        var browser = Path.Combine(path, "xdg-open");
        await File.WriteAllTextAsync(browser, $"#!/bin/sh\necho \"$1\" >{Path.Combine(_folder.FullName, "shown")}\n", TestContext.Current.CancellationToken);
        await RunAsync("chmod", "+x", browser);
        var start = new ProcessStartInfo("/bin/sh", [Path.Combine(unpacked, "Start InspectLog.sh")]) { RedirectStandardOutput = true };
        start.Environment.Clear();
        start.Environment["HOME"] = _folder.FullName;
        start.Environment["PATH"] = path;
        return Process.Start(start)!;
    }

    private static async Task<Uri> AddressAsync(Process program)
    {
        using var patience = new CancellationTokenSource(Patience);
        while (await program.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (Printed().Match(line) is { Success: true } found)
            {
                return new Uri(found.Value);
            }
        }

        throw new InvalidOperationException("The program ended before it printed its address.");
    }

    private async Task<string> ShownAsync()
    {
        var file = Path.Combine(_folder.FullName, "shown");
        using var patience = new CancellationTokenSource(Patience);
        while (!File.Exists(file) || new FileInfo(file).Length == 0)
        {
            await Task.Delay(50, patience.Token);
        }

        return await File.ReadAllTextAsync(file, patience.Token);
    }

    private static async Task RunAsync(string command, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(command, arguments) { RedirectStandardOutput = true })!;
        var said = await process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken).WaitAsync(Patience);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, said);
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Printed();
}
