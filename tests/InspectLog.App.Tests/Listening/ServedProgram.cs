using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.RegularExpressions;
using AngleSharp.Html.Dom;
using InspectLog.App.Tests.Web;

namespace InspectLog.App.Tests.Listening;

/// <summary>The built program serving in a process of its own, with its real speech worker as a child.</summary>
internal sealed partial class ServedProgram : IAsyncDisposable
{
    private static readonly TimeSpan Patience = Eventually.Patience;

    private readonly Process _process;

    private ServedProgram(Process process, Uri address)
    {
        _process = process;
        Client = TestApp.NewClient(address);
    }

    public HttpClient Client { get; }

    public bool IsRunning => !_process.HasExited;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>Starts it.</summary>
    /// <param name="fileName">The executable: <c>dotnet</c> or the program's own.</param>
    /// <param name="arguments">What stands before the verb.</param>
    /// <param name="options">What stands after it.</param>
    public static async Task<ServedProgram> StartAsync(string dataFolder, string fileName, string[] arguments, params string[] options)
    {
        var process = Process.Start(new ProcessStartInfo(fileName, [.. arguments, "serve", "--data", dataFolder, "--port", "0", .. options])
        {
            RedirectStandardOutput = true,
        })!;
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Patience);
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            if (Printed().Match(line) is { Success: true } address)
            {
                return new(process, new Uri(address.Value));
            }
        }

        throw new InvalidOperationException("The program ended before it printed its address.");
    }

    /// <summary>Process id of the speech worker: the child whose command line has its verb. Null while there is none.</summary>
    public int? WorkerId() => Directory.EnumerateDirectories("/proc")
        .Select(folder => int.TryParse(Path.GetFileName(folder), CultureInfo.InvariantCulture, out var id) ? id : 0)
        .Where(id => id > 0 && ParentOf(id) == _process.Id && CommandLineOf(id).Contains("speech-worker", StringComparison.Ordinal))
        .Select(id => (int?)id)
        .FirstOrDefault();

    public async Task<int> WaitForWorkerAsync()
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Patience);
        while (true)
        {
            if (WorkerId() is { } id)
            {
                return id;
            }

            await Task.Delay(20, patience.Token);
        }
    }

    /// <summary>Whether a process runs; one that has ended may stay listed until its parent has asked about it.</summary>
    public static bool IsThere(int processId) => StatOf(processId) is [not "Z", ..];

    public void Kill() => _process.Kill();

    /// <summary>Adds a vehicle and starts an inspection; returns the inspection's address.</summary>
    public async Task<string> StartInspectionAsync()
    {
        var vehicle = await PostAsync("/vehicles/new", ("name", "Marigold"), ("cylinders", "6"));
        return await PostAsync($"{vehicle}/inspections", ("technician", "Tess Okafor"));
    }

    /// <summary>Sends a recording; returns its number.</summary>
    public async Task<long> SayAsync(string bench, byte[] wav)
    {
        using var content = new ByteArrayContent(wav);
        content.Headers.ContentType = new MediaTypeHeaderValue("audio/wav");
        var answer = await Client.PostAsync($"{bench}/recordings", content, Stop);
        Assert.Equal(HttpStatusCode.Created, answer.StatusCode);
        var text = await answer.Content.ReadAsStringAsync(Stop);
        return long.Parse(Digits().Match(text).Value, CultureInfo.InvariantCulture);
    }

    public async Task<IHtmlDocument> PageAsync(string address) => await TestApp.ParseAsync(await Client.GetAsync(address, Stop));

    /// <summary>Waits until a note has words, and gives them.</summary>
    public async Task<string> HeardAsync(string bench, long recording)
    {
        using var patience = CancellationTokenSource.CreateLinkedTokenSource(Stop);
        patience.CancelAfter(Patience);
        while (true)
        {
            var item = (await PageAsync(bench)).QuerySelector($"#item-{recording}");
            if (item?.QuerySelector(".said") is { } said)
            {
                return Spaces().Replace(said.TextContent, " ").Trim();
            }

            Assert.Null(item?.QuerySelector(".attention"));
            await Task.Delay(50, patience.Token);
        }
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private async Task<string> PostAsync(string address, params (string Name, string Value)[] fields)
    {
        using var form = new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));
        var answer = await Client.PostAsync(address, form, Stop);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    private static int ParentOf(int id) => StatOf(id) is [_, var parent, ..] ? int.Parse(parent, CultureInfo.InvariantCulture) : 0;

    /// <summary>State, parent and further fields; none when there is no such process.</summary>
    private static string[] StatOf(int id)
    {
        // They stand after the name in brackets, which may hold spaces.
        var stat = ReadProc(id, "stat");
        return stat[(stat.LastIndexOf(')') + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string CommandLineOf(int id) => ReadProc(id, "cmdline");

    private static string ReadProc(int id, string file)
    {
        try
        {
            return File.ReadAllText($"/proc/{id}/{file}");
        }
        catch (IOException)
        {
            return ""; // it has ended
        }
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Printed();

    [GeneratedRegex(@"\d+")]
    private static partial Regex Digits();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
