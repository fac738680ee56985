using System.Net;

namespace InspectLog.App.Network;

/// <summary>The names a phone can reach this computer by.</summary>
/// <param name="Addresses">Its addresses on the local network, the likeliest first.</param>
/// <param name="Host">Its own name, lower case, without a domain; null where it has none that a certificate could hold.</param>
public sealed record ReachableNames(IReadOnlyList<IPAddress> Addresses, string? Host)
{
    /// <summary>The name by which computers find each other without a name server (RFC 6762); null without a host name.</summary>
    public string? Local => Host is null ? null : $"{Host}.local";

    /// <summary>All names of hosts.</summary>
    public IReadOnlyList<string> Hosts => Host is null ? [] : [$"{Host}.local", Host];

    public bool Equals(ReachableNames? other) =>
        other is not null && Host == other.Host && Addresses.SequenceEqual(other.Addresses);

    public override int GetHashCode() => HashCode.Combine(Host, Addresses.Count);
}
