using System.Diagnostics;
using System.Text;

namespace InspectLog.App.Tests.Commands;

/// <summary>The program as a process of its own: what no test inside this process can see.</summary>
public sealed class ProcessTests
{
    private static readonly string[] Decide =
        ["decide", "--lower", "0.6", "--upper", "2", "--unit", "Ω", "--value", "1.95", "--accuracy", "0.8%+3", "--resolution", "0.1"];

    [Theory]
    [InlineData("C")]
    [InlineData("de_DE.ISO-8859-1")]
    public async Task Output_is_utf_8_with_points_whatever_the_language(string language)
    {
        var (exitCode, output) = await RunAsync(language, Decide);

        Assert.Equal(0, exitCode);
        Assert.StartsWith("1.95\u00a0Ω ± 0.37\u00a0Ω", Encoding.UTF8.GetString(output), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Exit_code_reaches_the_shell() =>
        Assert.Equal(2, (await RunAsync("C", ["decide", "--value", "1,5"])).ExitCode);

    private static async Task<(int ExitCode, byte[] Output)> RunAsync(string language, string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), .. arguments])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["LC_ALL"] = language },
        };
        using var process = Process.Start(start)!;
        using var output = new MemoryStream();
        await process.StandardOutput.BaseStream.CopyToAsync(output, TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, output.ToArray());
    }
}
