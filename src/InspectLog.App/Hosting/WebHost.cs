using System.Net;
using System.Text.Encodings.Web;
using System.Text.Unicode;
using InspectLog.App.Bench;
using InspectLog.App.Garages;
using InspectLog.App.HandsFree;
using InspectLog.App.Instruments;
using InspectLog.App.Listening;
using InspectLog.App.Media;
using InspectLog.App.OwnWords;
using InspectLog.App.Reports;
using InspectLog.App.Sheets;
using InspectLog.App.Trends;
using InspectLog.App.Vehicles;
using InspectLog.App.Wear;
using InspectLog.App.Workings;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace InspectLog.App.Hosting;

/// <summary>The web app: built, started, and run until it is cancelled.</summary>
public static class WebHost
{
    /// <summary>Runs the web app until it is cancelled.</summary>
    /// <exception cref="DataFolderInUseException">Another process has the data folder open.</exception>
    /// <exception cref="IOException">The folder cannot be used, or the port is taken.</exception>
    public static async Task RunAsync(WebHostOptions options, CancellationToken cancellationToken)
    {
        await using var app = Build(options);
        app.Services.GetRequiredService<Garage>(); // first: what is wrong with the data folder is told before anything starts
        try
        {
            await app.StartAsync(cancellationToken);
        }
        catch
        {
            // What did start is still at work; it must not find its tools gone.
            await app.StopAsync(CancellationToken.None);
            throw;
        }

        options.Listening(AddressOf(app));
        await app.WaitForShutdownAsync(cancellationToken);
    }

    /// <summary>The web app, ready to start. Opens the data folder; disposing the app closes it.</summary>
    public static WebApplication Build(WebHostOptions options)
    {
        // The content root is the program's own folder, wherever it is started from: wwwroot is copied there.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ContentRootPath = AppContext.BaseDirectory,
            WebRootPath = Path.Combine(AppContext.BaseDirectory, "wwwroot"),
        });
        builder.WebHost.ConfigureKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, options.Port));
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // Why the app cannot start is told by whoever starts it, in words and not as a stack trace. That a service of
        // the host failed later is critical and stays.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        AddServices(builder.Services, options);

        var app = builder.Build();
        app.UseSecurityHeaders();
        app.UseErrorPages();
        app.UseSameOriginGuard();
        app.UseStaticFiles(new StaticFileOptions
        {
            // The browser asks each time and is told that nothing changed; a new version is seen at once.
            OnPrepareResponse = file => file.Context.Response.Headers.CacheControl = "no-cache",
        });
        MapPages(app);
        return app;
    }

    /// <summary>The address a started app listens on.</summary>
    public static Uri AddressOf(WebApplication app) =>
        new(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());

    private static void AddServices(IServiceCollection services, WebHostOptions options)
    {
        services.AddSingleton(options.Time);
        services.AddSingleton(_ => Garage.Open(options.DataFolder, options.Time, options.Opening));
        services.AddSingleton(_ => options.Speech());
        services.AddSingleton<BenchEvents>();
        services.AddSingleton<TranscriptionSignal>();
        services.AddSingleton<RunningTranscription>();
        services.AddSingleton<NoteReader>();
        services.AddSingleton<SpokenControl>();
        services.AddSingleton<PhotoCopies>();
        services.AddScoped<BenchDesk>();
        services.AddHostedService<TranscriptionWorker>();
        services.AddRazorComponents();

        // Components write ° and Ω as themselves, not as numeric entities.
        services.AddSingleton(HtmlEncoder.Create(UnicodeRanges.All));

        // A foreign Host header means that some other name was pointed at this machine.
        services.Configure<HostFilteringOptions>(filter =>
        {
            filter.AllowedHosts = ["localhost", "127.0.0.1", "[::1]"];
            filter.AllowEmptyHosts = false;
        });
    }

    private static void MapPages(WebApplication app)
    {
        app.MapGarage();
        app.MapVehicles();
        app.MapLimits();
        app.MapWearParts();
        app.MapTrends();
        app.MapBench();
        app.MapCaptures();
        app.MapVoiceNotes();
        app.MapRecords();
        app.MapFindings();
        app.MapLooseEnds();
        app.MapReports();
        app.MapWorkings();
        app.MapInstruments();
        app.MapWords();
        app.MapSheets();
        app.MapMedia();
    }
}
