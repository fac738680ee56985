using System.Globalization;
using System.Threading.RateLimiting;
using InspectLog.App.Access;
using InspectLog.App.Network;

namespace InspectLog.App.Hosting;

/// <summary>How much may be asked for, so that one device cannot keep the others waiting. Nobody works so fast by hand.
/// </summary>
/// <remarks>The framework's own middleware makes limiters that tick ten times a second and end with the process only; these
/// end with the app.</remarks>
public sealed class RequestLimits : IDisposable
{
    /// <summary>Connections at once: some per device, for thirty phones and as many again.</summary>
    public const long Connections = 600;

    // A device that comes back to the network sends what it kept, and a page of photos asks for each of them.
    private const int OfDevice = 600;
    private const int OfDeviceEachSecond = 30;
    private const int OfStrangerEachMinute = 60;
    private const int TriesEachMinute = 10;

    private readonly PartitionedRateLimiter<HttpContext> _requests = PartitionedRateLimiter.Create<HttpContext, string>(OfCaller);
    private readonly PartitionedRateLimiter<HttpContext> _tries = PartitionedRateLimiter.Create<HttpContext, string>(OfTries);

    /// <summary>Whether one more request is let in.</summary>
    public bool LetsIn(HttpContext context)
    {
        using var request = _requests.AttemptAcquire(context);
        using var attempt = _tries.AttemptAcquire(context);
        return request.IsAcquired && attempt.IsAcquired;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _requests.Dispose();
        _tries.Dispose();
    }

    private static RateLimitPartition<string> OfCaller(HttpContext context) => Caller.Of(context) switch
    {
        { Access: { } access } => RateLimitPartition.GetTokenBucketLimiter(
            access.ToString(CultureInfo.InvariantCulture),
            _ => new() { TokenLimit = OfDevice, TokensPerPeriod = OfDeviceEachSecond, ReplenishmentPeriod = TimeSpan.FromSeconds(1) }),
        null when Doors.Of(context) == Door.Network => EachMinute($"stranger {Address(context)}", OfStrangerEachMinute),
        _ => RateLimitPartition.GetNoLimiter(""),
    };

    private static RateLimitPartition<string> OfTries(HttpContext context) =>
        context.Request.Path == Links.Pair && HttpMethods.IsPost(context.Request.Method)
            ? EachMinute(Address(context), TriesEachMinute)
            : RateLimitPartition.GetNoLimiter("");

    private static RateLimitPartition<string> EachMinute(string who, int permits) => RateLimitPartition.GetFixedWindowLimiter(
        who, _ => new() { PermitLimit = permits, Window = TimeSpan.FromMinutes(1) });

    private static string Address(HttpContext context) => context.Connection.RemoteIpAddress?.ToString() ?? "";
}
