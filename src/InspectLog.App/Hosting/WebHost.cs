using InspectLog.App.Access;
using InspectLog.App.Addenda;
using InspectLog.App.Archiving;
using InspectLog.App.Backups;
using InspectLog.App.Bench;
using InspectLog.App.Bench.Marks;
using InspectLog.App.Bench.Photos;
using InspectLog.App.Bench.Then;
using InspectLog.App.Crew;
using InspectLog.App.Devices;
using InspectLog.App.Erasing;
using InspectLog.App.Garages;
using InspectLog.App.Instruments;
using InspectLog.App.Letterhead;
using InspectLog.App.Listening;
using InspectLog.App.Media;
using InspectLog.App.Network;
using InspectLog.App.Offline;
using InspectLog.App.OwnWords;
using InspectLog.App.Reports;
using InspectLog.App.Seals;
using InspectLog.App.Sheets;
using InspectLog.App.Trends;
using InspectLog.App.Ui;
using InspectLog.App.Vehicles;
using InspectLog.App.Vehicles.Wall;
using InspectLog.App.Wear;
using InspectLog.App.Workings;
using InspectLog.Dictation.Hearing;
using InspectLog.Inspecting;
using InspectLog.Inspecting.Recording;
using InspectLog.Inspecting.Words;
using InspectLog.Journal;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using System.Net;
using System.Text.Encodings.Web;

namespace InspectLog.App.Hosting;

/// <summary>The web app: built, started, and run until it is cancelled.</summary>
public static class WebHost
{
    /// <summary>Runs the web app until it is cancelled.</summary>
    /// <exception cref="DataFolderInUseException">Another process has the data folder open.</exception>
    /// <exception cref="IOException">The folder cannot be used, or the port is taken.</exception>
    public static async Task RunAsync(WebHostOptions options, CancellationToken cancellationToken)
    {
        // The folder is read while the pages are mapped: each takes a processor about as long.
        var opening = Task.Run(() => Open(options), CancellationToken.None);
        await using var app = Build(options, () => opening.GetAwaiter().GetResult());
        var garage = app.Services.GetRequiredService<Garage>(); // first: what is wrong with the data folder is told before anything starts
        if (!garage.IsLookedAtOnly)
        {
            options.KeepUploadsIn(UploadFolder.SweptIn(garage.Folder));
            CopyFiles.In(options.DataFolder).RemoveFormer();
        }

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

        options.Listening(app.Services.GetRequiredService<ReachedAt>().Addresses);
        await app.WaitForShutdownAsync(cancellationToken);
    }

    /// <summary>The web app, ready to start. Opens the data folder; disposing the app closes it.</summary>
    public static WebApplication Build(WebHostOptions options) => Build(options, () => Open(options));

    private static Garage Open(WebHostOptions options) => options.IsLookedAtOnly
        ? Garage.OpenToLook(options.DataFolder, options.Time, options.Opening, SheetWording.Of)
        : Garage.Open(options.DataFolder, options.Time, options.Opening, SheetRules.Of, SheetWording.Of);

    private static WebApplication Build(WebHostOptions options, Func<Garage> garage)
    {
        // The content root is the program's own folder, wherever it is started from: wwwroot is copied there.
        var builder = WebApplication.CreateBuilder(new WebApplicationOptions
        {
            ContentRootPath = AppContext.BaseDirectory,
            WebRootPath = Path.Combine(AppContext.BaseDirectory, "wwwroot"),
        });
        builder.WebHost.ConfigureKestrel(kestrel => Listen(kestrel, options));
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // Why the app cannot start is told by whoever starts it, in words and not as a stack trace. That a service of
        // the host failed later is critical and stays.
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        AddServices(builder.Services, options, garage);

        var app = builder.Build();
        app.UseSecurityHeaders();
        app.UseErrorPages();
        app.UseCertificateDoor();
        app.UseSameOriginGuard();
        app.UseResponseCompression();
        app.UseOwnFiles();
        app.UseAuthentication();
        app.UseRequestLimits();
        app.UseAuthorization();
        app.UseLookOnlyGuard(options.IsLookedAtOnly);
        MapPages(app);
        return app;
    }

    /// <summary>The address a started app listens on, on this computer.</summary>
    public static Uri AddressOf(WebApplication app) => app.Services.GetRequiredService<ReachedAt>().Addresses.Workshop;

    private static void Listen(KestrelServerOptions kestrel, WebHostOptions options)
    {
        kestrel.Limits.MaxConcurrentConnections = RequestLimits.Connections;
        kestrel.AddServerHeader = false;
        kestrel.Listen(IPAddress.Loopback, options.Port, listen => listen.Through(Door.Workshop));
        if (options.Network is { } network)
        {
            kestrel.OpenToNetwork(network, kestrel.ApplicationServices.GetRequiredService<WorkshopCertificates>());
        }
    }

    private static void AddServices(IServiceCollection services, WebHostOptions options, Func<Garage> garage)
    {
        services.AddSingleton(options.Time);
        services.AddSingleton(_ => garage());
        services.AddSingleton(found => new SheetLibrary(found.GetRequiredService<Garage>().Sheets));
        services.AddSingleton(_ => options.Speech());
        services.AddSingleton<FormReach>();
        services.AddSingleton<BenchEvents>();
        services.AddSingleton(new SpeechLoading(options.LoadsSpeechAtStart));
        services.AddSingleton<TranscriptionSignal>();
        services.AddSingleton<RunningTranscription>();
        services.AddSingleton<NoteReader>();
        services.AddSingleton<SpokenControl>();
        services.AddSingleton(_ => options.Photos());
        services.AddSingleton<PhotoRoom>();
        services.AddSingleton<PhotoCopies>();
        services.AddSingleton<SamePhotos>();
        services.AddSingleton<LaidOverPhotos>();
        services.AddSingleton<IncomingPhotos>();
        services.AddSingleton(new PhotoPieces(options.DataFolder, options.Time));
        services.AddSingleton<ArchiveDesk>();
        services.AddSingleton<ImportDesk>();
        services.AddSingleton<WorkshopSeals>();
        services.AddSingleton<ReportDesk>();
        services.AddSingleton<BackupDesk>();
        services.AddSingleton(new RemindsOfBackups(options.RemindsOfBackups));
        services.AddScoped<BenchDesk>();
        services.AddHostedService<TranscriptionWorker>();
        if (!options.IsLookedAtOnly)
        {
            services.AddHostedService<NightlyBackup>();
        }

        services.AddRazorComponents();
        services.AddScoped<CaptureIds>();
        services.AddSingleton(found => Assets.In(found.GetRequiredService<IWebHostEnvironment>().WebRootPath));
        services.CompressPages();
        services.AddPolicies();
        services.KeepNoKeys();
        services.AddSingleton<Sightings>();
        services.AddSingleton<PairingCodes>();
        services.AddScoped(found => new DevicesDesk(
            found.GetRequiredService<Garage>(),
            found.GetRequiredService<PairingCodes>(),
            found.GetRequiredService<Sightings>(),
            found.GetRequiredService<ReachedAt>(),
            found.GetRequiredService<TimeProvider>(),
            found.GetService<WorkshopCertificates>()));
        services.AddNetwork(options.Network, options.DataFolder);
        services.AddSingleton<RequestLimits>();

        services.AddSingleton<HtmlEncoder>(new PageEncoder());
    }

    private static void MapPages(WebApplication app)
    {
        var once = new MadeOnce(app);
        var pages = once.MapGroup("").AddEndpointFilter<RouteGroupBuilder, MissingSheetFilter>();
        pages.MapGarage();
        pages.MapLosses();
        pages.MapCrew();
        pages.MapVehicles();
        pages.MapWall();
        pages.MapLimits();
        pages.MapWearParts();
        pages.MapTrends();
        pages.MapBench();
        pages.MapCaptures();
        pages.MapPhotos();
        pages.MapMarks();
        pages.MapThen();
        pages.MapAgain();
        pages.MapVoiceNotes();
        pages.MapRecords();
        pages.MapAmending();
        pages.MapFindings();
        pages.MapLooseEnds();
        pages.MapReports();
        pages.MapReportLinks();
        pages.MapSeals();
        pages.MapAddenda();
        pages.MapWorkings();
        pages.MapInstruments();
        pages.MapWords();
        pages.MapLetterhead();
        pages.MapSheets();
        pages.MapArchives();
        pages.MapImports();
        pages.MapBackups();
        pages.MapErasing();
        pages.MapMedia();
        pages.MapDevices();
        pages.MapPairing();
        pages.MapOffline();
        once.Make();
    }
}
