using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace InspectLog.App.Network;

/// <summary>Looks which names this computer has on the networks it is part of.</summary>
public static class LocalNetwork
{
    private const int LongestHost = 63;

    /// <summary>The names at this moment.</summary>
    /// <param name="only">The addresses to listen on; empty for all of them.</param>
    public static ReachableNames Names(IReadOnlyList<IPAddress> only) =>
        new(only.Count > 0 ? only : [.. Addresses()], HostOf(Environment.MachineName));

    /// <summary>A machine's name as the first part of a host name; null where it is none.</summary>
    public static string? HostOf(string machine)
    {
        var host = machine.Split('.')[0].ToLowerInvariant();
        return host.Length is > 0 and <= LongestHost
            && host.All(sign => char.IsAsciiLetterLower(sign) || char.IsAsciiDigit(sign) || sign == '-')
            && !host.StartsWith('-') && !host.EndsWith('-') && host != "localhost"
                ? host
                : null;
    }

    // An interface with a gateway is the one the phones are on; one without is as a rule a bridge of this computer's own.
    private static IEnumerable<IPAddress> Addresses() => NetworkInterface.GetAllNetworkInterfaces()
        .Where(one => one.OperationalStatus == OperationalStatus.Up && one.NetworkInterfaceType != NetworkInterfaceType.Loopback)
        .Select(one => one.GetIPProperties())
        .OrderByDescending(one => one.GatewayAddresses.Count > 0)
        .SelectMany(one => one.UnicastAddresses)
        .Select(one => one.Address)
        .Where(address => address.AddressFamily == AddressFamily.InterNetwork && PrivateNetworks.Hold(address))
        .Distinct();
}
