using System.Text;
using InspectLog.Journal.Storage;

namespace InspectLog.Journal.Sealing;

/// <summary>Where the key of a workshop's seals lies: in the folder <c>keys</c> of the data folder, readable by its owner
/// alone, and under a passphrase where one was given.</summary>
public sealed class SealKeyFile
{
    private const UnixFileMode OwnerFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private readonly string _folder;
    private readonly IDurable _durable;

    /// <summary>The key file of a data folder.</summary>
    public SealKeyFile(string dataFolder)
        : this(dataFolder, new Durable())
    {
    }

    internal SealKeyFile(string dataFolder, IDurable durable)
    {
        _folder = System.IO.Path.Combine(System.IO.Path.GetFullPath(dataFolder), "keys");
        _durable = durable;
    }

    /// <summary>The file.</summary>
    public string Path => System.IO.Path.Combine(_folder, "seal.pem");

    /// <summary>Whether there is a key.</summary>
    public bool Exists => File.Exists(Path);

    /// <summary>Whether there is a key and it is kept under a passphrase.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public bool IsProtected => Exists && SealKey.IsProtected(File.ReadAllText(Path));

    /// <summary>The key.</summary>
    /// <param name="passphrase">What it is kept under; null where it is kept under none.</param>
    /// <exception cref="SealKeyException">There is none, it is damaged, or the passphrase is not its own.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public SealKey Read(string? passphrase) => Exists
        ? SealKey.FromPem(File.ReadAllText(Path), passphrase)
        : throw new SealKeyException("There is no key yet. The first seal makes one.");

    /// <summary>The key, which is made when there is none yet.</summary>
    /// <param name="passphrase">What it is kept under, or is to be kept under; null for the rights of the file alone.</param>
    /// <exception cref="SealKeyException">It is damaged, or the passphrase is not its own.</exception>
    /// <exception cref="IOException">It cannot be read or written.</exception>
    public SealKey ReadOrMake(string? passphrase)
    {
        if (Exists)
        {
            return Read(passphrase);
        }

        var key = SealKey.Make();
        try
        {
            Write(key, passphrase, overwrite: false);
            return key;
        }
        catch (IOException) when (Exists)
        {
            // Another process was first: there is one key. Where it is ours, it may not be on disk.
            var there = Read(passphrase);
            var isOurs = there.Public.Fingerprint == key.Public.Fingerprint;
            key.Dispose();
            if (!isOurs)
            {
                return there;
            }

            there.Dispose();
            throw;
        }
        catch
        {
            key.Dispose();
            throw;
        }
    }

    /// <summary>Keeps a restored key, where there is none.</summary>
    /// <exception cref="IOException">There is one already, or it cannot be written.</exception>
    public void Keep(SealKey key, string? passphrase)
    {
        if (Exists)
        {
            throw new IOException($"There is a key already: {Path}. Move its file away first, if the restored one is to take its place.");
        }

        Write(key, passphrase, overwrite: false);
    }

    /// <summary>Keeps the key under another passphrase, or under none.</summary>
    /// <exception cref="IOException">It cannot be written; the key is still kept as it was.</exception>
    public void Change(SealKey key, string? passphrase) => Write(key, passphrase, overwrite: true);

    private void Write(SealKey key, string? passphrase, bool overwrite)
    {
        MakeFolder();
        WholeFile.Write(_durable, Path, Encoding.ASCII.GetBytes(key.ToPem(passphrase) + "\n"), overwrite);
    }

    private void MakeFolder()
    {
        // The folder of a user is the user's alone on Windows.
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(_folder);
        }
        else if (!Directory.Exists(_folder))
        {
            Directory.CreateDirectory(_folder, OwnerFolder);
        }
        else
        {
            File.SetUnixFileMode(_folder, OwnerFolder);
        }

        _durable.SyncFolder(System.IO.Path.GetDirectoryName(_folder)!);
    }
}
