using Microsoft.AspNetCore.HostFiltering;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.Extensions.Options;

namespace InspectLog.App.Network;

/// <summary>Registers what the network needs.</summary>
public static class NetworkServices
{
    private static readonly string[] OwnComputer = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>Registers it, for a program that is open to the network or is not.</summary>
    public static void AddNetwork(this IServiceCollection services, NetworkOptions? network, string dataFolder)
    {
        services.AddSingleton(found => new ReachedAt(
            found.GetRequiredService<IServer>(), () => found.GetService<NamesWatch>()?.Now()));
        var hosts = services.AddOptions<HostFilteringOptions>();
        if (network is null)
        {
            hosts.Configure(filter => Only(filter, OwnComputer));
            return;
        }

        services.AddSingleton(found => new NamesWatch(() => LocalNetwork.Names(network.Only), found.GetRequiredService<TimeProvider>()));
        services.AddSingleton<IOptionsChangeTokenSource<HostFilteringOptions>>(found => found.GetRequiredService<NamesWatch>());
        services.AddSingleton(found => new WorkshopCertificates(
            KeyFolder.In(dataFolder), found.GetRequiredService<NamesWatch>().Now, found.GetRequiredService<TimeProvider>()));
        hosts.Configure<NamesWatch>((filter, watch) => Only(filter, [.. OwnComputer, .. NamesOf(watch.Now())]));
    }

    private static IEnumerable<string> NamesOf(ReachableNames names) =>
        names.Addresses.Select(address => address.ToString()).Concat(names.Hosts);

    /// <summary>A foreign Host header means that some other name was pointed at this computer.</summary>
    private static void Only(HostFilteringOptions filter, IReadOnlyList<string> hosts)
    {
        filter.AllowedHosts = [.. hosts];
        filter.AllowEmptyHosts = false;
    }
}
