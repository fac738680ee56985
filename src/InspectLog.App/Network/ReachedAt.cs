using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace InspectLog.App.Network;

/// <summary>Where the running program can be reached at this moment.</summary>
public sealed class ReachedAt(IServer server, Func<ReachableNames?> names)
{
    /// <summary>The addresses now: the computer may have been given others since the start.</summary>
    public OpenAddresses Addresses =>
        OpenAddresses.Of(server.Features.Get<IServerAddressesFeature>()!.Addresses, names());
}
