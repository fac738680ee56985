using InspectLog.App.Access;
using InspectLog.App.Listening;
using InspectLog.Dictation.Hearing;
using InspectLog.Journal;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace InspectLog.App.Bench;

/// <summary>The bench itself: its page and the events that keep it fresh.</summary>
public static class BenchEndpoints
{
    private const string Changed = "changed";

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    public static void MapBench(this IEndpointRouteBuilder app)
    {
        var bench = app.MapInspection(Policies.Look, Policies.Record);
        bench.MapGet("/", Open).WithName("bench");
        bench.MapGet("/events", Events).WithName("bench-events");
    }

    private static IResult Open(HttpContext context, BenchDesk desk) => desk.Show(context, desk.Scene);

    private static IResult Events(
        HttpContext context,
        Garage garage,
        TimeProvider time,
        BenchEvents events,
        ISpeechToText speech,
        IHostApplicationLifetime lifetime,
        string vehicle,
        long number,
        string? at,
        CancellationToken cancellationToken)
    {
        var listener = new Listener(
            context.Request.Headers["Last-Event-ID"].FirstOrDefault() ?? at,
            () => garage.FindVehicle(vehicle) is { } now ? BenchPosition.Of(now, speech.Readiness) : "",
            () => IsStillLetIn(Caller.Of(context), garage, time));
        return TypedResults.ServerSentEvents(Items(
            () => events.Follow(vehicle, number), listener, lifetime.ApplicationStopping, cancellationToken));
    }

    private static async IAsyncEnumerable<SseItem<string>> Items(
        Func<Following> follow,
        Listener listener,
        CancellationToken stopping,
        [EnumeratorCancellation] CancellationToken gone)
    {
        using var either = CancellationTokenSource.CreateLinkedTokenSource(stopping, gone);
        using var news = follow();

        // A first event at once tells the page that it is connected. It looks after it began to follow, so that nothing
        // falls between.
        var now = listener.Position();
        yield return new("{}", now == listener.Seen ? "connected" : Changed) { EventId = now };
        await foreach (var happened in news.AllAsync(either.Token))
        {
            if (!listener.IsStillLetIn())
            {
                yield break;
            }

            yield return Item(happened, listener.Position());
        }
    }

    /// <summary>A device can be revoked while it listens.</summary>
    private static bool IsStillLetIn(Caller? caller, Garage garage, TimeProvider time) => caller?.Access is not { } access
        || garage.Workshop.Accesses.Exists(one => one.Number == access && one.Holds(time.GetLocalNow()));

    private static SseItem<string> Item(BenchEvent happened, string position) => happened switch
    {
        BenchEvent.Progress progress => new(JsonSerializer.Serialize(progress, Json), "progress"),
        _ => new("{}", Changed) { EventId = position },
    };

    /// <summary>A page that wants the news.</summary>
    /// <param name="Seen">How far it is; null where it does not say.</param>
    /// <param name="Position">How far the journal is.</param>
    /// <param name="IsStillLetIn">Whether its device may know.</param>
    private sealed record Listener(string? Seen, Func<string> Position, Func<bool> IsStillLetIn);
}
