using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using System.Text;
using InspectLog.Journal.Storage;

namespace InspectLog.App.Network;

/// <summary>Where the keys of the certificates lie: a folder and files that only their owner can read.</summary>
/// <param name="path">The folder; made when missing.</param>
public sealed class KeyFolder(string path)
{
    private const UnixFileMode OwnerFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    /// <summary>The key folder of a data folder.</summary>
    public static KeyFolder In(string dataFolder) => new(Path.Combine(dataFolder, "keys"));

    /// <summary>A certificate with its key; null where there is none, or none that can be read.</summary>
    /// <exception cref="IOException">The file is there and cannot be read.</exception>
    public X509Certificate2? Read(string name)
    {
        if (!File.Exists(FileOf(name)))
        {
            return null;
        }

        try
        {
            return X509Certificate2.CreateFromPemFile(FileOf(name));
        }
        catch (CryptographicException)
        {
            // Half written, or spoiled: another one is made, which costs the phones a new visit to the certificate page.
            return null;
        }
    }

    /// <summary>Keeps a certificate and its P-256 key under a name.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    public void Keep(string name, X509Certificate2 certificate)
    {
        MakeFolder();
        using var key = certificate.GetECDsaPrivateKey() ?? throw new ArgumentException("It has no key.", nameof(certificate));
        DurableFiles.WriteWhole(FileOf(name), Encoding.ASCII.GetBytes($"{key.ExportPkcs8PrivateKeyPem()}\n{certificate.ExportCertificatePem()}\n"));
    }

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows())
        {
            // The folder of a user is the user's alone there.
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, OwnerFolder);
            File.SetUnixFileMode(path, OwnerFolder);
        }
    }

    private string FileOf(string name) => Path.Combine(path, name + ".pem");
}
