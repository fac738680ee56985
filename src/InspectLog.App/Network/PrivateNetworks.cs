using System.Net;

namespace InspectLog.App.Network;

/// <summary>Addresses that no computer on the internet has: the only ones this program's authority may speak for.</summary>
/// <remarks>RFC 1918 (private), RFC 3927 (link-local), RFC 1122 (loopback).</remarks>
public static class PrivateNetworks
{
    /// <summary>The networks.</summary>
    public static IReadOnlyList<IPNetwork> All { get; } =
    [
        IPNetwork.Parse("10.0.0.0/8"),
        IPNetwork.Parse("172.16.0.0/12"),
        IPNetwork.Parse("192.168.0.0/16"),
        IPNetwork.Parse("169.254.0.0/16"),
        IPNetwork.Parse("127.0.0.0/8"),
    ];

    /// <summary>Whether an address is of one of them.</summary>
    public static bool Hold(IPAddress address) => All.Any(network => network.Contains(address));
}
