using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using InspectLog.App.Network;
using Microsoft.Extensions.Time.Testing;

namespace InspectLog.App.Tests.Network;

/// <summary>The authority and the certificate it signs. That a chain holds or does not is told by the platform's own
/// verifier (RFC 5280), not by ours.</summary>
public sealed class WorkshopCertificateTests : IDisposable
{
    private static readonly DateTimeOffset Start = new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);
    private static readonly ReachableNames Names = new([IPAddress.Parse("192.168.7.20"), IPAddress.Parse("10.1.2.3")], "anvil");

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("inspectlog-keys-");
    private readonly FakeTimeProvider _time = new(Start);
    private ReachableNames _names = Names;

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void Keys_are_of_the_curve_P_256_and_the_leaf_lasts_no_longer_than_397_days()
    {
        using var certificates = Open();

        foreach (var certificate in new[] { certificates.AuthorityCertificate, certificates.ServerCertificate })
        {
            using var key = certificate.GetECDsaPublicKey();
            Assert.Equal("1.2.840.10045.3.1.7", key!.ExportParameters(false).Curve.Oid.Value); // RFC 5480, 2.1.1.1
        }

        var leaf = certificates.ServerCertificate;
        Assert.True(leaf.NotAfter - leaf.NotBefore <= TimeSpan.FromDays(397));
    }

    [Theory]
    [InlineData("192.168.7.20")]
    [InlineData("10.1.2.3")]
    [InlineData("anvil.local")]
    [InlineData("anvil")]
    public void Leaf_is_for_every_name_of_the_computer(string name)
    {
        using var certificates = Open();

        Assert.True(certificates.ServerCertificate.MatchesHostname(name));
        Assert.True(Builds(certificates.AuthorityCertificate, certificates.ServerCertificate));
    }

    /// <summary>RFC 5280, 4.2.1.10: what lies outside the permitted names is not valid, whoever signed it.</summary>
    [Theory]
    [InlineData("bank.example", null)]
    [InlineData(null, "203.0.113.9")]
    public void Authority_cannot_speak_for_the_internet(string? host, string? address)
    {
        using var authority = Authority.Make("anvil", Start);
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var request = new CertificateRequest("CN=forged", key, HashAlgorithmName.SHA256);
        var names = new SubjectAlternativeNameBuilder();
        if (host is not null)
        {
            names.AddDnsName(host);
        }

        if (address is not null)
        {
            names.AddIpAddress(IPAddress.Parse(address));
        }

        request.CertificateExtensions.Add(names.Build());
        using var forged = request.Create(authority, Start, Start.AddDays(10), [1, 2, 3, 4]);

        Assert.False(Builds(authority, forged));
    }

    [Fact]
    public void Address_of_the_internet_is_left_out_of_the_leaf()
    {
        _names = Names with { Addresses = [.. Names.Addresses, IPAddress.Parse("203.0.113.9")] };

        using var certificates = Open();

        Assert.False(certificates.ServerCertificate.MatchesHostname("203.0.113.9"));
        Assert.True(Builds(certificates.AuthorityCertificate, certificates.ServerCertificate));
    }

    [Fact]
    public void Another_start_keeps_both()
    {
        using var before = Open();

        using var after = Open();

        Assert.Equal(before.Fingerprint, after.Fingerprint);
        Assert.Equal(before.ServerCertificate.Thumbprint, after.ServerCertificate.Thumbprint);
    }

    [Fact]
    public void Leaf_is_made_again_before_it_ends_by_the_same_authority()
    {
        using var certificates = Open();
        var first = certificates.ServerCertificate.Thumbprint;

        _time.Advance(TimeSpan.FromDays(365));
        Assert.Equal(first, certificates.ServerCertificate.Thumbprint);
        _time.Advance(TimeSpan.FromDays(2));

        Assert.NotEqual(first, certificates.ServerCertificate.Thumbprint);
        Assert.True(Builds(certificates.AuthorityCertificate, certificates.ServerCertificate));
    }

    [Fact]
    public void Leaf_is_made_again_when_the_computer_gets_another_address()
    {
        using var certificates = Open();

        _names = Names with { Addresses = [IPAddress.Parse("192.168.7.77")] };

        Assert.True(certificates.ServerCertificate.MatchesHostname("192.168.7.77"));
        Assert.False(certificates.ServerCertificate.MatchesHostname("192.168.7.20"));
    }

    [Fact]
    public void Renamed_computer_keeps_its_authority_and_has_a_leaf_that_holds()
    {
        using var before = Open();
        _names = Names with { Host = "hammer" };

        using var after = Open();

        Assert.Equal(before.Fingerprint, after.Fingerprint);
        Assert.True(after.ServerCertificate.MatchesHostname("hammer.local"));
        Assert.True(Builds(after.AuthorityCertificate, after.ServerCertificate));
    }

    [Fact]
    public void Key_files_are_the_owners_alone()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("Windows has no such modes.");
            return;
        }

        using var certificates = Open();

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Keys));
        foreach (var file in Directory.GetFiles(Keys))
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        }
    }

    [Fact]
    public void Spoiled_key_file_is_replaced()
    {
        Open().Dispose();
        foreach (var file in Directory.GetFiles(Keys))
        {
            File.WriteAllText(file, "-----BEGIN NOTHING-----");
        }

        using var certificates = Open();

        Assert.True(Builds(certificates.AuthorityCertificate, certificates.ServerCertificate));
    }

    private string Keys => Path.Combine(_folder.FullName, "keys");

    private WorkshopCertificates Open() => new(KeyFolder.In(_folder.FullName), () => _names, _time);

    private bool Builds(X509Certificate2 authority, X509Certificate2 leaf)
    {
        using var chain = new X509Chain();
        chain.ChainPolicy.TrustMode = X509ChainTrustMode.CustomRootTrust;
        chain.ChainPolicy.CustomTrustStore.Add(authority);
        chain.ChainPolicy.RevocationMode = X509RevocationMode.NoCheck;
        chain.ChainPolicy.VerificationTime = _time.GetUtcNow().UtcDateTime;
        return chain.Build(leaf);
    }
}
