namespace InspectLog.App.Network;

/// <summary>Where the started program can be reached.</summary>
/// <param name="Workshop">On this computer.</param>
/// <param name="Phones">For phones, HTTPS, the likeliest first; empty where the program is not open to the network.</param>
/// <param name="Certificate">The page that hands out the authority's certificate, in the same order.</param>
public sealed record OpenAddresses(Uri Workshop, IReadOnlyList<Uri> Phones, IReadOnlyList<Uri> Certificate)
{
    /// <summary>The addresses from what the server listens on and the names the computer has.</summary>
    /// <param name="listening">Addresses the server listens on; the first is that on this computer.</param>
    /// <param name="names">The computer's names; null where it is not open to the network.</param>
    public static OpenAddresses Of(IEnumerable<string> listening, ReachableNames? names)
    {
        // A listener on all interfaces gives [::] or 0.0.0.0, which is nobody's address: only its port counts.
        var all = listening.Select(one => new Uri(one)).ToList();
        var hosts = names is not { Addresses.Count: > 0 } ? [] : names.Addresses.Select(address => address.ToString()).Concat(names.Hosts.Take(1)).ToList();
        return new(all[0], To("https", all), To("http", all.Skip(1)));

        IReadOnlyList<Uri> To(string scheme, IEnumerable<Uri> among) => among.FirstOrDefault(one => one.Scheme == scheme) is { } found
            ? [.. hosts.Select(host => new UriBuilder(scheme, host, found.Port).Uri)]
            : [];
    }
}
