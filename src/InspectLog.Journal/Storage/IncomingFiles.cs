using System.Security.Cryptography;
using InspectLog.Journal.Entries;

namespace InspectLog.Journal.Storage;

/// <summary>Where a file is written before one rename gives it its place, so that it is there whole or not at all.</summary>
internal sealed class IncomingFiles(string root, IDurable durable)
{
    private const int Piece = 1 << 18;

    private string Folder => Path.Combine(root, "incoming");

    /// <summary>Writes a file under a name of its own and syncs it; returns its path.</summary>
    /// <exception cref="IOException">It could not be written; what there was of it is gone.</exception>
    public string Write(ReadOnlySpan<byte> content)
    {
        Directory.CreateDirectory(Folder);
        var path = Path.Combine(Folder, Path.GetRandomFileName());
        try
        {
            using var file = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write);
            durable.Write(file, content, 0);
            durable.Sync(file);
            return path;
        }
        catch (IOException)
        {
            File.Delete(path); // gives the space back when the disk is full
            throw;
        }
    }

    /// <summary>Writes a file of any size under a name of its own and syncs it; returns its path.</summary>
    /// <param name="content">Its bytes.</param>
    /// <param name="expected">What they must be.</param>
    /// <exception cref="InvalidDataException">They are not; nothing of them is left.</exception>
    /// <exception cref="IOException">It could not be written; what there was of it is gone.</exception>
    public string Write(Stream content, MediaFile expected)
    {
        Directory.CreateDirectory(Folder);
        var path = Path.Combine(Folder, Path.GetRandomFileName());
        try
        {
            using var file = File.OpenHandle(path, FileMode.CreateNew, FileAccess.Write);
            using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
            var buffer = new byte[Piece];
            var at = 0L;
            for (var read = Read(content, buffer); read > 0; read = Read(content, buffer))
            {
                hash.AppendData(buffer, 0, read);
                durable.Write(file, buffer.AsSpan(0, read), at);
                at += read;
            }

            if (at != expected.Bytes || Convert.ToHexStringLower(hash.GetHashAndReset()) != expected.Sha256)
            {
                throw new InvalidDataException($"The bytes that came are not those of {expected.Sha256}.");
            }

            durable.Sync(file);
            return path;
        }
        catch
        {
            File.Delete(path); // gives the space back when the disk is full
            throw;
        }
    }

    // That what is to be kept cannot be read is no fault of the disk it is written to.
    private static int Read(Stream content, byte[] buffer)
    {
        try
        {
            return content.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        }
        catch (IOException problem)
        {
            throw new InvalidDataException($"What is to be kept cannot be read: {problem.Message}", problem);
        }
    }

    /// <summary>Removes what interrupted writes left behind: it was never acknowledged.</summary>
    public void RemoveAll()
    {
        if (Directory.Exists(Folder))
        {
            Directory.Delete(Folder, recursive: true);
        }
    }
}
