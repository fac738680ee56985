using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using InspectLog.App.Hosting;
using InspectLog.App.Media;
using InspectLog.Journal;
using InspectLog.Photos.Developing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace InspectLog.App.Tests.Web;

/// <summary>The real web app on a free port over a folder of its own, with a client that acts like its own pages.
/// Kestrel, not a test server: that one does not enforce size limits.</summary>
public sealed class TestApp : IAsyncDisposable
{
    private readonly WebApplication _app;
    private readonly bool _ownsFolder;

    private TestApp(WebApplication app, string folder, bool ownsFolder, ScriptedSpeech speech)
    {
        _app = app;
        _ownsFolder = ownsFolder;
        Folder = folder;
        Speech = speech;
        Address = WebHost.AddressOf(app);
        Client = NewClient(Address);
    }

    public string Folder { get; }

    public Uri Address { get; }

    /// <summary>Sends an own-origin header with every request and does not follow redirects.</summary>
    public HttpClient Client { get; }

    public ScriptedSpeech Speech { get; }

    public IEnumerable<RouteEndpoint> Endpoints => _app.Services.GetRequiredService<EndpointDataSource>().Endpoints
        .OfType<RouteEndpoint>();

    public Garage Garage => _app.Services.GetRequiredService<Garage>();

    /// <summary>Whether a photo is being developed.</summary>
    public bool IsDeveloping => _app.Services.GetRequiredService<PhotoCopies>().IsDeveloping;

    public static async Task<TestApp> StartAsync(
        ScriptedSpeech? speech = null, string? folder = null, TimeProvider? time = null, Func<IPhotoDeveloper>? photos = null, bool lookOnly = false)
    {
        var own = folder is null;
        folder ??= Directory.CreateTempSubdirectory("inspectlog-test-").FullName;
        speech ??= new ScriptedSpeech();
        var app = WebHost.Build(new WebHostOptions(folder, 0, () => speech)
        {
            Time = time ?? TimeProvider.System,
            IsLookedAtOnly = lookOnly,
            Photos = photos ?? (() => new PhotoDeveloper()),
        });
        await app.StartAsync();
        return new TestApp(app, folder, own, speech);
    }

    /// <summary>A client that says where its requests come from; null says nothing.</summary>
    public static HttpClient NewClient(Uri address, string? origin = "")
    {
        var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false }) { BaseAddress = address };
        if (origin is not null)
        {
            client.DefaultRequestHeaders.Add("Origin", origin.Length == 0 ? address.GetLeftPart(UriPartial.Authority) : origin);
        }

        return client;
    }

    /// <summary>Adds a vehicle with a number of cylinders, empty where it is not known, through the page and returns its
    /// address.</summary>
    public async Task<string> AddVehicleAsync(string name = "Marigold", string cylinders = "6") =>
        await PostForRedirectAsync("/vehicles/new", ("name", name), ("cylinders", cylinders));

    /// <summary>Adds a vehicle and starts an inspection on it; returns the inspection's address.</summary>
    public async Task<string> StartInspectionAsync() =>
        await PostForRedirectAsync($"{await AddVehicleAsync()}/inspections", ("technician", "Tess Okafor"));

    public async Task<string> PostForRedirectAsync(string address, params (string Name, string Value)[] fields)
    {
        var answer = await PostAsync(address, fields);
        Assert.Equal(System.Net.HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    public Task<HttpResponseMessage> PostAsync(string address, params (string Name, string Value)[] fields) =>
        Client.PostAsync(
            address,
            new FormUrlEncodedContent(fields.Select(field => KeyValuePair.Create(field.Name, field.Value))),
            TestContext.Current.CancellationToken);

    public async Task<IHtmlDocument> PageAsync(string address)
    {
        var answer = await Client.GetAsync(address, TestContext.Current.CancellationToken);
        Assert.Equal(System.Net.HttpStatusCode.OK, answer.StatusCode);
        return await ParseAsync(answer);
    }

    public static async Task<IHtmlDocument> ParseAsync(HttpResponseMessage answer) =>
        new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));

    /// <summary>Stops the app and leaves its folder, to start another over it.</summary>
    public async Task StopAsync()
    {
        Client.Dispose();
        await _app.StopAsync();
        await _app.DisposeAsync();
    }

    public async ValueTask DisposeAsync()
    {
        await StopAsync();
        if (_ownsFolder)
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}
