using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Security.Cryptography.X509Certificates;
using System.Text.RegularExpressions;

namespace InspectLog.Benchmarks.Phones;

/// <summary>The program in a process of its own, open to phones.</summary>
internal sealed partial class Workshop : IAsyncDisposable
{
    // Ten codes a minute are let in from one address, and all phones of a load come from one.
    private const int CodesAtOnce = 9;

    private readonly Process _process;
    private readonly Uri _phones;
    private readonly HttpClient _owner;
    private readonly X509Certificate2 _authority;
    private int _paired;

    private Workshop(string folder, Process process, Uri own, Uri phones)
    {
        (_process, _phones) = (process, phones);
        _authority = X509Certificate2.CreateFromPem(File.ReadAllText(Path.Combine(folder, "keys", "authority.pem")));
        _owner = Client(own);
    }

    public static async Task<Workshop> StartAsync(string folder)
    {
        var process = Process.Start(new ProcessStartInfo(
            "dotnet",
            [Path.Combine(AppContext.BaseDirectory, "inspectlog.dll"), "serve", "--data", folder, "--port", "0", "--lan-address", "127.0.0.2", "--lan-port", "0", "--certificate-port", "0"])
        {
            RedirectStandardOutput = true,
        })!;
        Uri? own = null;
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            own ??= Own().Match(line) is { Success: true } found ? new Uri(found.Value) : null;
            if (own is not null && ForPhones().Match(line) is { Success: true } phones)
            {
                return new(folder, process, own, new Uri(phones.Value));
            }
        }

        throw new InvalidOperationException("The program ended before it printed its addresses.");
    }

    /// <summary>A vehicle with an open inspection of some entries; gives the address of its bench.</summary>
    public async Task<string> FillInspectionAsync(string name, int entries)
    {
        var vehicle = await PostAsync("/vehicles/new", ("name", name), ("cylinders", "6"));
        var bench = await PostAsync($"{vehicle}/inspections", ("technician", "Tess Okafor"));
        for (var i = 0; i < entries; i++)
        {
            await PostAsync($"{bench}/observations", ("check", "plug-condition"), ("cylinder", $"{1 + (i % 6)}"), ("condition", "wet"));
        }

        return bench;
    }

    /// <summary>A new paired phone.</summary>
    public async Task<HttpClient> PairAsync(string person)
    {
        if (++_paired % CodesAtOnce == 0)
        {
            await Task.Delay(TimeSpan.FromSeconds(61));
        }

        var offer = await _owner.GetStringAsync(await PostAsync("/devices", ("person", person), ("role", "technician"), ("vehicle", "")));
        var phone = Client(_phones, _authority);
        using var answer = await phone.PostAsync("/pair", Form([("code", Code().Match(offer).Groups[1].Value)]));
        return answer.StatusCode == HttpStatusCode.Redirect ? phone : throw new InvalidOperationException($"Pairing was answered {answer.StatusCode}.");
    }

    public double ResidentMegabytes() => ResidentMegabytes(_process.Id);

    public double WorkerMegabytes() => Directory.GetFiles($"/proc/{_process.Id}/task/{_process.Id}", "children")
        .SelectMany(file => File.ReadAllText(file).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        .Sum(child => ResidentMegabytes(int.Parse(child, CultureInfo.InvariantCulture)));

    public async ValueTask DisposeAsync()
    {
        _owner.Dispose();
        _authority.Dispose();
        _process.Kill(entireProcessTree: true);
        await _process.WaitForExitAsync();
        _process.Dispose();
    }

    private static double ResidentMegabytes(int process) => double.Parse(
        Resident().Match(File.ReadAllText($"/proc/{process}/status")).Groups[1].Value, CultureInfo.InvariantCulture) / 1024;

    private async Task<string> PostAsync(string address, params (string Name, string Value)[] fields)
    {
        using var answer = await _owner.PostAsync(address, Form(fields));
        return answer.Headers.Location?.ToString() ?? throw new InvalidOperationException($"{address} was answered {answer.StatusCode}.");
    }

    private static FormUrlEncodedContent Form(IEnumerable<(string Name, string Value)> fields) =>
        new(fields.Select(field => KeyValuePair.Create(field.Name, field.Value)));

    private static HttpClient Client(Uri address, X509Certificate2? authority = null)
    {
        var trust = new X509ChainPolicy { TrustMode = X509ChainTrustMode.CustomRootTrust, RevocationMode = X509RevocationMode.NoCheck };
        if (authority is not null)
        {
            trust.CustomTrustStore.Add(authority);
        }

        var client = new HttpClient(new SocketsHttpHandler
        {
            AllowAutoRedirect = false,
            CookieContainer = new CookieContainer(),
            SslOptions = { CertificateChainPolicy = trust },
        }) { BaseAddress = address, Timeout = TimeSpan.FromMinutes(2) };
        client.DefaultRequestHeaders.Add("Origin", address.GetLeftPart(UriPartial.Authority));
        return client;
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/")]
    private static partial Regex Own();

    [GeneratedRegex(@"https://127\.0\.0\.2:\d+/")]
    private static partial Regex ForPhones();

    [GeneratedRegex(@"pairing-code[^>]*>([^<]+)<")]
    private static partial Regex Code();

    [GeneratedRegex(@"VmRSS:\s+(\d+)")]
    private static partial Regex Resident();
}
