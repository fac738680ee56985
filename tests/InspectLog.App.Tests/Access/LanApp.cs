using System.Net;
using System.Net.Security;
using System.Security.Cryptography.X509Certificates;
using AngleSharp.Html.Dom;
using InspectLog.App.Hosting;
using InspectLog.App.Network;
using InspectLog.App.Tests.Web;
using InspectLog.Journal;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Access;

/// <summary>The app open to a network of its own, 127.0.0.2, over real HTTPS: with a client at the workshop's computer,
/// and as many phones as are wanted.</summary>
public sealed class LanApp : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly DirectoryInfo _folder;
    private readonly List<HttpClient> _clients = [];

    private LanApp(WebApplication app, DirectoryInfo folder, FakeTimeProvider time)
    {
        (_app, _folder, Time) = (app, folder, time);
        Addresses = app.Services.GetRequiredService<ReachedAt>().Addresses;
        Workshop = Keep(TestApp.NewClient(Addresses.Workshop));
    }

    public FakeTimeProvider Time { get; }

    public OpenAddresses Addresses { get; }

    public Uri Lan => Addresses.Phones[0];

    /// <summary>A browser on the workshop's own computer.</summary>
    public HttpClient Workshop { get; }

    /// <summary>Where what the program tells on the console goes through.</summary>
    public ILoggerFactory Logging => _app.Services.GetRequiredService<ILoggerFactory>();

    public IServiceProvider Services => _app.Services;

    public Garage Garage => _app.Services.GetRequiredService<Garage>();

    public IReadOnlyList<RouteEndpoint> Endpoints =>
        [.. _app.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()];

    public static async Task<LanApp> StartAsync()
    {
        var folder = Directory.CreateTempSubdirectory("inspectlog-lan-");
        var time = new FakeTimeProvider(TimeProvider.System.GetUtcNow());
        var app = WebHost.Build(new WebHostOptions(folder.FullName, 0, () => new ScriptedSpeech())
        {
            Time = time,
            Network = new([IPAddress.Parse("127.0.0.2")], 0, 0),
        });
        await app.StartAsync();
        return new(app, folder, time);
    }

    /// <summary>A phone with cookies of its own that trusts the workshop's authority, and nothing else.</summary>
    /// <param name="from">The address it has; null lets the system choose.</param>
    /// <param name="checksName">Whether it looks at the name in the certificate.</param>
    public HttpClient NewPhone(string? from = null, bool checksName = true)
    {
        var phone = Keep(new HttpClient(new SocketsHttpHandler
        {
            CookieContainer = new CookieContainer(),
            AllowAutoRedirect = false,
            ConnectCallback = from is null ? null : (context, cancellation) => LocalSocket.ConnectAsync(from, context.DnsEndPoint, cancellation),
            SslOptions =
            {
                CertificateChainPolicy = Trust(),
                RemoteCertificateValidationCallback = (_, _, _, errors) => (checksName ? errors : errors & ~SslPolicyErrors.RemoteCertificateNameMismatch) == 0,
            },
        }) { BaseAddress = Lan });
        phone.DefaultRequestHeaders.Add("Origin", Lan.GetLeftPart(UriPartial.Authority));
        return phone;
    }

    /// <summary>Makes a code at the workshop's computer.</summary>
    public async Task<(string Code, string Secret)> OfferAsync(string person = "Ines Vale", string role = "technician", string vehicle = "")
    {
        var made = await SendAsync(Workshop, "/devices", ("person", person), ("role", role), ("vehicle", vehicle));
        Assert.Equal(HttpStatusCode.Redirect, made.StatusCode);
        var page = await PageAsync(Workshop, made.Headers.Location!.ToString());
        var offer = _app.Services.GetRequiredService<Devices.PairingCodes>().Find(made.Headers.Location!.ToString().Split('/')[^1])!;
        return (page.QuerySelector(".pairing-code")!.TextContent, offer.Secret.Value);
    }

    /// <summary>Pairs a new phone by a typed code.</summary>
    public async Task<HttpClient> PairAsync(string person = "Ines Vale", string role = "technician", string vehicle = "")
    {
        var (code, _) = await OfferAsync(person, role, vehicle);
        var phone = NewPhone();
        Assert.Equal(HttpStatusCode.Redirect, (await SendAsync(phone, "/pair", ("code", code))).StatusCode);
        return phone;
    }

    public async Task<string> AddInspectionAsync(string name)
    {
        var vehicle = await SendAsync(Workshop, "/vehicles/new", ("name", name), ("cylinders", "6"));
        var started = await SendAsync(Workshop, $"{vehicle.Headers.Location}/inspections", ("technician", "Tess Okafor"));
        return started.Headers.Location!.ToString();
    }

    public static Task<HttpResponseMessage> SendAsync(HttpClient client, string address, params (string Name, string Value)[] fields) => client.PostAsync(
        address,
        new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))),
        TestContext.Current.CancellationToken);

    public static async Task<HttpStatusCode> StatusAsync(HttpClient client, string address)
    {
        using var answer = await client.GetAsync(address, HttpCompletionOption.ResponseHeadersRead, TestContext.Current.CancellationToken);
        return answer.StatusCode;
    }

    public static async Task<IHtmlDocument> PageAsync(HttpClient client, string address)
    {
        var answer = await client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await TestApp.ParseAsync(answer);
    }

    public async ValueTask DisposeAsync()
    {
        _clients.ForEach(client => client.Dispose());
        await _app.StopAsync();
        await _app.DisposeAsync();
        _folder.Delete(recursive: true);
    }

    private HttpClient Keep(HttpClient client)
    {
        _clients.Add(client);
        return client;
    }

    private X509ChainPolicy Trust() => new()
    {
        TrustMode = X509ChainTrustMode.CustomRootTrust,
        CustomTrustStore = { _app.Services.GetRequiredService<WorkshopCertificates>().AuthorityCertificate },
        RevocationMode = X509RevocationMode.NoCheck,
    };
}
