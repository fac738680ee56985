using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using InspectLog.App.Listening;

namespace InspectLog.App.Bench;

/// <summary>The bench itself: its page and the events that keep it fresh.</summary>
public static class BenchEndpoints
{
    /// <summary>Address of an inspection.</summary>
    public const string Base = "/vehicles/{vehicle}/inspections/{number:long}";

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    public static void MapBench(this IEndpointRouteBuilder app)
    {
        var bench = app.MapGroup(Base);
        bench.MapGet("/", Open).WithName("bench");
        bench.MapGet("/events", Events).WithName("bench-events");
    }

    private static IResult Open(HttpContext context, BenchDesk desk, string vehicle, long number) =>
        desk.Find(vehicle, number) is { } scene ? desk.Show(context, scene) : Results.NotFound();

    private static IResult Events(
        BenchDesk desk,
        BenchEvents events,
        IHostApplicationLifetime lifetime,
        string vehicle,
        long number,
        CancellationToken cancellationToken) =>
        desk.Find(vehicle, number) is null
            ? Results.NotFound()
            : TypedResults.ServerSentEvents(Items(events, vehicle, number, lifetime.ApplicationStopping, cancellationToken));

    private static async IAsyncEnumerable<SseItem<string>> Items(
        BenchEvents events,
        string vehicle,
        long number,
        CancellationToken stopping,
        [EnumeratorCancellation] CancellationToken gone)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stopping, gone);

        // A first event at once tells the page that it is connected, and catches what happened before.
        yield return Item(new BenchEvent.Changed());
        await foreach (var happened in events.Follow(vehicle, number, either.Token))
        {
            yield return Item(happened);
        }
    }

    private static SseItem<string> Item(BenchEvent happened) => happened switch
    {
        BenchEvent.Progress progress => new(JsonSerializer.Serialize(progress, Json), "progress"),
        _ => new("{}", "changed"),
    };
}
