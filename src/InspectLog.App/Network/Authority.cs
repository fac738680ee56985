using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace InspectLog.App.Network;

/// <summary>This workshop's own certificate authority: made on first use, trusted by the phones that were shown it, and by
/// nobody else. It signs for the workshop's computer alone.</summary>
public static class Authority
{
    /// <summary>How long it is good for. A new one has to be brought to every phone.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromDays(3650);

    /// <summary>The longest a certificate of the computer may be good for: what the makers of browsers agreed on.</summary>
    public static readonly TimeSpan LongestLeaf = TimeSpan.FromDays(397);

    // Clocks of phones differ by minutes, and by an hour where the zone is wrong.
    private static readonly TimeSpan Before = TimeSpan.FromDays(1);

    private const int SerialBytes = 16;
    private const string ServerUse = "1.3.6.1.5.5.7.3.1";

    /// <summary>Makes an authority with a P-256 key.</summary>
    /// <param name="host">The computer's own name, which it may sign for beside names under .local and private addresses; or
    /// null.</param>
    /// <param name="now">When.</param>
    public static X509Certificate2 Make(string? host, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest(
            $"CN=InspectLog workshop{(host is null ? "" : $" on {host}")} {now.UtcDateTime:yyyy-MM-dd}", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForCertificateAuthority(pathLengthConstraint: 0));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign | X509KeyUsageFlags.CrlSign, critical: true));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        request.CertificateExtensions.Add(NameConstraints.Only(host is null ? ["local"] : ["local", host], PrivateNetworks.All));
        return request.CreateSelfSigned(now - Before, now + Life);
    }

    /// <summary>Makes the certificate of the computer, with a key of its own.</summary>
    /// <param name="authority">Who signs it.</param>
    /// <param name="names">What it is for: addresses that are not private, and a host name the authority may not sign for,
    /// are left out.</param>
    /// <param name="now">When.</param>
    public static X509Certificate2 Sign(X509Certificate2 authority, ReachableNames names, DateTimeOffset now)
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=InspectLog", key, HashAlgorithmName.SHA256);
        request.CertificateExtensions.Add(X509BasicConstraintsExtension.CreateForEndEntity(critical: true));
        request.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.DigitalSignature, critical: true));
        request.CertificateExtensions.Add(new X509EnhancedKeyUsageExtension([new Oid(ServerUse)], critical: false));
        request.CertificateExtensions.Add(new X509SubjectKeyIdentifierExtension(request.PublicKey, critical: false));
        request.CertificateExtensions.Add(X509AuthorityKeyIdentifierExtension.CreateFromCertificate(
            authority, includeKeyIdentifier: true, includeIssuerAndSerial: false));
        request.CertificateExtensions.Add(AlternativeNames(authority, names));
        var end = Earlier(now - Before + LongestLeaf, authority.NotAfter);
        using var signed = request.Create(authority, now - Before, end, RandomNumberGenerator.GetBytes(SerialBytes));
        return signed.CopyWithPrivateKey(key);
    }

    /// <summary>Whether a certificate was signed by an authority, for these very names, and is good at a time.</summary>
    public static bool Stands(X509Certificate2 authority, X509Certificate2 certificate, ReachableNames names, DateTimeOffset now)
    {
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(authority);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.DisableCertificateDownloads = true;
        chain.ChainPolicy.VerificationTime = now.UtcDateTime;
        var wanted = AlternativeNames(authority, names);
        return certificate.Extensions.Any(one => one.Oid?.Value == wanted.Oid!.Value && one.RawData.AsSpan().SequenceEqual(wanted.RawData))
            && chain.Build(certificate);
    }

    private static X509Extension AlternativeNames(X509Certificate2 authority, ReachableNames names)
    {
        var builder = new SubjectAlternativeNameBuilder();
        foreach (var address in names.Addresses.Where(PrivateNetworks.Hold))
        {
            builder.AddIpAddress(address);
        }

        if (names.Local is { } local)
        {
            builder.AddDnsName(local);
        }

        // The authority was made for the name the computer had then.
        if (names.Host is { } host && authority.Subject.Contains($" on {host} ", StringComparison.Ordinal))
        {
            builder.AddDnsName(host);
        }

        return builder.Build();
    }

    private static DateTimeOffset Earlier(DateTimeOffset one, DateTimeOffset other) => one < other ? one : other;
}
