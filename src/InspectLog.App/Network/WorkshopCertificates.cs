using System.Net.Security;
using System.Security.Authentication;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace InspectLog.App.Network;

/// <summary>The certificates of this workshop, kept in its key folder: the authority, made once, and the computer's own,
/// made again by itself before it ends and when the computer has other names. Safe for use by many threads.</summary>
public sealed class WorkshopCertificates : IDisposable
{
    private const string AuthorityName = "authority";
    private const string ServerName = "server";

    /// <summary>A certificate with less than this left is made again.</summary>
    public static readonly TimeSpan RenewBefore = TimeSpan.FromDays(30);

    private readonly Lock _renewing = new();
    private readonly KeyFolder _keys;
    private readonly Func<ReachableNames> _names;
    private readonly TimeProvider _time;
    private Current _current;

    /// <summary>Reads the certificates, and makes those that are missing.</summary>
    /// <param name="keys">Where they are kept.</param>
    /// <param name="names">Tells which names the computer has now.</param>
    /// <param name="time">The clock.</param>
    /// <exception cref="IOException">They cannot be read or written.</exception>
    public WorkshopCertificates(KeyFolder keys, Func<ReachableNames> names, TimeProvider time)
    {
        (_keys, _names, _time) = (keys, names, time);
        var now = names();
        AuthorityCertificate = OwnAuthority(now);
        _current = keys.Read(ServerName) is { HasPrivateKey: true } kept && IsFresh(kept) && Authority.Stands(AuthorityCertificate, kept, now, time.GetUtcNow())
            ? new(now, kept, ContextOf(kept))
            : Make(now);
    }

    /// <summary>The authority's certificate.</summary>
    public X509Certificate2 AuthorityCertificate { get; }

    /// <summary>SHA-256 of the authority's certificate, as phones show it: pairs of hex digits joined by colons.</summary>
    public string Fingerprint => string.Join(':', AuthorityCertificate.GetCertHash(HashAlgorithmName.SHA256).Select(part => part.ToString("X2", System.Globalization.CultureInfo.InvariantCulture)));

    /// <summary>The computer's certificate as it is shown to whoever connects now.</summary>
    public X509Certificate2 ServerCertificate => Now().Certificate;

    /// <summary>How a connection is secured.</summary>
    public SslServerAuthenticationOptions Options() => new()
    {
        ServerCertificateContext = Now().Context,
        EnabledSslProtocols = SslProtocols.Tls12 | SslProtocols.Tls13,
    };

    /// <inheritdoc/>
    public void Dispose()
    {
        _current.Certificate.Dispose();
        AuthorityCertificate.Dispose();
    }

    private Current Now()
    {
        lock (_renewing)
        {
            var names = _names();
            if (!names.Equals(_current.Names) || !IsFresh(_current.Certificate))
            {
                // The old one stays in memory: a connection may be about to use it.
                _current = Make(names);
            }

            return _current;
        }
    }

    private X509Certificate2 OwnAuthority(ReachableNames names)
    {
        if (_keys.Read(AuthorityName) is { HasPrivateKey: true } kept && kept.NotAfter > _time.GetLocalNow() + RenewBefore)
        {
            return kept;
        }

        var made = Authority.Make(names.Host, _time.GetUtcNow());
        _keys.Keep(AuthorityName, made);
        return made;
    }

    private Current Make(ReachableNames names)
    {
        var made = Authority.Sign(AuthorityCertificate, names, _time.GetUtcNow());
        _keys.Keep(ServerName, made);
        return new(names, made, ContextOf(made));
    }

    private bool IsFresh(X509Certificate2 certificate) =>
        certificate.NotBefore <= _time.GetLocalNow() && certificate.NotAfter > _time.GetLocalNow() + RenewBefore;

    private static SslStreamCertificateContext ContextOf(X509Certificate2 certificate) =>
        SslStreamCertificateContext.Create(certificate, additionalCertificates: null, offline: true);

    private sealed record Current(ReachableNames Names, X509Certificate2 Certificate, SslStreamCertificateContext Context);
}
